namespace Thermal.Bridges;

/// <summary>One thing wrong with a section.</summary>
/// <param name="Fault">What is wrong.</param>
/// <param name="Name">The piece or environment.</param>
/// <param name="Other">The other piece, or null.</param>
/// <param name="Where">Where, m; null where it is not about a place.</param>
public sealed record SectionProblem(SectionFault Fault, string Name, string? Other = null, Box? Where = null);

/// <summary>What can be wrong with a section.</summary>
public enum SectionFault
{
    /// <summary>No pieces, or more than can be solved.</summary>
    NoPieces,
    /// <summary>A piece or a boundary has no thickness, a negative one, one that is not a number, or an end beyond all reason.</summary>
    NoThickness,
    /// <summary>A conductivity outside 0.001 to 500 W/(m·K).</summary>
    ConductivityOutOfRange,
    /// <summary>Conductivities further apart than a hundred thousand to one.</summary>
    ConductivityRatio,
    /// <summary>Two pieces claim the same place and the later one is not inset; or boundaries of two environments or two films claim the same face.</summary>
    Overlap,
    /// <summary>An inset piece lies where there is nothing to be set into; one that only stands out is fine.</summary>
    InsetOutside,
    /// <summary>A face inside the limits borders on neither a piece nor an environment.</summary>
    Leak,
    /// <summary>An environment touches no piece.</summary>
    TouchesNothing,
    /// <summary>A surface resistance outside 0 to 10 m²·K/W.</summary>
    ResistanceOutOfRange,
    /// <summary>Pieces that no environment reaches through others: their temperature is anyone's guess.</summary>
    Afloat,
    /// <summary>A round section reaches below radius 0.</summary>
    NegativeRadius,
    /// <summary>Two environments with R_s 0 meet at one edge: the flow between them has no finite value. Told, but solved for temperatures; it never counts as converged.</summary>
    TemperatureJump,
}
