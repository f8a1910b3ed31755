using Thermal.Bridges;

namespace Thermal.Tests.Published;

/// <summary>Sections kept as two tables, NAME-pieces.csv and NAME-air.csv, so that the data of a check stand outside the code.</summary>
internal static class SectionTable
{
    /// <summary>One case of a pair of tables.</summary>
    internal static Section Of(string name, string sectionCase, SectionShape shape = SectionShape.Plane) => new($"{name} {sectionCase}", shape,
        [.. Rows($"{name}-pieces.csv", sectionCase).Select(row => new Piece((string)row[1], BoxOf(row), (double)row[8]) { IsInset = (double)row[9] == 1 })],
        [.. Rows($"{name}-air.csv", sectionCase).Select(row => new Boundary((string)row[1], BoxOf(row), (double)row[8]))]);

    /// <summary>Rows of a table whose first cell names the case.</summary>
    internal static IEnumerable<object[]> Rows(string file, string sectionCase) => PublishedTable.Rows(file).Where(row => (string)row[0] == sectionCase);

    /// <summary>Where an environment stands in the lists of a solution.</summary>
    internal static int Place(this SolvedSection solved, string environment) => solved.Environments.ToList().IndexOf(environment);

    private static Box BoxOf(object[] row) => new((double)row[2], (double)row[3], (double)row[4], (double)row[5], (double)row[6], (double)row[7]);
}
