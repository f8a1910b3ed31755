using System.Text;
using Thermal.Assessments;

namespace Thermal.Files.Tests.Vehicles;

/// <summary>Nonsense is refused by name, at its line, with what to write instead.</summary>
public sealed class RefusalTests
{
    private static readonly string Good = VehicleLibrary.Text("weekend-van")!;

    /// <summary>What is replaced in a good file, by what, and what the problem must say: where, then what.</summary>
    [Theory]
    [InlineData("thickness: 25 mm", "thickness: 25", "roof / layer 2 / thickness", "25 has no unit; write it with one, for instance 25 mm")]
    [InlineData("thickness: 25 mm", "thickness: 2,5 mm", "roof / layer 2 / thickness", "write 2.5 mm")]
    [InlineData("material: air_gap, thickness: 11 mm", "material: air_gap, thickness: 0.011 mm", "left side / layer 2 / thickness", "at least 0.1 mm")]
    [InlineData("leakage: usual\n    vents", "leakage: 0 cm²\n    vents", "living / leakage", "0 cm² is zero")]
    [InlineData("volume: 3.2 m³", "volume: 3,2 m³", "cab / volume", "write 3.2 m³")]
    [InlineData("thickness: 25 mm", "thickness: 25 m", "roof / layer 2 / thickness", "is 25 mm meant?")]
    [InlineData("thickness: 25 mm", "thickness: -25 mm", "roof / layer 2 / thickness", "-25 mm is negative")]
    [InlineData("thickness: 25 mm", "thickness: 0 mm", "roof / layer 2 / thickness", "0 mm is zero")]
    [InlineData("thickness: 25 mm", "thickness: .nan", "roof / layer 2 / thickness", "not a number that can be computed with")]
    [InlineData("thickness: 25 mm", "thickness: .inf", "roof / layer 2 / thickness", "not a number that can be computed with")]
    [InlineData("thickness: 25 mm", "thickness: 1_000 mm", "roof / layer 2 / thickness", "write 1000 mm")]
    [InlineData("thickness: 25 mm", "thickness: 025 mm", "roof / layer 2 / thickness", "write 25 mm")]
    [InlineData("thickness: 25 mm", "thickness: 25 W", "roof / layer 2 / thickness", "W measures power, and this must be a length")]
    [InlineData("thickness: 25 mm", "thickness: ", "roof / layer 2 / thickness", "nothing is written here")]
    [InlineData("thickness: 25 mm", "thickness: [25 mm]", "roof / layer 2", "a list stands here")]
    [InlineData("thickness: 25 mm", "thicknes: 25 mm", "roof / layer 2 / thicknes", "did you mean thickness?")]
    [InlineData("material: elastomeric_foam, thickness: 25 mm", "material: elastomeric_foam", "roof / layer 2", "thickness is missing")]
    [InlineData("material: elastomeric_foam, thickness: 25 mm", "material: elastomeric_fom, thickness: 25 mm", "roof / layer 2 / material", "did you mean elastomeric_foam?")]
    [InlineData("material: elastomeric_foam, thickness: 25 mm", "material: elastomeric_foam, thickness: 25 mm, battens: {material: steel_sheet, share: 10 %}", "roof / layer 2 / battens / material", "describe it under ribs with its shape")]
    [InlineData("material: elastomeric_foam, thickness: 25 mm", "material: elastomeric_foam, thickness: 25 mm, battens: {material: softwood, share: 110 %}", "roof / layer 2 / battens / share", "110 % is outside 0.1 % to 50 %")]
    [InlineData("length: 3.12 m\n  width", "length: 3120 m\n  width", "body / length", "is 3120 mm meant?")]
    [InlineData("usable: 90 Ah", "usable: 90 Wh", "battery / usable", "Wh measures energy, and this must be a charge")]
    [InlineData("class: diesel_air_small", "class: diesel_air_smal", "heater / class", "did you mean diesel_air_small?")]
    [InlineData("place: Braemar", "place: Bremar", "site / place", "did you mean Braemar?")]
    [InlineData("area: 0.5 m²", "area: 0 m²", "canister / area", "0 m² is zero")]
    [InlineData("width: 900 mm\n        height: 500 mm", "width: 3900 mm\n        height: 500 mm", "left side", "side window reaches beyond its panel")]
    [InlineData("width: 500 mm\n        height: 550 mm\n        count: 2", "width: 1800 mm\n        height: 1900 mm\n        count: 2", "rear doors", "the openings (6.84 m²) are larger than their panel (3.609 m²)")]
    [InlineData("name: right side with sliding door", "name: left side", "left side", "the name left side stands twice")]
    [InlineData("frame_share: 15 %", "frame_share: 15", "left side / side window / frame_share", "is 15 % meant?")]
    [InlineData("area: 0.5 m²\n    zone: living", "area: 0.5 m²\n    zone: livng", "canister / zone", "did you mean living?")]
    [InlineData("at_night: open ", "at_night: opn ", "passage 1 / at_night", "did you mean open?")]
    [InlineData("cover_at_night: magnet screen", "cover_at_night: magnet scren", "left side / side window / cover_at_night", "did you mean magnet screen?")]
    [InlineData("{gap: air, thickness: 20 mm}", "{pane: acrylic, thickness: 20 mm}", "left side / side window", "panes and gaps must take turns")]
    [InlineData("{pane: glass, thickness: 4 mm}", "{pane: xps, thickness: 4 mm}", "rear doors / rear windows / pane or gap 1 / pane", "XPS board is no pane")]
    [InlineData("kind: cab\n", "kind: cab\n    volume: 3 m³\n    floor_area: 2 m²\n    height: 1 m\n  - name: attic\n    kind: hold\n", "file", "no panel belongs to the zone attic")]
    [InlineData("    width: 1.8 m\n    height: 0.85 m\n", "", "windscreen", "its size is missing")]
    [InlineData("width: 1.8 m\n    height: 0.85 m\n", "width: 1.8 m\n", "windscreen", "width and height belong together")]
    [InlineData("temperature: 17 °C", "temperature: 17", "people / temperature", "17 °C or 17 °F")]
    [InlineData("material: xps", "material: goose_feathers", "floor / layer 3 / material", "the command materials lists those built in")]
    [InlineData("sleepers: 2", "sleepers: 2.5", "people / sleepers", "is not a whole number")]
    [InlineData("sleepers: 2", "sleepers: 02", "people / sleepers", "is not a whole number")]
    [InlineData("format: 1", "format: 2", "format", "2 is outside 1 to 1")]
    [InlineData("at_home: 13 h", "at_home: 8 h", "people / at_home", "at_home includes the night")]
    [InlineData("kind: cab", "kind: living", "file", "2 rooms are of kind living; exactly one must be")]
    [InlineData("january: 20 %", "january: 20 %\n    january: 30 %", "people / nights_lived_in / january", "this key stands twice")]
    [InlineData("name: weekend van", "name: &a weekend van", "file", "anchors with & are not read")]
    [InlineData("name: weekend van", "name: !!str weekend van", "file", "type tags with ! are not read")]
    [InlineData("battery:\n  usable: 90 Ah", "battery:\n  <<: {usable: 90 Ah}\n  usable: 90 Ah", "battery / <<", "merged keys are not read")]
    [InlineData("battery:\n  usable: 90 Ah\n  zone: living", "battery: *none", "file", "references with * are not read")]
    [InlineData("battery:\n  usable: 90 Ah", "battery:\n\tusable: 90 Ah", "file", "cannot be read as YAML")]
    [InlineData("battery:\n  usable: 90 Ah\n  zone: living", "battery: 90 Ah", "battery", "write the keys of the battery: usable")]
    public void A_fault_is_named_where_it_stands_with_what_to_write_instead(string old, string bad, string where, string what)
    {
        Assert.Contains(old, Good, StringComparison.Ordinal);
        int at = Good.IndexOf(old, StringComparison.Ordinal);
        string text = Good[..at] + bad + Good[(at + old.Length)..];
        Reading<Case> reading = VehicleFile.Read(text, "van.yaml");
        Assert.Null(reading.Value);
        Problem problem = Assert.Single(reading.Problems, problem => problem.Where == where && problem.What.Contains(what, StringComparison.Ordinal));
        int line = Good[..at].Count(letter => letter == '\n') + 1;
        Assert.InRange(problem.Line, 1, line + bad.Count(letter => letter == '\n') + 8); // at the fault, or at the map that holds it
    }

