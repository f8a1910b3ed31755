namespace Thermal.Bridges;

/// <summary>Sections solved before, by their content. Whoever asks owns it; not for several threads at once.</summary>
public sealed class BridgeCache
{
    private readonly Dictionary<(Section Section, Accuracy Accuracy), SolvedSection> kept = new(new ByContent());

    /// <summary>Sections solved through this cache so far.</summary>
    public int SolvedCount { get; private set; }
    /// <summary>Sections found again instead of solved.</summary>
    public int FoundCount { get; private set; }

    /// <summary>Solves a section, or finds it again.</summary>
    /// <param name="section">The section; every name and number in it counts, whether or not it is the same object.</param>
    /// <param name="accuracy">How closely; null for the standard's one per cent.</param>
    /// <exception cref="SectionException">The section has problems; nothing is kept.</exception>
    public SolvedSection Solve(Section section, Accuracy? accuracy = null)
    {
        Accuracy asked = accuracy ?? Accuracy.OnePerCent;
        if (kept.TryGetValue((section, asked), out SolvedSection? found))
        {
            FoundCount++;
            return found;
        }
        SolvedSection solved = Conduction.Solve(section, asked);
        SolvedCount++;
        kept.Add((section, asked), solved);
        return solved;
    }

    private sealed class ByContent : IEqualityComparer<(Section Section, Accuracy Accuracy)>
    {
        public bool Equals((Section Section, Accuracy Accuracy) one, (Section Section, Accuracy Accuracy) other) =>
            one.Accuracy == other.Accuracy && one.Section.Name == other.Section.Name && one.Section.Shape == other.Section.Shape
            && one.Section.Pieces.SequenceEqual(other.Section.Pieces) && one.Section.Boundaries.SequenceEqual(other.Section.Boundaries);

        public int GetHashCode((Section Section, Accuracy Accuracy) key)
        {
            HashCode hash = default;
            hash.Add(key.Accuracy);
            foreach (Piece piece in key.Section.Pieces) hash.Add(piece);
            foreach (Boundary boundary in key.Section.Boundaries) hash.Add(boundary);
            return hash.ToHashCode();
        }
    }
}
