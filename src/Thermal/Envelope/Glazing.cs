using Thermal.Materials;

namespace Thermal.Envelope;

/// <summary>Panes and the gaps between them, inside to outside.</summary>
public sealed record Glazing
{
    /// <param name="panes">1 to 4 panes, inside to outside.</param>
    /// <param name="gaps">One gap fewer than panes.</param>
    /// <exception cref="ArgumentException">Counts that do not fit.</exception>
    public Glazing(IReadOnlyList<Pane> panes, IReadOnlyList<GlazingGap> gaps)
    {
        if (panes.Count is < 1 or > 4 || gaps.Count != panes.Count - 1)
            throw new ArgumentException("A glazing has 1 to 4 panes and one gap fewer.", nameof(panes));
        Panes = panes;
        Gaps = gaps;
    }

    /// <summary>Panes, inside to outside.</summary>
    public IReadOnlyList<Pane> Panes { get; }

    /// <summary>Gaps, inside to outside.</summary>
    public IReadOnlyList<GlazingGap> Gaps { get; }
}

/// <summary>One pane.</summary>
public sealed record Pane
{
    /// <summary>Glass, acrylic, polycarbonate.</summary>
    public required Material Material { get; init; }
    /// <summary>Thickness, m, 0.0005 to 0.06.</summary>
    public required double ThicknessM { get; init => field = Guard.InRange(value, 0.0005, 0.06, "m", nameof(ThicknessM)); }
    /// <summary>Corrected emissivity of the face towards the room, fraction, 0.01 to 1.</summary>
    public double InnerEmissivityFraction { get; init => field = Guard.InRange(value, 0.01, 1, "(fraction)", nameof(InnerEmissivityFraction)); } = 0.837;
    /// <summary>Corrected emissivity of the face towards the outside, fraction, 0.01 to 1.</summary>
    public double OuterEmissivityFraction { get; init => field = Guard.InRange(value, 0.01, 1, "(fraction)", nameof(OuterEmissivityFraction)); } = 0.837;
}

/// <summary>The gap between two panes.</summary>
public sealed record GlazingGap
{
    /// <summary>Width, m, 0.001 to 0.1.</summary>
    public required double ThicknessM { get; init => field = Guard.InRange(value, 0.001, 0.1, "m", nameof(ThicknessM)); }
    /// <summary>The filling; the rest is air.</summary>
    public GapGas Gas { get; init; } = GapGas.Air;
    /// <summary>Share of the filling, fraction, 0 to 1.</summary>
    public double GasFraction { get; init => field = Guard.InRange(value, 0, 1, "(fraction)", nameof(GasFraction)); } = 1;
}

/// <summary>Fillings of a gap.</summary>
public enum GapGas
{
    /// <summary>Air.</summary>
    Air,
    /// <summary>Argon.</summary>
    Argon,
    /// <summary>Krypton.</summary>
    Krypton,
}
