using CsCheck;
using Thermal.Envelope;
using Thermal.Trips.Heat;
using Thermal.Zones;

namespace Thermal.Tests.Property;

/// <summary>Laws of heat through time, over random vehicles of three rooms and random drives.</summary>
public class MovingHeatLaws
{
    private static readonly Gen<double[]> Dice = Gen.Double[0, 1].Array[40];

    /// <summary>Some moment of a journey: anything may happen, covers and heater change.</summary>
    private static void Refill(Drive drive, Body body, double[] dice, int turn)
    {
        double Next(int i, double low, double high) => low + (high - low) * ((dice[i % dice.Length] + 0.381966 * turn) % 1);
        drive.OutsideC = Next(0, -25, 20);
        drive.SkyC = drive.OutsideC - Next(1, 0, 25);
        drive.AirPastMPerS = Next(2, 0, 30);
        drive.WantedC = Next(3, 0, 1) < 0.3 ? double.NaN : Next(4, 5, 25);
        drive.HeaterHighestW = Next(5, 0, 6000);
        for (int p = 0; p < body.Parts.Length; p++)
        {
            drive.SunUptakeW[p] = Next(6 + p, 0, 300) * body.Parts[p].AreaM2;
            drive.LatentW[p] = Next(7 + p, -20, 20) * body.Parts[p].AreaM2;
            int covers = body.Parts[p].Coverings.Count;
            drive.CoverOn[p] = covers == 0 ? -1 : (int)Next(8, -1, covers);
        }
        for (int i = 0; i < body.Ties.Length; i++) drive.TieLatentW[i] = Next(9 + i, -5, 5);
        for (int z = 0; z < body.Rooms.Length; z++)
        {
            drive.SunInsideW[z] = Next(10 + z, 0, 500);
            drive.ConvectiveW[z] = Next(13 + z, 0, 300);
            drive.RadiantW[z] = Next(16 + z, 0, 300);
            drive.OutsideAirKgPerS[z] = Next(19 + z, 0, 0.02);
        }
        for (int i = 0; i < body.Passages.Length; i++)
        {
            drive.LinkAirKgPerS[i] = Next(22 + i, 0, 0.1);
            drive.LinkOpen[i] = Next(25 + i, 0, 1) < 0.5;
        }
    }

    [Fact]
    public void Heat_that_came_in_went_out_or_is_stored() => Gen.Select(AnyVehicle.AnyBody, Dice, Gen.Bool, Gen.Double[60, 3600]).Sample((vehicle, dice, lumped, stepS) =>
    {
        Body body = Body.Of(vehicle, lumped ? FilmRule.Lumped : FilmRule.Separate, 95_000);
        HeatStepper stepper = new(body, 5);
        Drive drive = new(body);
        double moved = 0;
        for (int turn = 0; turn < 12; turn++)
        {
            Refill(drive, body, dice, turn);
            stepper.Run(1, stepS, drive);
            moved += 6000 * stepS;
            // Rounding of some hundred terms and of conductances of 10^5 W/K in the metal.
            Assert.True(Math.Abs(stepper.Ledger.ClosureJ) < 1e-8 * moved, $"{stepper.Ledger.ClosureJ} J of {moved} J");
        }
    }, iter: 60);

    [Fact]
    public void With_lumped_films_and_no_sky_it_settles_where_the_steady_balance_is() =>
        Gen.Select(AnyVehicle.AnyBody, AnyVehicle.AnyNight).Sample((vehicle, anyNight) =>
        {
            ZoneInputs night = anyNight with { SkyBelowAirK = 0, WindMPerS = 3 };
            ZoneState steady = vehicle.StateIn(night);
            Body body = Body.Of(vehicle, FilmRule.Lumped, night.AirPressurePa);
            HeatStepper stepper = new HeatStepper(body, 0).Run(60, 7200, MovingHeat.HeldIn(body, steady));
            for (int z = 0; z < body.Rooms.Length; z++) Assert.Equal(steady.TemperaturesC[z], stepper.State.AirC[z], 0.02);
            Assert.Equal(1, stepper.HeaterW / steady.HeaterW, 1e-3);
        }, iter: 40);

    /// <summary>Rounding over 12 steps of heat that is the same to the last digits.</summary>
    [Fact]
    public void A_colder_outside_never_uses_less_heat() => Gen.Select(AnyVehicle.AnyBody, Dice, Gen.Double[0, 15]).Sample((vehicle, dice, colderK) =>
    {
        Body body = Body.Of(vehicle, FilmRule.Separate, 95_000);
        HeatStepper stepper = new(body, 5), colder = new(body, 5);
        Drive drive = new(body);
        for (int turn = 0; turn < 12; turn++)
        {
            Refill(drive, body, dice, turn);
            stepper.Run(1, 900, drive);
            drive.OutsideC -= colderK;
            drive.SkyC -= colderK;
            colder.Run(1, 900, drive);
        }
        Assert.True(colder.Ledger.HeaterJ >= stepper.Ledger.HeaterJ - 1e-9 * (1 + stepper.Ledger.HeaterJ), $"{colder.Ledger.HeaterJ} J, {colderK} K colder than {stepper.Ledger.HeaterJ} J");
    }, iter: 60);

    /// <summary>Faces, air and furnishings that nothing heats stay between the coldest and the warmest of what acts on them.</summary>
    [Fact]
    public void Without_heat_and_sun_nothing_leaves_the_span_of_outside_sky_and_start() => Gen.Select(AnyVehicle.AnyBody, Gen.Double[-25, 15], Gen.Double[0, 25], Gen.Double[0, 20], Gen.Double[60, 3600])
        .Sample((vehicle, outsideC, skyK, wind, stepS) =>
        {
            Body body = Body.Of(vehicle, FilmRule.Separate, 95_000);
            HeatStepper stepper = new(body, outsideC);
            Drive drive = new(body) { OutsideC = outsideC, SkyC = outsideC - skyK, AirPastMPerS = wind };
            Array.Fill(drive.OutsideAirKgPerS, 0.003);
            for (int i = 0; i < 20; i++)
            {
                stepper.Run(1, stepS, drive);
                foreach (double[] all in new[] { stepper.State.AirC, stepper.State.RadiantC, stepper.State.FurnishingC, stepper.State.InnerFaceC, stepper.State.OuterFaceC })
                    foreach (double found in all) Assert.InRange(found, outsideC - skyK - 1e-9, outsideC + 1e-9);
            }
        }, iter: 40);
}
