using Thermal.Materials;

namespace Thermal.Envelope;

/// <summary>Room air behind linings and resistance of things against them, where the file gives no figure.</summary>
/// <remarks>Source: OURS; the mattress from memory.</remarks>
public static class LiningDefaults
{
    /// <summary>A locker against a wall, m²·K/W.</summary>
    public const double LockerM2KPerW = 0.5;
    /// <summary>A built-in cupboard, m²·K/W.</summary>
    public const double CupboardM2KPerW = 1.0;
    /// <summary>A mattress, m²·K/W.</summary>
    public const double MattressM2KPerW = 2.5;

    /// <summary>Room air that gets behind a lining, m³ per m² and hour.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A stated fit: the file gives the figure.</exception>
    public static Bounded AirBehindM3PerM2H(LiningFit fit) => fit switch
    {
        LiningFit.Bonded => new(0, 0, 0.01, "OURS", "bonded or sprayed foam"),
        LiningFit.Taped => new(0.02, 0.05, 0.1, "OURS", "boards cut and taped"),
        LiningFit.Loose => new(0.05, 0.1, 0.3, "OURS", "loose fill behind a close lining"),
        LiningFit.Slatted => new(0.15, 0.3, 1.0, "OURS", "behind slats"),
        _ => throw new ArgumentOutOfRangeException(nameof(fit), fit, "A stated fit comes with its own figure."),
    };
}
