using Thermal.Trips.Heat;
using static Thermal.Tests.MovingHeat;

namespace Thermal.Tests.Published;

/// <summary>Published cases of radiation and of heat that moves.</summary>
public class HeatThroughTimeTests
{
    public static IEnumerable<object[]> Bar => PublishedTable.Rows("radiating-bar.csv");

    public static IEnumerable<object[]> Ground => PublishedTable.Rows("cooled-thick-solid.csv");

    /// <summary>The coefficient taken at the latest temperatures, as the stages take it, settles at the root of the fourth powers.</summary>
    [Theory, MemberData(nameof(Bar))]
    public void A_radiating_bar_settles_where_the_benchmark_says(double endK, double toleranceK)
    {
        double end = 1000;
        for (int round = 0; round < 50; round++)
        {
            double radiative = Longwave.CoefficientWPerM2K(0.98, end - 273.15, 300 - 273.15), conductive = 55.6 / 0.1;
            end = (conductive * 1000 + radiative * 300) / (conductive + radiative);
        }
        Assert.Equal(endK, end, toleranceK);
    }

    [Theory, MemberData(nameof(Ground))]
    public void Ground_under_sudden_frost_cools_as_the_textbook_says(double surfaceC, double toleranceK)
    {
        Body body = BareRoom(10, Sketches.Panel("ground", 1, "living", new([Layer(1, 0.865, 2000, 0.865 / 4.65e-7 / 2000)]))).Cut();
        Drive drive = new(body) { OutsideC = -17.8, AirPastMPerS = WindOfFilm(11.36) };
        Assert.Equal(surfaceC, new HeatStepper(body, 15.6).Run(30, 600, drive).State.OuterFaceC[0], toleranceK);
    }
}
