using System.Numerics;
using Thermal.Envelope;
using Thermal.Heating;
using Thermal.Trips.Heat;
using static Thermal.Tests.MovingHeat;
using static Thermal.Tests.Sketches;

namespace Thermal.Tests.Exact;

/// <summary>Rooms of one and of two heat stores through time, against closed forms evaluated elsewhere. The vehicles are whole ones, so bare that nothing else acts.</summary>
public class MovingRoomTests
{
    /// <summary>C 150 kJ/K of air, 45 W/K of fresh air, 2000 W, start and outside −10 °C. 0.05 K with steps of 5 minutes.</summary>
    [Theory, InlineData(600, -2.679), InlineData(1800, 8.545), InlineData(3600, 19.351), InlineData(7200, 29.319)]
    public void One_store_warms_as_the_exponential_says(int seconds, double airC)
    {
        Body body = BareRoom(AirVolumeM3(150_000)).Cut();
        Drive drive = new(body) { OutsideC = -10, ConvectiveW = { [0] = 2000 }, OutsideAirKgPerS = { [0] = 45 / 1006.0 } };
        Assert.Equal(airC, new HeatStepper(body, -10).Run(seconds / 300, 300, drive).State.AirC[0], 0.05);
    }

    /// <summary>Air 60 kJ/K; a metal lining of 400 kJ/K that takes 80 W/K from it by its film and loses 5 W/K through insulation that stores nothing; 30 W/K of fresh air.</summary>
    private static Body TwoStores()
    {
        double areaM2 = 80 * 0.13, insulation = areaM2 / 5 - 1 / 25.0;
        return BareRoom(AirVolumeM3(60_000), Panel("lining", areaM2, "living",
            new([Layer(0.01, 500, 8000, 400_000 / areaM2 / 80), Layer(0.01 * insulation, 0.01, 1, 100)]))).Cut();
    }

    private static Drive TwoStoresDrive(Body body, double heatW) =>
        new(body) { OutsideC = -10, AirPastMPerS = WindOfFilm(25), ConvectiveW = { [0] = heatW }, OutsideAirKgPerS = { [0] = 30 / 1006.0 } };

    [Theory]
    [InlineData(0.25, -0.895, -9.051)]
    [InlineData(0.5, 1.699, -7.475)]
    [InlineData(1, 4.339, -4.333)]
    [InlineData(2, 8.391, 1.040)]
    [InlineData(4, 14.216, 8.778)]
    [InlineData(8, 20.331, 16.902)]
    public void Two_stores_warm_as_the_closed_form_says(double hours, double airC, double massC)
    {
        Body body = TwoStores();
        HeatStepper stepper = new HeatStepper(body, -10).Run((int)(hours * 12), 300, TwoStoresDrive(body, 1200));
        Assert.Equal(airC, stepper.State.AirC[0], 0.05);
        Assert.Equal(massC, stepper.CellsC(0)[0], 0.05);
    }

    /// <summary>Steps of an hour are seven times the time constant of the air: no swinging, and the steady state to 0.001 K.</summary>
    [Fact]
    public void Steps_of_an_hour_stay_between_start_and_steady_state_and_end_there()
    {
        Body body = TwoStores();
        HeatStepper stepper = new(body, -10);
        Drive drive = TwoStoresDrive(body, 1200);
        double last = -10;
        for (int hour = 0; hour < 72; hour++)
        {
            double airC = stepper.Run(1, 3600, drive).State.AirC[0];
            Assert.InRange(airC, last - 0.5, 24.6);
            last = airC;
        }
        Assert.Equal(24.576, stepper.State.AirC[0], 0.001);
        Assert.Equal(22.542, stepper.CellsC(0)[0], 0.001);
    }

