using Thermal.Assessments;
using Thermal.Climates;
using Thermal.Envelope;
using Thermal.Heating;
using Thermal.Materials;
using Thermal.People;
using Thermal.Power;
using Thermal.Trips;

namespace Thermal.Files.Tests.Weathers;

/// <summary>
/// The light and the heavy room of a published test of hourly heat models, left to themselves through a real year: 48 m² of floor, 12 m² of double
/// glass to the south, half an air change an hour, 200 W. Plausibility only: the weather of the published case (Denver, 1650 m) is not at hand, the year
/// here is that of a colder place of the same state, and the sun through glass is the project's own. Layer data from memory of the standard.
/// </summary>
public sealed class FloatingRoomTests
{
    private const double Denver600HighestC = 68.4, Denver900LowestHighestC = 43.3;

    [Fact]
    public void Through_a_real_year_the_light_room_gets_hotter_and_colder_than_the_heavy_one()
    {
        Weather year = RealYears.Of(RealYears.Colorado).Weather;
        (double lightLowC, double lightHighC, double lightMeanC) = Floating(year, heavy: false);
        (double heavyLowC, double heavyHighC, double heavyMeanC) = Floating(year, heavy: true);
        TestContext.Current.TestOutputHelper?.WriteLine(FormattableString.Invariant(
            $"light {lightLowC:F1} to {lightHighC:F1}, mean {lightMeanC:F1} °C; heavy {heavyLowC:F1} to {heavyHighC:F1}, mean {heavyMeanC:F1} °C; outside mean {year.AirC.Average():F1} °C"));
        // Published: highest 62 to 68 light, 43 to 46 heavy; lowest −14 to −10 and +1 to +2; means within 1 K of each other, some 14 K above outside.
        Assert.InRange(lightHighC, 45, Denver600HighestC);
        Assert.InRange(lightHighC - heavyHighC, 10, 30);
        Assert.InRange(heavyLowC - lightLowC, 5, 20);
        Assert.Equal(lightMeanC, heavyMeanC, 1.5);
        Assert.InRange(lightMeanC - year.AirC.Average(), 8, 20);
        Assert.True(heavyHighC < Denver900LowestHighestC + 5);
    }

    private static (double LowC, double HighC, double MeanC) Floating(Weather year, bool heavy)
    {
        DateTime start = year.StartUtc.AddHours(year.UtcOffsetH);
        start = new(start.Year, start.Month, start.Day, 0, 0, 0, DateTimeKind.Unspecified);
        TripHours hours = TripRun.Of(new(Room(heavy), new()
        {
            Name = "a year by itself",
            Habits = new() { PeopleCount = 0, DayC = null, NightC = null, AwayC = null, Covers = CoverUse.Never, MealsAtH = [], OpensWindowsWhenHot = false },
            Legs = [new() { Name = "year", StartLocal = start, EndLocal = start.AddDays(364), Weather = year, HeadingDeg = 0, WindShareFraction = 1, ShoreW = 7400 }],
            StepS = 900,
        })).Hours;
        IReadOnlyList<double> airC = hours.Rooms[0].AirC;
        double[] settled = [.. airC.Skip(10 * 24)];
        return (settled.Min(), settled.Max(), settled.Average());
    }

    private static Case Room(bool heavy)
    {
        Stack wall = heavy ? new([Layer(0.100, 0.51, 1400, 1000), Layer(0.0615, 0.04, 10, 1400), Layer(0.009, 0.14, 530, 900)])
            : new([Layer(0.012, 0.16, 950, 840), Layer(0.066, 0.04, 12, 840), Layer(0.009, 0.14, 530, 900)]);
        Stack roof = new([Layer(0.010, 0.16, 950, 840), Layer(0.1118, 0.04, 12, 840), Layer(0.019, 0.14, 530, 900)]);
        // A layer is at most 1 m thick: 1.003 m of λ 0.04 stand as 1 m of the same resistance.
        SolidLayer ground = Layer(1, 0.04 / 1.003, 1, 100);
        Stack floor = heavy ? new([Layer(0.080, 1.13, 1400, 1000), ground]) : new([Layer(0.025, 0.14, 650, 1200), ground]);
        Pane pane = new() { Material = Of(1, 2500, 750), ThicknessM = 0.00318 };
        Opening windows = new() { Name = "windows", WidthM = 3, HeightM = 2, Count = 2, Glazing = new([pane, pane], [new() { ThicknessM = 0.013 }]) };
        return VehicleLibrary.Find(VehicleLibrary.UsualName)! with
        {
            Vehicle = new()
            {
                Name = "room",
                Zones = [new() { Name = "living", Kind = ZoneKind.Living, VolumeM3 = 129.6, FloorAreaM2 = 48, HeightM = 2.7, LeakEachM2 = Bounded.Stated(0), AirChangesPerH = 0.5 }],
                Surfaces =
                [
                    Panel("south", 21.6, 90, 180, wall) with { Openings = [windows] },
                    Panel("north", 21.6, 90, 0, wall), Panel("east", 16.2, 90, 90, wall), Panel("west", 16.2, 90, 270, wall),
                    Panel("roof", 48, 0, 0, roof), Panel("floor", 48, 180, 0, floor),
                ],
                FurnishingsJPerM2K = 0,
                PaintSunFraction = Bounded.Stated(0.6),
            },
            Habits = new Habits { SleepersCount = 0 },
            Heater = HeaterLibrary.All[0],
            Power = new() { Battery = new() { UsableAh = 5000, Zone = "living" }, ShoreChargerA = 300, Loads = [new() { Name = "gains", PowerW = 200, Zone = "living" }] },
            Fan = null,
            Tanks = [],
            Pipes = [],
        };
    }

    private static Surface Panel(string name, double areaM2, double tiltDeg, double facingDeg, Stack stack) => new()
    {
        Name = name, Place = SurfacePlace.Left, TiltDeg = tiltDeg, FacingDeg = facingDeg, AreaM2 = areaM2, Zone = "living", Outside = OuterSide.Air, Stack = stack,
        AirBehindLiningM3PerM2H = Bounded.Stated(0), LiningFit = LiningFit.Bonded,
    };

    private static SolidLayer Layer(double thicknessM, double conductivity, double density, double specificHeat) => new()
    {
        Name = "layer", ThicknessM = thicknessM, IsBonded = true, Material = Of(conductivity, density, specificHeat),
    };

    private static Material Of(double conductivity, double density, double specificHeat) => new()
    {
        Key = "layer", Name = "layer", Group = MaterialGroup.Foam, ConductivityWPerMK = Bounded.Stated(conductivity), DensityKgPerM3 = Bounded.Stated(density),
        SpecificHeatJPerKgK = Bounded.Stated(specificHeat), VapourResistanceFactor = Bounded.Stated(50), EmissivityFraction = Bounded.Stated(0.9),
    };
}
