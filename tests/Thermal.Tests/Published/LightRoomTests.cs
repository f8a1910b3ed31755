using Thermal.Envelope;
using Thermal.Trips.Heat;
using Thermal.Zones;
using static Thermal.Tests.MovingHeat;
using static Thermal.Tests.Sketches;

namespace Thermal.Tests.Published;

/// <summary>The light and the heavy room of a published test of hourly heat models: its conductances, and how both float on a clear winter day.</summary>
public class LightRoomTests
{
    // A layer here is at most 1 m thick: the floor's 1.003 m of λ 0.04 stand as 1 m of the same resistance.
    private static readonly SolidLayer FloorInsulation = Layer(1, 0.04 / 1.003, 1, 100);
    private static readonly SolidLayer Siding = Layer(0.009, 0.14, 530, 900);

    private static Stack Roof => new([Layer(0.010, 0.16, 950, 840), Layer(0.1118, 0.04, 12, 840), Layer(0.019, 0.14, 530, 900)]);

    private static Stack Wall(bool heavy) => heavy
        ? new([Layer(0.100, 0.51, 1400, 1000), Layer(0.0615, 0.04, 10, 1400), Siding])
        : new([Layer(0.012, 0.16, 950, 840), Layer(0.066, 0.04, 12, 840), Siding]);

    private static Stack Floor(bool heavy) => heavy ? new([Layer(0.080, 1.13, 1400, 1000), FloorInsulation]) : new([Layer(0.025, 0.14, 650, 1200), FloorInsulation]);

    public static IEnumerable<object[]> Conductances => PublishedTable.Rows("light-room-conductances.csv");

    [Theory, MemberData(nameof(Conductances))]
    public void The_light_room_has_the_published_conductances(string part, double u)
    {
        Stack stack = part switch { "wall" => Wall(heavy: false), "roof" => Roof, _ => Floor(heavy: false) };
        Assert.Equal(u, Transmittance.Of(stack, FlowDirection.Horizontal, 1 / 8.29, 1 / 29.3).UWPerM2K, 0.0005);
    }

    /// <summary>
    /// Plausibility only, since the weather of the published case is not at hand: a clear winter day of our own again and again, sun through
    /// 12 m² of glass. The heavy room swings less than half as much and both have nearly the same mean.
    /// </summary>
    [Fact]
    public void On_a_clear_winter_day_the_light_room_swings_more_than_twice_as_much_as_the_heavy_one()
    {
        (double lightMeanC, double lightSwingK) = Floating(heavy: false);
        (double heavyMeanC, double heavySwingK) = Floating(heavy: true);
        Assert.InRange(lightSwingK, 2 * heavySwingK, 8 * heavySwingK);
        Assert.Equal(lightMeanC, heavyMeanC, 2.0);
    }

    private static (double MeanC, double SwingK) Floating(bool heavy)
    {
        Opening windows = new()
        {
            Name = "windows", WidthM = 3, HeightM = 2, Count = 2,
            Glazing = new([new() { Material = Of(1), ThicknessM = 0.003 }, new() { Material = Of(1), ThicknessM = 0.003 }], [new() { ThicknessM = 0.013 }]),
        };
        Body body = BareRoom(129.6, Panel("walls", 75.6, "living", Wall(heavy)) with { Openings = [windows] },
            Panel("roof", 48, "living", Roof, tiltDeg: 0), Panel("floor", 48, "living", Floor(heavy), tiltDeg: 180)).Cut(FilmRule.Separate);
        Drive drive = new(body) { AirPastMPerS = 3, OutsideAirKgPerS = { [0] = 0.5 * 129.6 / 3600 }, ConvectiveW = { [0] = 80 }, RadiantW = { [0] = 120 } };
        HeatStepper stepper = new(body, 15);
        double mean = 0, low = double.MaxValue, high = double.MinValue;
        for (int i = 0; i < 30 * 144; i++)
        {
            double from = i * 600.0;
            stepper.Run(1, 600, drive, after => Set((from + after) / 3600 % 24));
            if (i < 29 * 144) continue;
            double airC = stepper.State.AirC[0];
            (mean, low, high) = (mean + airC / 144, Math.Min(low, airC), Math.Max(high, airC));
        }
        return (mean, high - low);

        void Set(double hour)
        {
            drive.OutsideC = 7 * Math.Cos(2 * Math.PI * (hour - 15) / 24);
            drive.SkyC = drive.OutsideC - 18;
            drive.SunInsideW[0] = hour is > 8 and < 16 ? 5000 * Math.Sin(Math.PI * (hour - 8) / 8) : 0;
        }
    }
}