    [Fact]
    public void All_problems_are_told_at_once_in_the_order_of_their_lines()
    {
        string text = Good.Replace("sleepers: 2", "sleepers: two", StringComparison.Ordinal)
            .Replace("usable: 90 Ah", "usable: 90", StringComparison.Ordinal)
            .Replace("lining: taped", "lining: tapped", StringComparison.Ordinal);
        IReadOnlyList<Problem> problems = VehicleFile.Read(text, "van.yaml").Problems;
        Assert.Equal(["people / sleepers", "battery / usable", "floor / lining"], problems.Select(problem => problem.Where));
        Assert.Equal(problems.Order(Comparer<Problem>.Create((a, b) => a.Line.CompareTo(b.Line))), problems);
    }

    [Fact]
    public void A_problem_tells_line_and_column_of_its_value()
    {
        Problem problem = Assert.Single(VehicleFile.Read(Good.Replace("usable: 90 Ah", "usable: 90", StringComparison.Ordinal), "van.yaml").Problems);
        string[] lines = Good.Split('\n');
        Assert.Equal("  usable: 90 Ah", lines[problem.Line - 1]);
        Assert.Equal("  usable: ".Length + 1, problem.Column);
    }

    [Theory]
    [InlineData("")]
    [InlineData("   \n\n")]
    [InlineData("# only a comment\n")]
    public void An_empty_file_is_refused(string text) => Assert.Contains("nothing is written here", Only(text).What, StringComparison.Ordinal);