    /// <summary>Outside swings by 1 K in 24 h without heat: the air by 0.6759 K, 2.346 h later.</summary>
    [Fact]
    public void A_daily_swing_outside_reaches_the_air_as_the_closed_form_says()
    {
        Body body = TwoStores();
        HeatStepper stepper = new(body, 0);
        Drive drive = TwoStoresDrive(body, 0);
        Complex swing = 0;
        for (int i = 0; i < 4 * 288; i++)
        {
            double from = i * 300.0;
            stepper.Run(1, 300, drive, after => drive.OutsideC = Math.Cos(2 * Math.PI * (from + after) / 86_400));
            if (i >= 3 * 288) swing += 2.0 / 288 * stepper.State.AirC[0] * Complex.FromPolarCoordinates(1, -2 * Math.PI * (from + 300) / 86_400);
        }
        Assert.Equal(0.6759, swing.Magnitude, 0.0005);
        Assert.Equal(2.346, -swing.Phase / (2 * Math.PI) * 24, 0.005);
    }

    /// <summary>The fall of the changes from step to half step tells the order, free of how nearly the wall is one store.</summary>
    [Fact]
    public void Halving_the_step_quarters_the_error()
    {
        Assert.InRange(Math.Log2((AirC(240) - AirC(120)) / (AirC(120) - AirC(60))), 1.9, 2.1);

        static double AirC(double stepS)
        {
            Body body = TwoStores();
            return new HeatStepper(body, -10).Run((int)(3600 / stepS), stepS, TwoStoresDrive(body, 1200)).State.AirC[0];
        }
    }

    /// <summary>A heater that can: the wanted operative temperature at the end of every step, and heat no higher than its highest.</summary>
    [Fact]
    public void The_heater_gives_what_meets_the_temperature_wanted_and_no_more_than_it_has()
    {
        Body body = TwoStores();
        HeatStepper stepper = new(body, -10);
        Drive drive = TwoStoresDrive(body, 0);
        (drive.WantedC, drive.HeaterHighestW) = (18, 1500);
        double before = -10;
        for (int i = 0; i < 200; i++)
        {
            stepper.Run(1, 600, drive);
            Assert.InRange(stepper.HeaterW, 0, 1500);
            if (stepper.HeaterW < 1500) Assert.Equal(18, stepper.State.OperativeC(0), 1e-9);
            else Assert.InRange(stepper.State.OperativeC(0), before, 18);
            before = stepper.State.OperativeC(0);
        }
        Assert.Equal(28 * new TwoNode(60_000, 400_000, 80, 30, 5).SteadyWPerK, stepper.HeaterW, 0.5);
        drive.WantedC = double.NaN;
        stepper.Run(1, 600, drive);
        Assert.Equal(0, stepper.HeaterW);
    }

    /// <summary>
    /// Settled with films apart, every face of a heated room stands where its balance written out here says: under the roof air 5 % of the
    /// difference to outside warmer than the mean and 5.0 W/(m²·K), over the floor as much colder, there and at the side 4 as the heater blows; radiation by fourth
    /// powers to the radiant node; outside 4 + 4v, sky by its share. Rounding of what has settled: 10⁻⁶ of the flow.
    /// </summary>
    [Fact]
    public void Settled_faces_stand_in_the_balance_of_convection_radiation_and_conduction()
    {
        double[] tilts = [0, 90, 180], convective = [5, 4, 4], above = [0.05, 0, -0.05], sky = [1, 0.5, 0];
        Body body = BareRoom(8, [.. tilts.Select((tilt, i) => Panel($"panel {i}", 5 + i, "living", new([Sheet(0.03, 0.05)]), tilt))]).Cut(FilmRule.Separate);
        Drive drive = new(body) { OutsideC = -5, SkyC = -25, AirPastMPerS = 2, WantedC = 19, HeaterHighestW = 1e4, OutsideAirKgPerS = { [0] = 0.004 } };
        HeatStepper stepper = new HeatStepper(body, 0).Run(200, 3600, drive);
        HeatState state = stepper.State;
        double intoFaces = 0;
        for (int i = 0; i < 3; i++)
        {
            double flow = (state.InnerFaceC[i] - state.OuterFaceC[i]) / (0.03 / 0.05);
            double fromAir = convective[i] * (state.AirC[0] + above[i] * (state.AirC[0] + 5) - state.InnerFaceC[i]);
            double outer = (4 + 4 * 2) * (state.OuterFaceC[i] + 5) + sky[i] * Radiated(state.OuterFaceC[i], -25) + (1 - sky[i]) * Radiated(state.OuterFaceC[i], -5);
            Assert.Equal(1, (fromAir + Radiated(state.RadiantC[0], state.InnerFaceC[i])) / flow, 1e-6);
            Assert.Equal(1, outer / flow, 1e-6);
            intoFaces += (5 + i) * fromAir;
        }
        // Furnishings store nothing here: what they take from the air they radiate.
        double intoFurnishings = 8 * 4 * (state.AirC[0] - state.FurnishingC[0]);
        Assert.Equal(8 * Radiated(state.FurnishingC[0], state.RadiantC[0]), intoFurnishings, 1e-4);
        Assert.Equal(stepper.HeaterW, intoFaces + intoFurnishings + 0.004 * 1006 * (state.AirC[0] + 5), 1e-4);
        Assert.Equal(19, (state.AirC[0] + state.RadiantC[0]) / 2, 1e-9);

        static double Radiated(double fromC, double toC) => 0.9 * 5.670374419e-8 * (Math.Pow(fromC + 273.15, 4) - Math.Pow(toC + 273.15, 4));
    }

