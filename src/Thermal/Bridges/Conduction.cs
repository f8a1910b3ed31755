namespace Thermal.Bridges;

/// <summary>Steady conduction in a section.</summary>
public static class Conduction
{
    /// <summary>Solves a section: flows between its environments, temperatures anywhere, and how far off they can be.</summary>
    /// <param name="section">The section.</param>
    /// <param name="accuracy">How closely; null for the standard's one per cent.</param>
    /// <exception cref="SectionException">The section has problems: all of them are named.</exception>
    public static SolvedSection Solve(Section section, Accuracy? accuracy = null) => throw new NotImplementedException();
}
