using System.Text.RegularExpressions;
using Thermal.Assessments;
using Thermal.Choices;
using Thermal.Files;
using Thermal.Words;
using Thermal.Words.Sentences;
using Thermal.Zones;

namespace Thermal.Cli.Tests.Words;

/// <summary>Sentences are English with figures and units: no name from the code, no empty figure.</summary>
public sealed partial class SentenceTests
{
    private static readonly Assessment Found = Assess.Of(VehicleLibrary.Find("library-van")!);

    public static TheoryData<FindingKind, double, string> Findings => new()
    {
        { FindingKind.HeaterTooSmall, 900, "0.90 kW" },
        { FindingKind.StaleAir, 3200, "3200 ppm" },
        { FindingKind.VentsTooSmall, 0.0095, "95 cm²" },
        { FindingKind.StaysWet, 310, "310 g/m²" },
        { FindingKind.WaterTrapped, 0, "between two tight ones" },
        { FindingKind.DetailNotConverged, 0.03, "3 %" },
        { FindingKind.StaleBridge, 0, "another build-up" },
        { FindingKind.BridgeWithoutBuildUp, 0, "which build-up" },
        { FindingKind.BridgeFrosts, 4.2, "4.2 K below the frost point" },
        { FindingKind.BridgeDrips, 2.1, "2.1 K below the dew point" },
        { FindingKind.Mould, 0.86, "86 %" },
        { FindingKind.NotByVentilating, 0, "60 %" },
        { FindingKind.TankFreezes, 3.1, "3.1 h" },
        { FindingKind.DieselWaxes, -24, "−24.0 °C" },
        { FindingKind.ButaneDoesNotBoil, -6, "−6.0 °C" },
        { FindingKind.BatteryTooSmall, 120, "120 Ah" },
        { FindingKind.HeaterCycles, 24, "24 times" },
        { FindingKind.LimitsFarApart, 1.7, "1.7" },
        { FindingKind.AreaAlone, 0, "Width and height" },
        { FindingKind.DesignEstimated, 3, "± 3.0 K" },
        { FindingKind.HumidityEstimated, 0, "estimate" },
    };

    [Fact]
    public void Every_kind_of_finding_is_tested() =>
        Assert.Equal(Enum.GetValues<FindingKind>().Order(), Findings.Select(row => row.Data.Item1).Order());

    [Theory, MemberData(nameof(Findings))]
    public void A_finding_tells_its_figure_with_its_unit(FindingKind kind, double figure, string told)
    {
        string where = kind == FindingKind.TankFreezes ? Found.Tanks[0].Name : "roof";
        string sentence = FindingSentence.Of(new(kind, where, figure), Found, [], Figures.Metric);
        Assert.Contains(told, sentence, StringComparison.Ordinal);
        AssertPlain(sentence);
    }

    [Theory, MemberData(nameof(Findings))]
    public void A_finding_in_US_units_has_no_metric_temperature_thickness_or_air(FindingKind kind, double figure, string _)
    {
        string where = kind == FindingKind.TankFreezes ? Found.Tanks[0].Name : "roof";
        string sentence = FindingSentence.Of(new(kind, where, figure), Found, [], Figures.Us);
        Assert.DoesNotContain("°C", sentence, StringComparison.Ordinal);
        Assert.DoesNotContain(" mm", sentence, StringComparison.Ordinal);
        Assert.DoesNotContain(" m³/h", sentence, StringComparison.Ordinal);
        AssertPlain(sentence);
    }