    /// <summary>Air warmer than a floor hardly sinks to it; a floor warmer than its air, as one in the sun, drives it up. At a roof the other way round.</summary>
    [Theory]
    [InlineData(FlowDirection.Up, 20, 10, 5.0)]
    [InlineData(FlowDirection.Up, 10, 20, 0.7)]
    [InlineData(FlowDirection.Down, 20, 10, 0.7)]
    [InlineData(FlowDirection.Down, 10, 20, 5.0)]
    [InlineData(FlowDirection.Horizontal, 20, 10, 2.5)]
    [InlineData(FlowDirection.Horizontal, 10, 20, 2.5)]
    public void Convection_inside_follows_which_side_is_warmer(FlowDirection way, double airC, double faceC, double wPerM2K) =>
        Assert.Equal(wPerM2K, StageFilms.ConvectiveWPerM2K(way, airC, faceC));

    /// <summary>Cells, resistances and faces of plain, curtained and covered glass at rest: the room's side of an inside cover is warm, the glass behind it cold; an outside cover keeps the glass warm.</summary>
    [Fact]
    public void A_cover_moves_the_glass_by_the_side_it_hangs_on()
    {
        Vehicle vehicle = BareRoom(8, Panel("side", 4, "living", new([Sheet(0.03, 0.05)])) with
        {
            Openings =
            [
                new()
                {
                    Name = "window", WidthM = 1, HeightM = 1, Glazing = new([new() { Material = Of(1), ThicknessM = 0.004 }], []),
                    Coverings =
                    [
                        new() { Name = "curtain", Side = CoveringSide.Inside, AddedResistanceM2KPerW = Exactly(0.2) },
                        new() { Name = "mat", Side = CoveringSide.Outside, AddedResistanceM2KPerW = Exactly(0.2) },
                    ],
                },
            ],
        });
        // Lumped, 20 °C against −10 °C: films 0.13 and 0.04, pane 0.004, cover 0.2 m²·K/W.
        Assert.Equal(20 - 30 * 0.13 / 0.174, GlassC(-1), 1e-6);
        Assert.Equal(20 - 30 * 0.33 / 0.374, GlassC(0), 1e-6);
        Assert.Equal(20 - 30 * 0.13 / 0.374, GlassC(1), 1e-6);

        double GlassC(int cover)
        {
            Body body = vehicle.Cut();
            int glass = Array.FindIndex(body.Parts, part => part.Opening == 0);
            Drive drive = new(body) { OutsideC = -10, AirPastMPerS = WindOfFilm(25), WantedC = 20, HeaterHighestW = 1e4 };
            drive.CoverOn[glass] = cover;
            return new HeatStepper(body, 0).Run(100, 3600, drive).State.InnerFaceC[glass];
        }
    }
}
