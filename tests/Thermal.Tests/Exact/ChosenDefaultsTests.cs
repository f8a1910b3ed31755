using Thermal.Assessments;
using Thermal.Bridges;
using Thermal.Climates;
using Thermal.Envelope;
using Thermal.Files;
using Thermal.Heating;
using Thermal.Materials;
using Thermal.People;
using Thermal.Zones;

namespace Thermal.Tests.Exact;

/// <summary>Defaults that nobody published but that were chosen once: each stands here as the list of choices gives it, and where it acts, by hand.</summary>
public class ChosenDefaultsTests
{
    private static readonly Case Van = Evaluated(VehicleLibrary.Find("library-van")!);

    private static Case Evaluated(Case asked) => asked with { Vehicle = SolvedVehicle.Of(asked.Vehicle, asked.ColdNight.WindMPerS, new()) };

    /// <summary>The list of choices of the project: value and what it is for.</summary>
    public static TheoryData<string, double, double> Choices => new()
    {
        { "air behind a bonded lining, m³/(m²·h)", 0, LiningDefaults.AirBehindM3PerM2H(LiningFit.Bonded).Value },
        { "air behind taped boards, m³/(m²·h)", 0.05, LiningDefaults.AirBehindM3PerM2H(LiningFit.Taped).Value },
        { "air behind a close lining over loose fill, m³/(m²·h)", 0.1, LiningDefaults.AirBehindM3PerM2H(LiningFit.Loose).Value },
        { "air behind slats, m³/(m²·h)", 0.3, LiningDefaults.AirBehindM3PerM2H(LiningFit.Slatted).Value },
        { "locker, m²·K/W", 0.5, LiningDefaults.LockerM2KPerW },
        { "built-in cupboard, m²·K/W", 1.0, LiningDefaults.CupboardM2KPerW },
        { "mattress, m²·K/W", 2.5, LiningDefaults.MattressM2KPerW },
        { "tight, m² each", 20e-4, LeakDefaults.TightM2.Value },
        { "usual, m² each", 50e-4, LeakDefaults.UsualM2.Value },
        { "leaky, m² each", 120e-4, LeakDefaults.LeakyM2.Value },
        { "sheltered road side, m²·K/W", 0.10, SurfaceResistance.ShelteredRoadM2KPerW },
        { "furniture and stores, J/(K·m²)", 25_000, Van.Vehicle.FurnishingsJPerM2K },
        { "asleep, W", 46, BodyLoads.AsleepHeatW },
        { "awake, W", 70, BodyLoads.AwakeHeatW },
        { "asleep, g/h", 40, BodyLoads.AsleepVapourGPerH.Value },
        { "awake, g/h", 55, BodyLoads.AwakeVapourGPerH.Value },
        { "carbon dioxide outside, ppm", 420, BodyLoads.OutsideCarbonDioxidePpm },
        { "design night humidity", 0.85, NightConditions.DesignRelativeHumidityFraction },
        { "wind of both nights, m/s", 3, NightConditions.UsualWindMPerS },
        { "clear sky below the air, K", 20, NightConditions.ClearSkyBelowAirK },
        { "mild night, °C", 6, NightConditions.MildC },
        { "mild night humidity", 0.90, NightConditions.MildRelativeHumidityFraction },
        { "water that counts as dry, g/m²", 50, DampAnswers.DryUpToGPerM2 },
        { "water of a wet night, g/m²", 5, DampAnswers.WetNightGPerM2 },
    };

    [Theory, MemberData(nameof(Choices))]
    public void A_default_is_the_one_that_was_chosen(string what, double chosen, double used)
    {
        Assert.NotEmpty(what);
        Assert.Equal(chosen, used);
    }

    /// <summary>Halfway between 10 and 20 °C outside half of the room's excess is left: at 15 °C, (20 − 15)/(20 − 10).</summary>
    [Fact]
    public void At_15_degrees_outside_windows_let_half_the_excess_out()
    {
        Place warm = Van.Place! with { Months = [.. Van.Place!.Months.Select(month => month with { MeanC = 15 })] };
        Case asked = Van with { Place = warm };
        Months months = Months.Of(asked, Extreme.Usual, Balances.Night(asked, asked.MildNight).Shell)!;
        double outside = months.Lived[0].Inputs.OutsidePa;
        Assert.Equal(0.5 * (months.Lived[0].VapourPa(0) - outside), months.LivedPa[0][0] - outside, 1e-9);
    }

    /// <summary>1 m³/(m²·h) of room air of 1.2 kg/m³ in series with the lining's own 2.5 W/(m²·K) over 1006 J/(kg·K).</summary>
    [Fact]
    public void Behind_a_locker_one_cubic_metre_an_hour_gets_to_the_wall()
    {
        ColdPlace locker = Shell.Of(Van.Vehicle, 3, 1.2).Places.First(place => place.Kind == SurfaceKind.Behind && place.Panel == "left side");
        Assert.Equal(locker.AreaM2 / (3600 / 1.2 + 1006 / 2.5), locker.TransferKgPerS, 1e-12);
    }

    /// <summary>±1 K on the air and a quarter of the slow store: C·2·(1/(P − Q) + 1/Q) a cycle.</summary>
    [Fact]
    public void The_mild_night_s_starts_follow_from_the_store_and_the_band()
    {
        HeatingAnswer heating = Assess.Of(Van).Heating;
        TwoNode node = HeatingAnswers.Node(Van, Balances.Night(Van, Van.MildNight));
        double heat = heating.Mild.HeatW.Value, cycleS = (node.AirJPerK + 0.25 * node.MassJPerK) * 2 * (1 / (heating.LowestOutputW - heat) + 1 / heat);
        Assert.Equal(Van.Habits.NightH * 3600 / cycleS, heating.Mild.StartsCount, 1e-9 * heating.Mild.StartsCount);
    }
}
