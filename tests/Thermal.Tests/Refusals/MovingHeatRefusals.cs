using Thermal.Envelope;
using Thermal.Trips.Heat;
using static Thermal.Tests.MovingHeat;
using static Thermal.Tests.Sketches;

namespace Thermal.Tests.Refusals;

/// <summary>A drive that cannot be is refused by name, and nothing that is not a number gets into a temperature unseen.</summary>
public class MovingHeatRefusals
{
    private static void Stage(Action<Drive> spoil, double stepS = 600)
    {
        Vehicle vehicle = BareRoom(10, Panel("wall", 1, "living", new([Sheet(0.01, 0.1)])));
        Drive drive = new(vehicle.Cut());
        spoil(drive);
        new HeatStepper(vehicle.Cut(), 0).Stage(0, stepS, drive);
    }

    [Theory, InlineData(40.1), InlineData(-1), InlineData(double.NaN)]
    public void Wind_outside_its_range_is_refused(double windMPerS) => Assert.Throws<ArgumentOutOfRangeException>(() => Stage(drive => drive.AirPastMPerS = windMPerS));

    [Theory, InlineData(80), InlineData(273), InlineData(double.NaN)]
    public void Outside_air_that_cannot_be_is_refused(double outsideC) => Assert.Throws<ArgumentOutOfRangeException>(() => Stage(drive => drive.OutsideC = outsideC));

    [Theory, InlineData(-200), InlineData(double.NaN)]
    public void A_sky_that_cannot_be_is_refused(double skyC) => Assert.Throws<ArgumentOutOfRangeException>(() => Stage(drive => drive.SkyC = skyC));

    [Theory, InlineData(0), InlineData(-600), InlineData(double.NaN)]
    public void A_step_without_length_is_refused(double stepS) => Assert.Throws<ArgumentOutOfRangeException>(() => Stage(_ => { }, stepS));

    [Fact]
    public void Heat_that_is_not_a_number_is_refused_with_its_room() =>
        Assert.Contains("living", Assert.Throws<InvalidOperationException>(() => Stage(drive => drive.ConvectiveW[0] = double.NaN)).Message, StringComparison.Ordinal);

    [Fact]
    public void Sun_that_is_not_a_number_is_refused() => Assert.Throws<InvalidOperationException>(() => Stage(drive => drive.SunUptakeW[0] = double.NaN));

    [Fact]
    public void A_build_up_that_holds_no_heat_is_refused() =>
        Assert.Throws<ArgumentException>(() => BareRoom(10, Panel("wall", 1, "living", new([new AirLayer { Name = "gap", ThicknessM = 0.02 }]))).Cut());
}
