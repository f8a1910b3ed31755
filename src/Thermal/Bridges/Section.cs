namespace Thermal.Bridges;

/// <summary>A section through a construction: pieces of material and the air around them. Immutable.</summary>
/// <example><code>
/// var section = new Section("rib", SectionShape.Plane,
///     [new("foam", new(0, 0.4, 0, 0.04), 0.036), new("rib", new(0.199, 0.201, 0, 0.04), 50) { IsInset = true }],
///     [new("outside", new(0, 0.4, -1, 0), 0.04), new("room", new(0, 0.4, 0.04, 1), 0.13)]);
/// SolvedSection solved = Conduction.Solve(section);
/// </code></example>
/// <param name="Name">What it shows.</param>
/// <param name="Shape">Plane, round or solid.</param>
/// <param name="Pieces">Pieces; later ones that are inset replace earlier ones.</param>
/// <param name="Boundaries">Air around them; at least two environments unless only temperatures of one matter.</param>
public sealed record Section(string Name, SectionShape Shape, IReadOnlyList<Piece> Pieces, IReadOnlyList<Boundary> Boundaries)
{
    /// <summary>Everything wrong with it; empty where it can be solved. A <see cref="SectionFault.TemperatureJump"/> alone does not refuse it.</summary>
    public IReadOnlyList<SectionProblem> Problems => SectionCheck.Of(this);
}

/// <summary>What a section stands for.</summary>
public enum SectionShape
{
    /// <summary>The same along z: results per metre.</summary>
    Plane,
    /// <summary>Round about the axis x = 0: x is the radius, y the height.</summary>
    Round,
    /// <summary>A body in three dimensions.</summary>
    Solid,
}
