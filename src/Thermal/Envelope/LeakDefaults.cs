using Thermal.Materials;

namespace Thermal.Envelope;

/// <summary>How leaky a vehicle is, where the file gives a word and not a figure: openings low down and the same again high up.</summary>
/// <remarks>Source: OURS, from measured air changes of parked cars and mobile homes.</remarks>
public static class LeakDefaults
{
    /// <summary>New seals, cab vents closed, m².</summary>
    public static Bounded TightM2 { get; } = new(10e-4, 20e-4, 40e-4, "OURS", "leakage: tight, 20 cm² each");
    /// <summary>Usual, m².</summary>
    public static Bounded UsualM2 { get; } = new(25e-4, 50e-4, 80e-4, "OURS", "leakage: usual, 50 cm² each");
    /// <summary>Old door seals, flow-through vents, m².</summary>
    public static Bounded LeakyM2 { get; } = new(80e-4, 120e-4, 200e-4, "OURS", "leakage: leaky, 120 cm² each");
}
