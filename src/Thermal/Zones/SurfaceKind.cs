namespace Thermal.Zones;

/// <summary>Kinds of inner surface, and the cold side behind a lining.</summary>
public enum SurfaceKind
{
    /// <summary>Bare lining.</summary>
    Bare,
    /// <summary>Behind or under something.</summary>
    Behind,
    /// <summary>Glass.</summary>
    Glass,
    /// <summary>Door leaf.</summary>
    Leaf,
    /// <summary>Frame.</summary>
    Frame,
    /// <summary>Rib or bolt.</summary>
    Bridge,
    /// <summary>Cold side behind a lining, reached by air through gaps.</summary>
    BehindLining,
}
