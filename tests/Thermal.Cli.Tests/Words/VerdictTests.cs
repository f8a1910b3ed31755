using Thermal.Assessments;
using Thermal.Files;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Cli.Tests.Words;

/// <summary>The verdict is what a friend would say, and says no more than the runs bear out.</summary>
public sealed class VerdictTests
{
    private static readonly Assessment Found = Assess.Of(VehicleLibrary.Find("weekend-van")!);

    private static readonly BuildUpDamp Damp = Found.BuildUps[0] with
    {
        Name = "left side",
        Verdict = DampVerdict.WetDries,
        LowVerdict = DampVerdict.WetDries,
        HighVerdict = DampVerdict.WetDries,
        WettestPlace = "behind the wall foil",
        WettestFace = 1,
        Year = Found.BuildUps[0].Year! with { PeakGPerM2 = 310, WetFromMonth = 11, DryInMonth = 5, GainPerYearGPerM2 = 0 },
    };

    private static Assessment With(params BuildUpDamp[] buildUps) => Found with
    {
        BuildUps = buildUps,
        Findings = [],
        ColdNight = Found.ColdNight with { Surfaces = [] },
        Heating = Found.Heating with { NeedW = new(1000, 1500, 1900), SteadyW = new(1000, 1500, 1900), WarmUpW = new(500, 600, 700), HighestOutputW = 2000 },
    };

    [Fact]
    public void Warm_wet_and_dry_again_is_told_with_months_and_grams() => Assert.Equal(
        "Warm enough. Wet in the left side, behind the wall foil, from November, dry by May; 310 g/m² at worst.",
        Verdict.Of(With(Damp), Figures.Metric));

    [Fact]
    public void Others_that_get_wet_are_counted() => Assert.Contains(
        "One other build-up gets wet too.", Verdict.Of(With(Damp, Damp with { Name = "floor" }), Figures.Metric), StringComparison.Ordinal);

    [Fact]
    public void What_stays_wet_comes_before_what_dries_though_it_holds_less()
    {
        BuildUpDamp floor = Damp with { Name = "floor", Verdict = DampVerdict.StaysWet, Year = Damp.Year! with { PeakGPerM2 = 60, DryInMonth = null } };
        Assert.Contains("It stays wet all year in the floor, behind the wall foil: 60 g/m² at worst.", Verdict.Of(With(Damp, floor), Figures.Metric), StringComparison.Ordinal);
    }

    [Fact]
    public void Without_months_nothing_is_said_of_drying()
    {
        BuildUpDamp night = Damp with { Verdict = DampVerdict.WetNightOnly, Year = null, NightByAirGPerM2 = 9, NightByDiffusionGPerM2 = 3 };
        string verdict = Verdict.Of(With(night), Figures.Metric);
        Assert.Contains("12 g/m²", verdict, StringComparison.Ordinal);
        Assert.Contains("no telling whether it dries", verdict, StringComparison.Ordinal);
    }

    [Fact]
    public void Dry_without_a_place_speaks_of_the_night_alone()
    {
        Assessment found = With(Damp with { Verdict = DampVerdict.Dry, Year = null });
        found = found with { Case = found.Case with { Place = null } };
        Assert.Equal("Warm enough. The build-ups are dry on the cold night; without a place nothing can be said of the year.", Verdict.Of(found, Figures.Metric));
        Assert.Equal("dry on the cold night", BuildUpWords.Of(found.BuildUps[0], Figures.Metric).Verdict);
    }

    [Fact]
    public void Dry_is_said_in_five_words() => Assert.Equal(
        "Warm enough. The build-ups stay dry.", Verdict.Of(With(Damp with { Verdict = DampVerdict.Dry }), Figures.Metric));

    [Theory]
    [InlineData(2000, "Warm enough.")]
    [InlineData(1600, "Just warm enough.")]
    [InlineData(1000, "Not warm enough: the heater is 0.50 kW short on the cold night.")]
    public void Warmth_is_judged_by_the_usual_and_the_worst_run(double outputW, string said)
    {
        Assessment found = With(Damp);
        Assert.StartsWith(said, Verdict.Of(found with { Heating = found.Heating with { HighestOutputW = outputW } }, Figures.Metric), StringComparison.Ordinal);
    }

    [Fact]
    public void Slow_to_warm_up_is_not_called_cold()
    {
        Assessment found = With(Damp);
        HeatingAnswer slow = found.Heating with { HighestOutputW = 2000, NeedW = new(2000, 3000, 4000), WarmUpW = new(2000, 3000, 4000), WarmUpH = 2.6 };
        Assert.StartsWith("Warm enough through the night, but slow to warm up: 2.6 h instead of", Verdict.Of(found with { Heating = slow }, Figures.Metric), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(DampVerdict.WetDries, DampVerdict.WetDries, "Sure: the runs with least and with most moisture say the same.")]
    [InlineData(DampVerdict.Dry, DampVerdict.StaysWet, "Likely: with least moisture it is dry, with most it stays wet.")]
    public void A_verdict_is_sure_only_where_all_runs_agree(DampVerdict low, DampVerdict high, string said) =>
        Assert.Equal(said, BuildUpWords.Of(Damp with { LowVerdict = low, HighVerdict = high }, Figures.Metric).HowSure);

    [Theory]
    [InlineData(9, 2, "Mostly room air behind the lining: up to 9.0 g/m² in a cold night, against 2.0 g/m² by diffusion.")]
    [InlineData(2, 9, "Mostly diffusion through the lining: 9.0 g/m² in a cold night, against up to 2.0 g/m² by air through gaps.")]
    public void The_way_the_water_comes_is_the_reason(double airG, double diffusionG, string said) =>
        Assert.Equal(said, BuildUpWords.Of(Damp with { AirFace = 1, NightByAirGPerM2 = airG, NightByDiffusionGPerM2 = diffusionG }, Figures.Metric).Why);

    [Fact]
    public void There_are_five_answers_with_the_worst_trouble_first()
    {
        IReadOnlyList<Headline> headlines = Headlines.Of(With(Damp with { Verdict = DampVerdict.StaysWet }), Figures.Metric);
        Assert.Equal(5, headlines.Count);
        Assert.StartsWith("Wettest", headlines[0].Title, StringComparison.Ordinal);
        Assert.Equal(headlines.OrderByDescending(headline => headline.Trouble).Select(headline => headline.Title), headlines.Select(headline => headline.Title));
    }
}
