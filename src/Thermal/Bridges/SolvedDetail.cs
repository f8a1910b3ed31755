using Thermal.Envelope.Details;
using Thermal.Materials;

namespace Thermal.Bridges;

/// <summary>A solved detail: what it adds to the loss of its panel and how cold it gets inside.</summary>
public abstract record SolvedDetail
{
    /// <summary>The detail.</summary>
    public required Detail Detail { get; init; }
    /// <summary>Where it stands.</summary>
    public required DetailPlace Place { get; init; }
    /// <summary>Its section with the loss films; environments "room" and "outside".</summary>
    public required SolvedSection Loss { get; init; }
    /// <summary>Its section with the films for mould inside.</summary>
    public required SolvedSection Mould { get; init; }
    /// <summary>U of the build-up beside it with the loss films, as it stands in the section, W/(m²·K).</summary>
    public required double PlainUWPerM2K { get; init; }
    /// <summary>Thermal coupling L of the whole section between room and outside, W/K, per metre for a line; twice that of <see cref="Loss"/> where half is drawn.</summary>
    public required double WholeCouplingWPerK { get; init; }
    /// <summary>What its plain parts would let through, ΣU·l or U·A, in the same unit.</summary>
    public required double PlainCouplingWPerK { get; init; }
    /// <summary>Temperature factor of the coldest inner point with the loss films: 0 as cold as outside, 1 as warm as the room.</summary>
    public required double ColdestFactor { get; init; }
    /// <summary>Temperature factor f_Rsi of the coldest inner point with the films for mould.</summary>
    public required double MouldFactor { get; init; }
    /// <summary>How far <see cref="ColdestFactor"/> can be off, by its change in the last refinement.</summary>
    public required double ColdestErrorFactor { get; init; }
    /// <summary>The coldest inner point with the loss films.</summary>
    public required SurfacePoint ColdestAt { get; init; }
}

/// <summary>A solved detail along a line.</summary>
public sealed record SolvedLine : SolvedDetail
{
    /// <summary>ψ with the loss films and bare dimensions, with the bounds of the solution, W/(m·K).</summary>
    public required Bounded PsiWPerMK { get; init; }
    /// <summary>U of the build-up with its ribs at their spacing, W/(m²·K); null for one alone and for edges.</summary>
    public required double? UWithRibsWPerM2K { get; init; }
}

/// <summary>A solved detail at a point.</summary>
public sealed record SolvedPoint : SolvedDetail
{
    /// <summary>χ with the loss films, with the bounds of the solution, W/K.</summary>
    public required Bounded ChiWPerK { get; init; }
}
