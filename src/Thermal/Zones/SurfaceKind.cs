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
    /// <summary>Coldest line or point at a rib, a bolt or the edge of an opening.</summary>
    Bridge,
    /// <summary>Cold side behind a lining, reached by air through gaps.</summary>
    BehindLining,
}
