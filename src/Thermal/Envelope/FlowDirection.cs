namespace Thermal.Envelope;

/// <summary>Which way heat leaves through a surface.</summary>
/// <remarks>Source: ISO-6946, 6.7: horizontal applies to flow within 30° of the horizontal plane.</remarks>
public enum FlowDirection
{
    /// <summary>Through a roof.</summary>
    Up,
    /// <summary>Through a side.</summary>
    Horizontal,
    /// <summary>Through a floor.</summary>
    Down,
}
