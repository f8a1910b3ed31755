namespace Thermal.Bridges;

/// <summary>What is wrong with a section.</summary>
internal static class SectionCheck
{
    internal static IReadOnlyList<SectionProblem> Of(Section section) => throw new NotImplementedException();
}
