namespace Thermal.Bridges;

/// <summary>Sections solved before, by their content. Whoever asks owns it; not for several threads at once.</summary>
public sealed class BridgeCache
{
    /// <summary>Sections solved through this cache so far.</summary>
    public int SolvedCount { get; private set; }
    /// <summary>Sections found again instead of solved.</summary>
    public int FoundCount { get; private set; }

    /// <summary>Solves a section, or finds it again.</summary>
    /// <param name="section">The section.</param>
    /// <param name="accuracy">How closely; null for the standard's one per cent.</param>
    public SolvedSection Solve(Section section, Accuracy? accuracy = null) => throw new NotImplementedException();
}
