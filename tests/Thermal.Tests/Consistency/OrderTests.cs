using System.Reflection;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Thermal.Tests.Consistency;

/// <summary>Who may use whom: projects, packages, and the folders of the physics.</summary>
public sealed partial class OrderTests
{
    /// <summary>Folders of the physics from left to right; those in one row know nothing of each other.</summary>
    private static readonly string[][] Order =
    [
        ["Numerics", "Air", "Materials"], ["Climates", "People"], ["Envelope"], ["Bridges", "Ventilation"], ["Zones"],
        ["Moisture", "Heating", "Water", "Power"], ["Assessments"], ["Trips"], ["Choices"],
    ];

    private static readonly Dictionary<string, string[]> MayReference = new()
    {
        ["Thermal"] = [],
        ["Thermal.Words"] = ["Thermal"],
        ["Thermal.Files"] = ["Thermal", "Thermal.Words"],
        ["Thermal.Charts"] = ["Thermal", "Thermal.Words"],
        ["Thermal.Reports"] = ["Thermal", "Thermal.Words", "Thermal.Charts"],
        ["Thermal.Cli"] = ["Thermal", "Thermal.Words", "Thermal.Files", "Thermal.Charts", "Thermal.Reports"],
        ["Thermal.Web"] = ["Thermal", "Thermal.Words", "Thermal.Files", "Thermal.Charts", "Thermal.Reports"],
    };

    private static readonly Dictionary<string, string[]> MayUsePackages = new()
    {
        ["Thermal"] = ["MathNet.Numerics", "CsvHelper"],
        ["Thermal.Words"] = ["UnitsNet"],
        ["Thermal.Files"] = ["YamlDotNet", "CsvHelper"],
        ["Thermal.Charts"] = ["ScottPlot"],
        ["Thermal.Reports"] = [],
        ["Thermal.Cli"] = ["System.CommandLine"],
        ["Thermal.Web"] = [],
    };

    private static int RowOf(string folder) => Array.FindIndex(Order, row => row.Contains(folder));

    [Fact]
    public void A_folder_of_the_physics_uses_only_what_stands_left_of_it() => Ground.NothingOffends(
        from path in Ground.Files("src/Thermal", "*.cs")
        let parts = path.Split('/')
        where parts.Length > 3
        from Match use in Used().Matches(Ground.Text(path))
        let used = use.Groups[1].Value
        where used != parts[2] && RowOf(used) >= 0 && RowOf(used) >= RowOf(parts[2])
        select $"{path}: {use.Value}");

    /// <summary>A using line, or a name written out.</summary>
    [GeneratedRegex(@"(?:using Thermal\.|(?<![\w.])Thermal\.)([A-Z]\w+)")]
    private static partial Regex Used();

    [Fact]
    public void Every_folder_of_the_physics_has_its_place_in_the_order() => Ground.NothingOffends(
        Ground.Files("src/Thermal", "*.cs").Select(path => path.Split('/')).Where(parts => parts.Length > 3 && RowOf(parts[2]) < 0).Select(parts => parts[2]).Distinct());

    [Fact]
    public void Projects_reference_only_what_the_table_allows() => Ground.NothingOffends(
        from path in Ground.Files("src", "*.csproj")
        let project = Path.GetFileNameWithoutExtension(path)
        let text = XDocument.Parse(Ground.Text(path))
        from name in text.Descendants("ProjectReference").Select(reference => Path.GetFileNameWithoutExtension(reference.Attribute("Include")!.Value.Replace('\\', '/'))).Select(name => (Name: name, May: MayReference))
            .Concat(text.Descendants("PackageReference").Select(reference => (Name: reference.Attribute("Include")!.Value, May: MayUsePackages)))
        where !name.May.TryGetValue(project, out string[]? allowed) || !allowed.Contains(name.Name)
        select $"{project}: {name.Name}");

    /// <summary>The built assembly says it too: a reference may come in by way of another project.</summary>
    [Theory, InlineData("Thermal"), InlineData("Thermal.Words"), InlineData("Thermal.Files")]
    public void Built_assemblies_reference_only_what_the_table_allows(string project) => Ground.NothingOffends(
        Assembly.Load(project).GetReferencedAssemblies().Select(name => name.Name!)
            .Where(name => !name.StartsWith("System", StringComparison.Ordinal) && name is not ("netstandard" or "mscorlib" or "Microsoft.CSharp"))
            .Except(MayReference[project]).Except(MayUsePackages[project]));
}
