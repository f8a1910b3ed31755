using Thermal.Files.VehicleKeys;
using Thermal.Materials;
using Thermal.Trips;

namespace Thermal.Files.Yaml;

/// <summary>What one reading of a file has gathered so far: problems, and the names that other places may use.</summary>
/// <param name="fileName">Name shown in problems.</param>
/// <param name="places">Places that may be named.</param>
internal sealed class Scope(string fileName, PlaceLibrary places)
{
    private readonly List<Problem> problems = [];
    private readonly HashSet<string> zones = new(StringComparer.Ordinal);
    private readonly List<(Spot Spot, string Name)> zoneReferences = [];

    /// <summary>Places that may be named.</summary>
    internal PlaceLibrary Places { get; } = places;

    /// <summary>Folder that names of files are relative to; null where a text may name none.</summary>
    internal string? Folder { get; init; }

    /// <summary>How people live on the whole trip, once read; null where the file has a problem there.</summary>
    internal TripHabits? Habits { get; set; }

    /// <summary>Materials added in the file; null for one that has a problem itself.</summary>
    internal Dictionary<string, Material?> OwnMaterials { get; } = new(StringComparer.Ordinal);

    /// <summary>Bare dimensions of the living space, where the file gives them.</summary>
    internal BodySize? Body { get; set; }

    /// <summary>Names of the rooms of kind living; exactly one in a good file.</summary>
    internal List<string> LivingNames { get; } = [];

    /// <summary>The living space whose volume must be found from the body; null where the file states it.</summary>
    internal string? VolumeFromBody { get; set; }

    /// <summary>All problems, in the order of their lines.</summary>
    internal IReadOnlyList<Problem> Problems => [.. problems.Distinct().OrderBy(problem => problem.Line).ThenBy(problem => problem.Column)];

    /// <summary>How many problems there are.</summary>
    internal int ProblemCount => problems.Count;

    /// <summary>Adds a problem.</summary>
    internal void Add(int line, int column, string where, string what) => problems.Add(new(fileName, Math.Max(1, line), Math.Max(1, column), where, what));

    /// <summary>Notes a zone's name.</summary>
    internal void Declare(string zone) => zones.Add(zone);

    /// <summary>Notes that a zone is named somewhere; checked when all are known.</summary>
    internal void Refer(Spot spot, string zone) => zoneReferences.Add((spot, zone));

    /// <summary>Adds a problem for each zone that is named and does not exist.</summary>
    internal void CheckReferences()
    {
        foreach ((Spot spot, string name) in zoneReferences.Where(reference => !zones.Contains(reference.Name)))
            spot.Problem($"there is no zone \"{name}\"; {Offer.Of(name, zones, "the zones are")}");
    }
}
