using System.Text.Json;
using System.Text.RegularExpressions;
using Thermal.Cli.Json;
using Thermal.Files;
using Thermal.Tests;

namespace Thermal.Cli.Tests;

/// <summary>detail lists ribs, edges and bolts, tells one in full, and computes one without a vehicle.</summary>
public sealed partial class DetailTests : IDisposable
{
    private const string Hat = "{shape: hat, sheet: 1.2 mm, depth: 36 mm, crown: 40 mm, foot: 20 mm}", Layers = "birch_plywood 6.5 mm, cross_linked_pe_foam 40 mm, steel_sheet 1 mm";

    private readonly TemporaryFolder folder = new();

    private string Van => folder.With("van.yaml", DescribedFile.Text);

    public void Dispose() => folder.Dispose();

    [Fact]
    public void The_table_names_every_rib_and_bolt_and_every_kind()
    {
        Ran ran = Ran.Of("detail", Van);
        Assert.Equal(("", 0), (ran.Problems, ran.ExitCode));
        Assert.All(["wall ribs", "hat rib", "rail bolts", "6 pieces", "19.5 m"], told => Assert.Contains(told, ran.Answers, StringComparison.Ordinal));
        Assert.All(DetailExamples.All, example => Assert.Contains(example.Text, ran.Answers, StringComparison.Ordinal));
    }

    [Fact]
    public void Without_a_file_the_library_van_is_listed() => Assert.Equal(Ran.Of("detail", "library-van").Answers, Ran.Of("detail").Answers);

    [Fact]
    public void One_rib_in_full() => Approved.Match(Ran.Of("detail", Van, "wall ribs").Answers);

    [Fact]
    public void One_rib_without_a_vehicle_in_US_units() => Approved.Match(Ran.Of("detail", "--rib", Hat, "--layers", Layers, "--spacing", "500 mm", "--units", "us").Answers);

    [Fact]
    public void A_name_may_begin_with_its_panel_and_in_capitals() =>
        Assert.Equal(Ran.Of("detail", Van, "wall ribs").Answers, Ran.Of("detail", Van, "Left side/Wall ribs").Answers);

    [Theory]
    [InlineData("20 %", "stays dry")]
    [InlineData("60 %", "it drips")]
    public void Damp_air_makes_a_rib_drip_that_dry_air_leaves_dry(string humidity, string told) =>
        Assert.Contains(told, Ran.Of("detail", "--rib", Hat, "--layers", Layers, "--humidity", humidity).Answers.ReplaceLineEndings(" "), StringComparison.Ordinal);

    [Fact]
    public void Frost_is_told_where_it_is_cold_enough() =>
        Assert.Contains("frost grows", Ran.Of("detail", "--rib", Hat, "--layers", Layers, "--outside", "-30 °C").Answers.ReplaceLineEndings(" "), StringComparison.Ordinal);

    [Fact]
    public void Loss_of_a_loose_rib_is_its_psi_times_the_difference()
    {
        JsonElement bridge = Json("--rib", Hat, "--layers", Layers, "--inside", "20 °C", "--outside", "-10 °C").GetProperty("bridge");
        JsonElement psi = bridge.GetProperty("solved").GetProperty("psi_w_per_mk");
        Assert.Equal(psi.GetProperty("value").GetDouble() * 30, bridge.GetProperty("loss_w").GetDouble(), 1e-9);
        Assert.InRange(psi.GetProperty("value").GetDouble(), psi.GetProperty("low").GetDouble(), psi.GetProperty("high").GetDouble());
    }

    [Fact]
    public void The_file_and_the_line_of_keys_give_the_same_rib()
    {
        JsonElement inVan = Json(Van, "wall ribs").GetProperty("bridge").GetProperty("solved").GetProperty("description");
        JsonElement alone = Json("--rib", Hat, "--layers", Layers).GetProperty("bridge").GetProperty("solved").GetProperty("description");
        Assert.Equal(inVan.ToString(), alone.ToString());
    }

    [Fact]
    public void Every_key_of_its_JSON_is_told_by_help_and_every_told_key_is_there() => Assert.Equal(
        JsonKeys.Of("detail").Select(key => key.Key).Order(),
        Json(Van).EnumerateObject().Concat(Json(Van, "wall ribs").EnumerateObject()).Select(key => key.Name).Distinct().Order());

    [Fact]
    public void Bridges_of_assess_are_those_of_detail()
    {
        JsonElement assessed = JsonDocument.Parse(Ran.Of("assess", Van, "--json").Answers).RootElement;
        Assert.Equal(Json(Van).GetProperty("bridges").ToString(), assessed.GetProperty("bridges").ToString());
    }

