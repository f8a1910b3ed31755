using System.Text.Json;
using System.Text.RegularExpressions;
using Thermal.Cli.Json;

namespace Thermal.Cli.Tests;

/// <summary>--json is documented and complete: every sum can be done again from it.</summary>
public sealed partial class JsonTests
{
    private const double Rounding = 1e-9; // relative: the same sum in another order differs in the last bits of a double

    private static readonly JsonElement Assessed = Parse("assess", "--json");

    public static TheoryData<string> Commands => ["assess", "thickness --panel roof --layer 2", "materials", "places", "place davos", "trip cold-chamber", "trips"];

    [Theory, MemberData(nameof(Commands))]
    public void Every_key_at_the_top_is_told_by_help_and_every_told_key_is_there(string command) => Assert.Equal(
        JsonKeys.Of(command.Split(' ')[0]).Select(key => key.Key).Order(),
        Parse([.. command.Split(' '), "--json"]).EnumerateObject().Select(key => key.Name).Order());

    [Theory, MemberData(nameof(Commands))]
    public void Every_key_is_snake_case(string command) => Assert.All(Keys(Parse([.. command.Split(' '), "--json"])), key => Assert.Matches(SnakeCase(), key));

    [Fact]
    public void Help_tells_the_keys() => Assert.Contains("cold_night", Ran.Of("assess", "--help").Answers, StringComparison.Ordinal);

    [Theory]
    [InlineData("cold_night")]
    [InlineData("mild_night")]
    public void Losses_are_coefficient_times_difference_and_add_up_to_the_whole(string night)
    {
        JsonElement found = Assessed.GetProperty(night);
        double sumW = 0;
        foreach (JsonElement loss in found.GetProperty("losses").EnumerateArray())
        {
            double lossW = Number(loss, "loss_w");
            Assert.Equal(Number(loss, "coefficient_w_per_k") * Number(loss, "difference_k"), lossW, Math.Abs(lossW) * Rounding);
            sumW += lossW;
        }
        Assert.Equal(Number(found, "loss_w"), sumW, sumW * 1e-6); // the balance of the rooms is iterated to a part in a million
    }

    [Fact]
    public void A_plain_layer_is_thickness_over_conductivity() => Assert.All(Layers(), layer => Assert.Equal(
        Number(layer, "thickness_m") / Number(layer.GetProperty("conductivity_w_per_mk"), "value"),
        Number(layer, "resistance_m2k_per_w"), Number(layer, "resistance_m2k_per_w") * Rounding));

    [Fact]
    public void U_is_one_over_the_total_resistance_and_the_correction() => Assert.All(Assessed.GetProperty("panels").EnumerateArray(), panel =>
    {
        JsonElement found = panel.GetProperty("transmittance");
        Assert.Equal(1 / Number(found, "total_m2k_per_w") + Number(found, "gap_correction_w_per_m2k"), Number(panel, "u_w_per_m2k"), Rounding);
    });

    [Fact]
    public void Ribs_and_bolts_make_the_difference_between_both_U_values() => Assert.All(Assessed.GetProperty("panels").EnumerateArray(), panel =>
    {
        double bridgesWPerK = panel.GetProperty("ribs").EnumerateArray().Sum(rib => Number(rib.GetProperty("psi_w_per_mk"), "value") * Number(rib, "length_m"))
            + panel.GetProperty("bolts").EnumerateArray().Sum(bolt => Number(bolt.GetProperty("chi_w_per_k"), "value") * Number(bolt, "count"));
        if (Number(panel, "opaque_area_m2") > 1e-6)
            Assert.Equal(Number(panel, "u_w_per_m2k") + bridgesWPerK / Number(panel, "opaque_area_m2"), Number(panel, "u_with_ribs_w_per_m2k"), Rounding);
    });

    [Fact]
    public void Water_on_a_surface_is_its_rate_times_the_night()
    {
        double nightH = Number(Assessed.GetProperty("case").GetProperty("habits"), "night_h");
        Assert.All(Assessed.GetProperty("cold_night").GetProperty("surfaces").EnumerateArray(), surface =>
            Assert.Equal(Number(surface, "settling_g_per_h") * nightH, Number(surface, "settled_g"), Rounding));
    }

    [Fact]
    public void Numbers_are_the_same_in_US_units_and_only_sentences_change()
    {
        JsonElement us = Parse("assess", "--json", "--units", "us");
        Assert.Equal(Number(Assessed.GetProperty("cold_night"), "loss_w"), Number(us.GetProperty("cold_night"), "loss_w"));
        Assert.NotEqual(Assessed.GetProperty("headlines").ToString(), us.GetProperty("headlines").ToString());
    }

    [Fact]
    public void Every_row_of_thickness_has_its_loss() => Assert.All(
        Parse("thickness", "--panel", "roof", "--layer", "2", "--json").GetProperty("rows").EnumerateArray(),
        row => Assert.InRange(Number(row, "loss_w"), 1, 1e5));

    private static JsonElement Parse(params string[] args)
    {
        Ran ran = Ran.Of(args);
        Assert.Equal(("", 0), (ran.Problems, ran.ExitCode));
        return JsonDocument.Parse(ran.Answers).RootElement;
    }

    private static IEnumerable<JsonElement> Layers() =>
        from panel in Assessed.GetProperty("panels").EnumerateArray()
        where !panel.GetProperty("layers").EnumerateArray().Any(layer => layer.TryGetProperty("openings_mm2", out JsonElement openings) && openings.GetDouble() > 500)
        from layer in panel.GetProperty("layers").EnumerateArray()
        where layer.TryGetProperty("material", out _)
        select layer;

    private static double Number(JsonElement element, string key) => element.GetProperty(key).GetDouble();

    private static IEnumerable<string> Keys(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Object => element.EnumerateObject().SelectMany(key => Keys(key.Value).Prepend(key.Name)),
        JsonValueKind.Array => element.EnumerateArray().SelectMany(Keys),
        _ => [],
    };

    [GeneratedRegex("^[a-z][a-z0-9]*(_[a-z0-9]+)*$")]
    private static partial Regex SnakeCase();
}
