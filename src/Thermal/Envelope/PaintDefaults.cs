using Thermal.Materials;

namespace Thermal.Envelope;

/// <summary>Share of the sun that paint takes up, by how light it is, fraction.</summary>
/// <remarks>Source: OURS, chosen after usual figures of paints, from memory; dirt makes white paint darker.</remarks>
public static class PaintDefaults
{
    /// <summary>White.</summary>
    public static Bounded WhiteSunFraction { get; } = new(0.2, 0.25, 0.35, "OURS", "white paint, from memory");
    /// <summary>Cream, silver, light grey.</summary>
    public static Bounded LightSunFraction { get; } = new(0.3, 0.4, 0.5, "OURS", "light paint, from memory");
    /// <summary>Red, mid blue, mid grey.</summary>
    public static Bounded MiddleSunFraction { get; } = new(0.5, 0.6, 0.75, "OURS", "paint of middle lightness, from memory");
    /// <summary>Black, dark blue, dark green.</summary>
    public static Bounded DarkSunFraction { get; } = new(0.8, 0.9, 0.97, "OURS", "dark paint, from memory");
}