    [Fact]
    public void US_units_leave_no_metric_temperature_or_thickness_behind()
    {
        string answers = Ran.Of("detail", Van, "wall ribs", "--units", "us").Answers;
        Assert.DoesNotContain("°C", answers, StringComparison.Ordinal);
        Assert.DoesNotContain(" mm", answers, StringComparison.Ordinal);
        Assert.DoesNotMatch(DecimalComma(), answers);
    }

    [Fact]
    public void Pictures_are_written_as_SVG_and_PNG()
    {
        Assert.Equal(("", 0), Codes(Ran.Of("detail", Van, "wall ribs", "--pictures", folder.At("out"))));
        Assert.Equal(0, Ran.Of("detail", "--rib", Hat, "--layers", Layers, "--pictures", folder.At("out")).ExitCode);
        Assert.Equal(["hat-rib-section.png", "hat-rib-section.svg", "left-side-wall-ribs-fillings.png", "left-side-wall-ribs-fillings.svg", "left-side-wall-ribs-section.png",
            "left-side-wall-ribs-section.svg", "left-side-wall-ribs-strips.png", "left-side-wall-ribs-strips.svg"], Directory.GetFiles(folder.At("out")).Select(file => Path.GetFileName(file)).Order(StringComparer.Ordinal));
    }

    public static TheoryData<string[], string> Refused => new()
    {
        { ["library-van", "--pictures", "out"], "write its NAME too" },
        { ["wal ribs"], "library van has no rib" },
        { ["libary-van"], "did you mean library-van" },
        { ["no-such.yaml"], "no such file" },
        { ["library-van", "nothing at all like it"], "there are:" },
        { ["--rib", Hat], "--layers" },
        { ["--layers", Layers], "--rib or --bolt" },
        { ["--rib", Hat, "--bolt", "{diameter: 8 mm}", "--layers", Layers], "one at a time" },
        { ["library-van", "--rib", Hat, "--layers", Layers], "leave FILE and NAME out" },
        { ["--rib", "{shape: hatt}", "--layers", Layers], "hat" },
        { ["--rib", "{sheet: 1 mm}", "--layers", Layers], "shape is missing" },
        { ["--rib", "", "--layers", Layers], "one line of keys" },
        { ["--rib", "}{", "--layers", Layers], "--rib:1" },
        { ["--rib", "{shape: corner, with: floor}", "--layers", Layers], "between two panels" },
        { ["--rib", Hat.Replace("1.2", "1,2", StringComparison.Ordinal), "--layers", Layers], "write 1.2 mm with a point" },
        { ["--rib", Hat.Replace("36 mm", "60 mm", StringComparison.Ordinal), "--layers", Layers], "60 mm deep" },
        { ["--rib", Hat, "--layers", Layers, "--spacing", "40 mm"], "80 mm wide" },
        { ["--rib", Hat, "--layers", "birch_plywod 6 mm, steel_sheet 1 mm"], "did you mean birch_plywood" },
        { ["--rib", Hat, "--layers", "steel_sheet 1 mm"], "at least two layers" },
        { ["--rib", Hat, "--layers", ",,"], "layer 1" },
        { ["--rib", Hat, "--layers", Layers, "--inside", "nan"], "--inside" },
        { ["--rib", Hat, "--layers", Layers, "--humidity", "600 %"], "--humidity" },
        { ["--rib", Hat, "--layers", Layers, "--stands", "ceiling"], "wall, roof or floor" },
        { ["--bolt", "{head: 20 mm}", "--layers", Layers], "diameter" },
    };

    [Theory, MemberData(nameof(Refused))]
    public void Nonsense_is_refused_by_name_with_what_to_write(string[] words, string told)
    {
        Ran ran = Ran.Of(["detail", .. words]);
        Assert.Equal((2, ""), (ran.ExitCode, ran.Answers));
        Assert.Contains(told, ran.Problems, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_example_of_a_rib_or_bolt_can_be_computed_as_it_is_shown() => Assert.All(
        DetailExamples.All.Where(example => example.List != DetailList.Edge && !example.Text.Contains("corner", StringComparison.Ordinal)),
        example => Assert.Equal(("", 0), Codes(Ran.Of("detail", example.List == DetailList.Ribs ? "--rib" : "--bolt", example.Text, "--layers", Layers))));

    private static (string, int) Codes(Ran ran) => (ran.Problems, ran.ExitCode);

    private static JsonElement Json(params string[] words)
    {
        Ran ran = Ran.Of(["detail", .. words, "--json"]);
        Assert.Equal(("", 0), Codes(ran));
        return JsonDocument.Parse(ran.Answers).RootElement;
    }

    [GeneratedRegex(@"\d,\d")]
    private static partial Regex DecimalComma();
}