    [Theory]
    [InlineData("just words")]
    [InlineData("- a\n- list")]
    public void What_is_no_map_is_refused(string text) => Assert.Contains("write the keys of a vehicle file", Only(text).What, StringComparison.Ordinal);

    [Fact]
    public void A_binary_file_is_refused()
    {
        byte[] bytes = [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A, 0, 0, 0, 0x0D];
        Assert.Contains("not a text file", Assert.Single(VehicleFile.Read(bytes, "van.yaml").Problems).What, StringComparison.Ordinal);
        Assert.Contains("not a text file", Only("a\0b").What, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_too_large_is_refused() => Assert.Contains("too many for a vehicle", Only(new string('[', 10_000_000)).What, StringComparison.Ordinal);

    [Theory]
    [InlineData("[")]
    [InlineData("{a: ")]
    [InlineData("- ")]
    [InlineData("? ")]
    public void Deep_nesting_is_refused_without_falling_over(string opening) =>
        Assert.Contains(VehicleFile.Read(string.Concat(Enumerable.Repeat(opening, 100_000)), "van.yaml").Problems, problem => problem.What.Contains("levels deep", StringComparison.Ordinal));

    [Theory]
    [InlineData("!!]")]
    [InlineData("b:({c: N}\n]")]
    [InlineData("a: \"unclosed")]
    [InlineData("a: [1, 2")]
    [InlineData("%YAML 9.9\n---\na: 1")]
    public void A_text_the_parser_chokes_on_is_refused(string text) => Assert.NotEmpty(VehicleFile.Read(text, "van.yaml").Problems);

    [Fact]
    public void A_second_document_is_refused() => Assert.Contains(VehicleFile.Read(Good + "\n---\nformat: 1\n", "van.yaml").Problems, problem => problem.What.Contains("one vehicle a file", StringComparison.Ordinal));

    [Fact]
    public void A_byte_order_mark_does_no_harm() => Assert.Empty(VehicleFile.Read([.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(Good)], "van.yaml").Problems);

    [Fact]
    public void Windows_line_ends_do_no_harm() => Assert.Empty(VehicleFile.Read(Good.Replace("\n", "\r\n", StringComparison.Ordinal), "van.yaml").Problems);

    [Fact]
    public void A_missing_file_is_a_problem_and_no_exception() =>
        Assert.Contains("there is no such file", Assert.Single(VehicleFile.Open(Path.Combine(Path.GetTempPath(), "no", "such.yaml")).Problems).What, StringComparison.Ordinal);

    [Fact]
    public void A_folder_is_a_problem_and_no_exception() => Assert.Single(VehicleFile.Open(Path.GetTempPath()).Problems);

    [Fact]
    public void A_misspelt_built_in_vehicle_gets_its_name_offered() =>
        Assert.Contains("did you mean library-van?", Assert.Single(VehicleLibrary.Open("libary-van").Problems).What, StringComparison.Ordinal);

    private static Problem Only(string text)
    {
        Reading<Case> reading = VehicleFile.Read(text, "van.yaml");
        Assert.Null(reading.Value);
        return Assert.Single(reading.Problems);
    }
}
