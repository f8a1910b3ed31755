using Thermal.Files;
using Thermal.Trips;
using Thermal.Words;
using Thermal.Words.Sentences;
using Thermal.Zones;

namespace Thermal.Cli.Tests.Words;

/// <summary>What is said of a trip is what a friend would say, and no more than its figures bear out.</summary>
public sealed class TripWordsTests
{
    private static readonly TripRequest Request = TripLibrary.Find("ski-week")!;
    private static readonly DateTime Start = Request.Trip.StartLocal;
    private static readonly TripResult Found = Sample();

    [Fact]
    public void A_warm_and_dry_week_is_told_in_five_short_sentences() => Assert.Equal(
        "Warm all week. The glass stays all but dry. Heat takes 7.6 L of diesel, 1.2 L a day. The battery never falls below 42 %. No tank freezes; the coldest water is 3.2 °C.",
        TripVerdict.Of(Found, Figures.Metric));

    [Fact]
    public void A_flat_battery_is_the_reason_for_the_cold_and_told_with_its_hour()
    {
        TripResult flat = Found with
        {
            Energy = Found.Energy with { LowestChargeFraction = 0, FlatAtLocal = Start.AddHours(40), FlatHoursCount = 30 },
            Comfort = Found.Comfort with { ColdHoursCount = 28, CoolestC = -2.5 },
        };
        string verdict = TripVerdict.Of(flat, Figures.Metric);
        Assert.StartsWith("Often cold: 28 h of 90 h at home are colder than wanted, −2.5 °C at the coolest, because the battery runs flat and the heater stops.", verdict, StringComparison.Ordinal);
        Assert.Contains("The battery is flat from Mon 9 Feb 01:00, 30 h in all.", verdict, StringComparison.Ordinal);
    }

    [Fact]
    public void Nights_with_frost_on_the_glass_are_counted_and_nights_run_from_noon_to_noon()
    {
        // 60 g of frost at three in the morning of the first two nights, 10 g of water else.
        double[] frost = [.. Enumerable.Range(0, Found.Hours.Count).Select(i => Start.AddHours(i) is { Hour: 3 } at && at < Start.AddHours(48) ? 60.0 : 0)];
        TripResult frosty = Found with { Hours = Found.Hours with { OnGlassG = [.. frost.Select(g => g + 10)], FrostOnGlassG = frost } };
        Assert.Equal(new TripNights(6, 2, 2), TripNights.Of(frosty.Hours));
        Assert.Contains("The glass freezes over on two nights out of 6, up to 70 g of frost and water.", TripVerdict.Of(frosty, Figures.Metric), StringComparison.Ordinal);
    }

    [Fact]
    public void Nobody_on_board_is_neither_warm_nor_cold() => Assert.StartsWith(
        "Nobody is on board, so warmth is not judged.", TripVerdict.Of(Found with { Comfort = Found.Comfort with { HomeHoursCount = 0, CoolestC = null, HottestC = null } }, Figures.Metric), StringComparison.Ordinal);

    [Fact]
    public void A_tank_and_a_pipe_that_freeze_are_named_with_the_first_hour()
    {
        TripResult frozen = Found with { Tanks = [new("waste water", -3, Start.AddHours(20), 0.4, 0, 90)], Pipes = [new("tap line", -6, Start.AddHours(12), 1)] };
        Assert.Contains("The tap line and the waste water begin to freeze, first on Sat 7 Feb 21:00.", TripVerdict.Of(frozen, Figures.Metric), StringComparison.Ordinal);
    }

    [Fact]
    public void Water_inside_a_build_up_and_mould_are_said_only_where_they_were_found()
    {
        Assert.DoesNotContain("build-up", TripVerdict.Of(Found, Figures.Metric), StringComparison.Ordinal);
        TripResult wet = Found with { BuildUps = [new("Roof", 7, [0, 35], 40, Start, 1, 35, 30, 5)] };
        Assert.Contains("Water is left inside the roof, 35 g/m² at the end.", TripVerdict.Of(wet, Figures.Metric), StringComparison.Ordinal);
    }

    [Fact]
    public void Answers_in_trouble_come_first_and_there_are_five()
    {
        IReadOnlyList<Headline> answers = TripHeadlines.Of(Found with { Energy = Found.Energy with { FlatAtLocal = Start, LowestChargeFraction = 0 } }, Figures.Metric);
        Assert.Equal(["Lowest charge", "Coolest at home", "Wettest surface", "Diesel for heat", "Coldest water"], answers.Select(answer => answer.Title));
        Assert.Equal(Trouble.Bad, answers[0].Trouble);
    }

    public static TheoryData<TripFindingKind> Kinds => [.. Enum.GetValues<TripFindingKind>()];

