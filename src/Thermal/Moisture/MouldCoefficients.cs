using Thermal.Materials;

namespace Thermal.Moisture;

/// <summary>How a class of material differs from pine sapwood in the mould model.</summary>
/// <param name="FirstFactor">Speed up to index 1, against pine.</param>
/// <param name="LaterFactor">Speed beyond it; null where it follows from time to visible growth (wood).</param>
/// <param name="ConstantFactor">A of the highest index A + B·x − C·x², x the way from critical humidity to 100 %.</param>
/// <param name="LinearFactor">B.</param>
/// <param name="SquareFactor">C.</param>
/// <param name="LeastHumidityFraction">Lowest humidity at which anything grows, fraction.</param>
/// <param name="DeclineFactor">Decline in dry hours, against wood.</param>
internal sealed record MouldCoefficients(double FirstFactor, double? LaterFactor, double ConstantFactor, double LinearFactor, double SquareFactor,
    double LeastHumidityFraction, double DeclineFactor)
{
    private static readonly MouldCoefficients Wood = new(1, null, 1, 7, 2, 0.80, 1), Sensitive = new(0.578, 0.386, 0.3, 6, 1, 0.80, 0.5),
        MediumResistant = new(0.072, 0.097, 0, 5, 1.5, 0.85, 0.25), Resistant = new(0.033, 0.014, 0, 3, 1, 0.85, 0.1);

    /// <summary>Those of a class.</summary>
    /// <remarks>
    /// Source: HV-1999 for wood; OJANEN-2010, table of classes, for the others (from memory). Which of its steps of decline (1, 0.5, 0.25, 0.1) goes
    /// with which class is chosen by us: the source leaves it to a test of the material.
    /// </remarks>
    internal static MouldCoefficients Of(MouldClass material) => material switch
    {
        MouldClass.VerySensitive => Wood,
        MouldClass.Sensitive => Sensitive,
        MouldClass.MediumResistant => MediumResistant,
        MouldClass.Resistant => Resistant,
        _ => throw new ArgumentOutOfRangeException(nameof(material), material, "No such class."),
    };
}
