using Thermal.Envelope.Details;
using Thermal.Materials;

namespace Thermal.Envelope;

/// <summary>A rib, pillar or edge: described by its <see cref="Detail"/>, or with a linear thermal transmittance given from elsewhere.</summary>
public sealed record LinearBridge
{
    /// <summary>What the builder calls it, such as roof bow.</summary>
    public required string Name { get; init; }
    /// <summary>Its description; null where ψ is given.</summary>
    public LineDetail? Detail { get; init; }
    /// <summary>Linear thermal transmittance ψ, found with the loss films and bare dimensions, W/(m·K), -1 to 5; null for a described one that was not solved yet.</summary>
    public Bounded? PsiWPerMK { get; init => field = value is { } psi ? Guard.InRange(psi, -1, 5, "W/(m·K)", nameof(PsiWPerMK)) : null; }
    /// <summary>Total length in the surface, m, 0 to 500.</summary>
    public required double LengthM { get; init => field = Guard.InRange(value, 0, 500, "m", nameof(LengthM)); }
    /// <summary>Distance between neighbours, m, where they repeat; for the section, the picture and the wall's U with ribs.</summary>
    public double? SpacingM { get; init; }
    /// <summary>Temperature factor of the coldest inner point beside it with the loss films, fraction of the difference, 0 to 1; null where not known.</summary>
    public double? ColdestFactor { get; init => field = value is { } factor ? Guard.InRange(factor, 0, 1, "(factor)", nameof(ColdestFactor)) : null; }
    /// <summary>The same with the films for mould, f_Rsi; null where not known: then <see cref="ColdestFactor"/> stands for it.</summary>
    public double? MouldFactor { get; init => field = value is { } factor ? Guard.InRange(factor, 0, 1, "(factor)", nameof(MouldFactor)) : null; }
    /// <summary>The build-up a given value was found for, as <see cref="Stack.Signature"/>; null where the file does not say or the rib is described.</summary>
    public string? GivenFor { get; init; }

    /// <summary>Heat per kelvin ψ·l, W/K.</summary>
    /// <exception cref="InvalidOperationException">A described rib that was not solved.</exception>
    public double LossWPerK => (PsiWPerMK ?? throw new InvalidOperationException($"{Name} is described but not solved: evaluate the vehicle first.")).Value * LengthM;
}