    [Theory, MemberData(nameof(Kinds))]
    public void Every_kind_of_finding_has_a_figure_a_reason_and_a_way_out_in_both_units(TripFindingKind kind)
    {
        TripFinding finding = new(kind, kind is TripFindingKind.TooCold ? Request.Trip.Name : "waste water", 3.4, Start);
        foreach (Figures figures in (Figures[])[Figures.Metric, Figures.Us])
        {
            string said = TripFindings.Of(finding, Found, figures);
            Assert.Matches("[0-9]", said);
            Assert.InRange(said.Count(letter => letter == '.'), 2, 8);
            Assert.EndsWith(".", said);
            Assert.DoesNotMatch(@"[a-z]{2}[A-Z]|−0(\.0+)?(?![0-9.])|NaN|  ", said);
        }
    }

    [Fact]
    public void Three_of_a_kind_are_told_together()
    {
        TripFinding[] wet = [.. ((string[])["windscreen", "roof light", "rear window"]).Select(name => new TripFinding(TripFindingKind.WetGlass, name, 80, Start))];
        string told = Assert.Single(TripFindings.Of(Found with { Findings = wet }, Figures.Metric));
        Assert.EndsWith("Less so: roof light; rear window.", told);
    }

    [Fact]
    public void Snow_and_shore_power_bring_their_cautions_and_the_last_word_stays_with_the_codes()
    {
        Leg leg = Request.Trip.Legs[1] with { Snow = true, ShoreW = 2000 };
        IReadOnlyList<string> said = TripCautions.Of(Found with { Asked = new(Found.Asked.Case, Request.Trip with { Legs = [leg] }) });
        Assert.Contains(said, caution => caution.StartsWith("Snow closes vents", StringComparison.Ordinal));
        Assert.Contains(said, caution => caution.StartsWith("Shore power is mains voltage", StringComparison.Ordinal));
        Assert.StartsWith("Carbon monoxide kills", said[0], StringComparison.Ordinal);
        Assert.StartsWith("Warm and dry figures are not an approval.", said[^1], StringComparison.Ordinal);
    }

    [Theory, InlineData(-1, 1), InlineData(1, 0)]
    public void Frost_on_the_trip_and_not_in_another_season_brings_the_caution_of_lithium(double outsideC, int said) =>
        Assert.Equal(said, TripCautions.Of(Found with { Hours = Found.Hours with { OutsideC = [outsideC] } }).Count(caution => caution.StartsWith("This trip has frost", StringComparison.Ordinal)));

    [Fact]
    public void Generated_weather_is_said_to_be_no_forecast_and_rooms_to_be_mixed()
    {
        Assert.Contains(TripAssumptions.Of(Found, Figures.Metric), said => said.EndsWith("It is an ordinary run of days and no forecast: a cold snap is worse.", StringComparison.Ordinal));
        Assert.Contains(TripAssumptions.Limits, said => said.Contains("well mixed", StringComparison.Ordinal));
    }

    private static TripResult Sample()
    {
        int count = (int)(Request.Trip.EndLocal - Start).TotalHours;
        IReadOnlyList<double> Always(double value) => [.. Enumerable.Repeat(value, count)];
        IReadOnlyList<double> none = Always(0);
        return new()
        {
            Asked = new(VehicleLibrary.Find(Request.Vehicle!)!, Request.Trip),
            Hours = new()
            {
                StartLocal = Start, Legs = [.. Enumerable.Repeat(0, count)], Rooms = [], OutsideC = Always(-8), SkyC = Always(-20), AirPastMPerS = Always(2), SunOnFlatWPerM2 = none, WantedC = Always(18),
                OperativeC = Always(18), CarbonDioxidePpm = Always(900), HeaterW = Always(900), StartsCount = none, FuelAmount = none, DrawnA = none, ChargedA = none, ChargeFraction = Always(0.5), BatteryC = Always(9),
                OnGlassG = Always(10), FrostOnGlassG = none, OnLiningsG = none, InBuildUpsG = none, Panels = [], Tanks = [],
            },
            Days = [],
            Heat = new(0, 0, 0, 0, 0, [], 0, 0),
            Water = new(1000, 0, 0, 0, 1000, 0, 0, 0, 0, 0, 0, 0),
            Energy = new(7, 0.6, 0, 40, 120, [new("heater", 80)], 60, 0, 0, 0, 0.42, null, 0, 0),
            Wet = [new("windscreen", "cab", SurfaceKind.Glass, 1.5, 10, Start, 0, 0, 20, 0, 3, 0, -5)],
            BuildUps = [],
            Mould = [],
            Metal = [],
            Tanks = [new("fresh water", 3.2, null, 0, 100, 30)],
            Pipes = [],
            Comfort = new(90, 0, 14, 0, 20, 0.7, 1500, 0, 4, -3, "windscreen"),
            Findings = [],
        };
    }
}