    [Fact]
    public void What_was_tried_and_helps_a_wet_build_up_most_is_told_with_it()
    {
        AdviceItem weak = new(Change.TapeLining, "roof", 10, 0, 100, 0, 0, 0), strong = new(Change.AddRetarder, "roof", 5, 0, 300, 0, 0, 0), elsewhere = new(Change.BondedFoam, "floor", 50, 0, 900, 1, 0, 0);
        string sentence = FindingSentence.Of(new(FindingKind.StaysWet, "roof", 310), Found, [weak, strong, elsewhere], Figures.Metric);
        Assert.Contains(AdviceSentence.What(strong, Figures.Metric), sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_change_is_told_in_plain_words_with_gains_and_costs() => Assert.All(Enum.GetValues<Change>(), change =>
    {
        string sentence = AdviceSentence.Of(new(change, "roof", 120, -40, 300, 2, 0.1, 0.01), Figures.Metric);
        AssertPlain(sentence);
        Assert.Contains("120 g less water", sentence, StringComparison.Ordinal);
        Assert.Contains("40 W more heat lost", sentence, StringComparison.Ordinal);
        Assert.Contains("two wet build-ups fewer", sentence, StringComparison.Ordinal);
        Assert.Contains("10 mm less headroom", sentence, StringComparison.Ordinal);
    });

    [Fact]
    public void Every_choice_has_a_name_of_its_own()
    {
        AssertNamed<LossKind>(Names.Of);
        AssertNamed<SurfaceKind>(Names.Of);
        AssertNamed<DampVerdict>(Names.Of);
        AssertNamed<Materials.Fuel>(Names.Of);
        AssertNamed<Climates.DesignKind>(Names.Of);
        AssertNamed<Climates.DesignMeasure>(Names.Of);
        AssertNamed<Envelope.OuterSide>(Names.Of);
        AssertNamed<Envelope.LiningFit>(Names.Of);
        AssertNamed<Envelope.FlowDirection>(Names.Of);
    }

    [Theory]
    [InlineData("Roof", "the roof")]
    [InlineData("roof", "the roof")]
    [InlineData("The roof", "the roof")]
    [InlineData("GRP box", "the GRP box")]
    [InlineData("", "the ")]
    public void A_builders_name_stands_in_a_sentence_with_one_article(string name, string inside) => Assert.Equal(inside, Grammar.The(name));

    [Fact]
    public void No_line_ends_between_a_number_and_its_unit() => Assert.Equal("add 10\u00A0mm of it, 3\u00A0g (4) now", Grammar.Glued("add 10 mm of it, 3 g (4) now"));

    [Fact]
    public void Cautions_come_for_what_is_on_board_and_always_defer()
    {
        Case asked = Found.Case;
        Assert.Contains(Cautions.Of(asked), caution => caution.Contains("Carbon monoxide", StringComparison.Ordinal));
        Case electric = asked with { Heater = Heating.HeaterLibrary.All.First(heater => heater.Fuel == Materials.Fuel.Electricity), Habits = asked.Habits with { CookerFuel = null }, Power = null };
        Assert.DoesNotContain(Cautions.Of(electric), caution => caution.Contains("Carbon monoxide", StringComparison.Ordinal));
        Assert.Contains(Cautions.Of(electric), caution => caution.Contains("Mains", StringComparison.Ordinal));
        Assert.All([asked, electric], one => Assert.Contains(Cautions.Of(one), caution => caution.Contains("licensed practice", StringComparison.Ordinal)));
        Assert.All([asked, electric], one => Assert.Contains(Cautions.Of(one), caution => caution.Contains("vents stay open", StringComparison.Ordinal)));
    }

    [Fact]
    public void Assumptions_say_what_the_methods_leave_out()
    {
        string all = string.Join(' ', Assumptions.Of(Found, Figures.Metric).Concat(Assumptions.Limits));
        Assert.All(["ISO 13788", "moving air", "DIN 4108-3", "outside its scope", "sun", "secondary sources", "over ice", "estimated"], said => Assert.Contains(said, all, StringComparison.Ordinal));
        Assert.All(Assumptions.Limits, AssertPlain);
    }

    private static void AssertNamed<T>(Func<T, string> name) where T : struct, Enum
    {
        string[] names = [.. Enum.GetValues<T>().Select(name)];
        Assert.Equal(names.Length, names.Distinct().Count());
        Assert.All(names, AssertPlain);
    }

    private static void AssertPlain(string sentence)
    {
        Assert.DoesNotMatch(NameFromCode(), sentence);
        Assert.DoesNotContain("NaN", sentence, StringComparison.Ordinal);
        Assert.DoesNotContain('_', sentence.Replace("s_d", "", StringComparison.Ordinal));
        Assert.DoesNotContain("  ", sentence, StringComparison.Ordinal);
    }

    // A small letter before a capital inside a word; kW, kWh and Btu-like units are no such words.
    [GeneratedRegex(@"[a-z]{2}[A-Z]")]
    private static partial Regex NameFromCode();
}
