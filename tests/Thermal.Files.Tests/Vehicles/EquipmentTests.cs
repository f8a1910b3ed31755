using Thermal.Assessments;
using Thermal.Envelope;
using Thermal.Power;

namespace Thermal.Files.Tests.Vehicles;

/// <summary>Battery, charging, loads, roof fan, pipes, warm air and paint in a vehicle file.</summary>
public sealed class EquipmentTests
{
    private static readonly string Good = VehicleLibrary.Text("library-van")!;
    private static readonly Case Van = VehicleLibrary.Find("library-van")!;

    /// <summary>The figures as they stand in the file.</summary>
    [Fact]
    public void What_is_fitted_is_read_in_SI()
    {
        BoardPower power = Van.Power!;
        Assert.Equal((180.0, Chemistry.Lithium, "hold", 0.3), (power.Battery.UsableAh, power.Battery.Chemistry, power.Battery.Zone, power.Battery.InsulationM2KPerW));
        Assert.Equal((40.0, 20.0, 400.0), (power.AlternatorA, power.ShoreChargerA, Assert.Single(power.Panels).PeakW));
        Assert.Equal([LoadRhythm.Fridge, LoadRhythm.Evenings, LoadRhythm.Always], power.Loads.Select(load => load.Rhythm));
        Assert.Equal((120.0, 0.8), (Van.Fan!.FlowM3PerH, Van.Fan.CurrentA));
        Assert.Equal((0.01, 0.015, 2.0, 0.013, null), (Van.Pipes[0].BoreM, Van.Pipes[0].OuterM, Van.Pipes[0].LengthM, Van.Pipes[0].InsulationM, Van.Pipes[0].Zone));
        Assert.Equal(PaintDefaults.WhiteSunFraction, Van.Vehicle.PaintSunFraction);
        Assert.Equal(Chemistry.Lead, VehicleLibrary.Find("box-body")!.Power!.Battery.Chemistry);
    }

    /// <summary>A record made of required values alone, against a file that says no more.</summary>
    [Fact]
    public void What_is_left_out_has_the_default_of_its_record()
    {
        Case least = VehicleFile.Read(Good.Replace("name: roof panels, peak: 400 W", "name: roof, peak: 400 W", StringComparison.Ordinal)
            .Replace("bore: 10 mm, outer: 15 mm, length: 2 m, insulation: 13 mm", "bore: 10 mm, outer: 15 mm", StringComparison.Ordinal)
            .Replace("  kind: lithium\n  zone: hold\n  insulation: 0.3 m²K/W            # a box of foam round it\n  pad: 40 W                        # warms it before it is charged\n", "", StringComparison.Ordinal)
            .Replace("paint: white\n", "", StringComparison.Ordinal), "x").Value!;
        Assert.Equal(Described.Of(new SolarPanel { Name = "roof", PeakW = 400 }), Described.Of(least.Power!.Panels[0]));
        Assert.Equal(Described.Of(new Water.Pipe { Name = "pipe under the floor", BoreM = 0.01, OuterM = 0.015 }), Described.Of(least.Pipes[0]));
        Assert.Equal(Described.Of(new Battery { UsableAh = 180 }), Described.Of(least.Power.Battery));
        Assert.Equal(Described.Of(new Load { Name = "router and watch", PowerW = 8, Zone = "living" }), Described.Of(least.Power.Loads[2]));
        Assert.Equal(new Vehicle { Name = "x", Zones = [], Surfaces = [] }.PaintSunFraction, least.Vehicle.PaintSunFraction);
    }

    [Theory]
    [InlineData("kind: lithium", "kind: litium", "battery / kind", "did you mean lithium?")]
    [InlineData("  zone: hold\n  insulation", "  zone: hald\n  insulation", "battery / zone", "did you mean hold?")]
    [InlineData("insulation: 0.3 m²K/W ", "insulation: 30 mm ", "battery / insulation", "mm measures length, and this must be a thermal resistance")]
    [InlineData("alternator: 40 A", "alternator: 400 A", "charging / alternator", "is outside 0 A to 300 A")]
    [InlineData("alternator: 40 A", "alternater: 40 A", "charging / alternater", "did you mean alternator?")]
    [InlineData("alternator: 40 A", "alternator: -40 A", "charging / alternator", "-40 A is negative")]
    [InlineData("peak: 400 W", "peak: 400 kW", "charging / roof panels / peak", "is outside")]
    [InlineData("peak: 400 W", "peak: 400 W, tilt: 120°", "charging / roof panels / tilt", "is outside 0° to 90°")]
    [InlineData("peak: 400 W", "peak: 400 W, share: 1 %", "charging / roof panels / share", "is outside 10 % to 100 %")]
    [InlineData("when: evenings, hours: 5 h", "when: evenings", "lights / when", "hours is missing")]
    [InlineData("when: fridge, zone", "when: fridge, hours: 8 h, zone", "fridge / hours", "a fridge runs by the room's temperature")]
    [InlineData("power: 8 W, zone: living", "power: 8 W, zone: livin", "router and watch / zone", "did you mean living?")]
    [InlineData("flow: 120 m³/h, ", "", "roof_fan", "flow is missing")]
    [InlineData("outer: 15 mm", "outer: 10 mm", "pipe under the floor / outer", "the pipe has no wall")]
    [InlineData("outer: 15 mm", "outer: 15 m", "pipe under the floor / outer", "is 15 mm meant?")]
    [InlineData("pad: 60 W", "pad: 60 W\n    zone: living\n    warm_air: 10 m³/h", "fresh water / warm_air", "the tank stands in the warm room already")]
    [InlineData("paint: white", "paint: wite", "paint", "did you mean white?")]
    [InlineData("paint: white", "paint: 99 %", "paint", "is outside 5 % to 98 %")]
    [InlineData("battery:\n  usable: 180 Ah\n  kind: lithium\n  zone: hold\n  insulation: 0.3 m²K/W            # a box of foam round it\n  pad: 40 W                        # warms it before it is charged\n", "", "charging", "charging needs a battery")]
    public void A_fault_is_named_where_it_stands_with_what_to_write_instead(string old, string bad, string where, string what)
    {
        Assert.Contains(old, Good, StringComparison.Ordinal);
        Reading<Case> reading = VehicleFile.Read(Good.Replace(old, bad, StringComparison.Ordinal), "van.yaml");
        Assert.Null(reading.Value);
        Assert.Contains(reading.Problems, problem => problem.Where == where && problem.What.Contains(what, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("white", 0.25)]
    [InlineData("light", 0.4)]
    [InlineData("middle", 0.6)]
    [InlineData("dark", 0.9)]
    [InlineData("55 %", 0.55)]
    public void Paint_is_a_word_or_a_share(string written, double fraction)
    {
        Case read = VehicleFile.Read(Good.Replace("paint: white", $"paint: {written}", StringComparison.Ordinal), "x").Value!;
        Assert.Equal(fraction, read.Vehicle.PaintSunFraction.Value);
        Assert.Contains($"paint: {written}\n", VehicleFile.Write(read));
    }
}
