using CsCheck;
using Thermal.Air;
using Thermal.Envelope;
using Thermal.Trips.Damp;
using Thermal.Trips.Heat;
using Thermal.Zones;

namespace Thermal.Tests.Property;

/// <summary>Laws of water through time, over random vehicles of three rooms, random weather and random people.</summary>
public class MovingDampLaws
{
    private static readonly Gen<double[]> Dice = Gen.Double[0, 1].Array[40];
    private const double AirPa = 95_000;

    /// <summary>Some hours of a journey: frost and thaw, covers on and off, a shower now and then.</summary>
    private static void Refill(Drive drive, DampDrive vapour, Body body, double[] dice, int turn)
    {
        double Next(int i, double low, double high) => low + (high - low) * ((dice[i % dice.Length] + 0.381966 * turn) % 1);
        drive.OutsideC = Next(0, -25, 20);
        drive.SkyC = drive.OutsideC - Next(1, 0, 25);
        drive.AirPastMPerS = Next(2, 0, 20);
        drive.WantedC = Next(3, 0, 1) < 0.3 ? double.NaN : Next(4, 5, 25);
        drive.HeaterHighestW = Next(5, 0, 6000);
        for (int p = 0; p < body.Parts.Length; p++)
        {
            drive.SunUptakeW[p] = Math.Max(0, Next(6 + p, -300, 300)) * body.Parts[p].AreaM2;
            int covers = body.Parts[p].Coverings.Count;
            drive.CoverOn[p] = covers == 0 ? -1 : (int)Next(8, -1, covers);
        }
        vapour.OutsidePa = Next(9, 0.3, 1) * SaturationPressure.OverWaterPa(drive.OutsideC);
        vapour.OutsideRatioKgPerKg = MoistAir.HumidityRatioKgPerKg(vapour.OutsidePa, AirPa);
        vapour.AirPressurePa = AirPa;
        for (int z = 0; z < body.Rooms.Length; z++)
        {
            drive.OutsideAirKgPerS[z] = Next(19 + z, 0.0001, 0.02);
            vapour.SourceKgPerS[z] = Math.Max(0, Next(30 + z, -3e-4, 3e-4));
        }
        for (int i = 0; i < body.Passages.Length; i++) drive.LinkAirKgPerS[i] = Next(22 + i, 0, 0.1);
    }

    private static (HeatStepper Heat, DampStepper Damp) Journey(Body body, double[] dice, double stepS, Action<DampStepper, HeatStepper, Drive>? afterHour = null)
    {
        HeatStepper heat = new(body, 5);
        DampStepper damp = new(body, 0.004, 5, AirPa);
        Drive drive = new(body);
        DampDrive vapour = new(body.Rooms.Length);
        for (int turn = 0; turn < 24; turn++)
        {
            Refill(drive, vapour, body, dice, turn);
            MovingDamp.Run(heat, damp, drive, vapour, (int)Math.Ceiling(3600 / stepS), stepS);
            afterHour?.Invoke(damp, heat, drive);
        }
        return (heat, damp);
    }

    /// <summary>1e-10 kg against some kg that moved: rounding alone.</summary>
    [Fact]
    public void Water_given_off_went_out_or_is_on_board() => Gen.Select(AnyVehicle.AnyBody, Dice, Gen.Double[60, 900]).Sample((vehicle, dice, stepS) =>
        Journey(Body.Of(vehicle, FilmRule.Separate, AirPa), dice, stepS, (damp, _, _) => Assert.Equal(0, damp.Ledger.ClosureKg, 1e-10)), iter: 40);

    [Fact]
    public void Nothing_wet_is_ever_less_than_dry() => Gen.Select(AnyVehicle.AnyBody, Dice, Gen.Double[60, 900]).Sample((vehicle, dice, stepS) =>
        Journey(Body.Of(vehicle, FilmRule.Separate, AirPa), dice, stepS, (damp, _, _) =>
        {
            Assert.All(damp.LiquidKg, kg => Assert.True(kg >= 0, $"{kg} kg"));
            Assert.All(damp.FrostKg, kg => Assert.True(kg >= 0, $"{kg} kg"));
            Assert.All(damp.RatioKgPerKg, ratio => Assert.True(ratio >= 0, $"{ratio}"));
            Assert.All(damp.BuildUps, account => Assert.All(account.HeldKgPerM2, kg => Assert.True(kg >= 0, $"{kg} kg/m²")));
        }), iter: 40);

    /// <summary>The heat of water is a matter of what is there: 2.501 MJ/kg of all that settled and stayed or ran off, 0.334 MJ/kg of what is frost. Rounding of some MJ.</summary>
    [Fact]
    public void The_heat_that_faces_were_given_is_that_of_the_water_on_them() => Gen.Select(AnyVehicle.AnyBody, Dice, Gen.Double[60, 900]).Sample((vehicle, dice, stepS) =>
        Journey(Body.Of(vehicle, FilmRule.Separate, AirPa), dice, stepS, (damp, heat, _) =>
        {
            double water = damp.LiquidKg.Sum() + damp.FrostKg.Sum() + damp.RunOffKg.Sum(), frost = damp.FrostKg.Sum();
            Assert.Equal(2_501_000 * water + 334_000 * frost, heat.Ledger.LatentJ + damp.OwedJ, 1.0);
            Assert.InRange(heat.Ledger.ClosureJ, -20, 20);
        }), iter: 40);

    [Fact]
    public void The_same_journey_gives_the_same_bits() => Gen.Select(AnyVehicle.AnyBody, Dice).Sample((vehicle, dice) =>
    {
        Body body = Body.Of(vehicle, FilmRule.Separate, AirPa);
        (HeatStepper Heat, DampStepper Damp) one = Journey(body, dice, 600), other = Journey(body, dice, 600);
        Assert.Equal(one.Damp.RatioKgPerKg, other.Damp.RatioKgPerKg);
        Assert.Equal(one.Damp.LiquidKg, other.Damp.LiquidKg);
        Assert.Equal(one.Heat.State.InnerFaceC, other.Heat.State.InnerFaceC);
    }, iter: 10);

    [Fact]
    public void More_vapour_never_leaves_a_room_drier() => Gen.Select(AnyVehicle.AnyBody, AnyVehicle.AnyNight, Gen.Double[1e-6, 2e-4]).Sample((vehicle, night, moreKgPerS) =>
    {
        Body body = Body.Of(vehicle, FilmRule.Separate, AirPa);
        HeatState held = HeatState.AtStart(body, night.OutsideC);
        Array.Fill(held.AirC, 15);
        Drive drive = new(body);
        Array.Fill(drive.OutsideAirKgPerS, 0.003);
        Array.Fill(drive.LinkAirKgPerS, 0.01);
        DampDrive vapour = MovingDamp.Outside(body, night.OutsidePa, AirPa);
        vapour.SourceKgPerS[1] = night.VapourKgPerS;
        DampStepper usual = new DampStepper(body, vapour.OutsideRatioKgPerKg, night.OutsideC, AirPa).Run(held, drive, vapour, 30, 600);
        vapour.SourceKgPerS[1] += moreKgPerS;
        DampStepper more = new DampStepper(body, vapour.OutsideRatioKgPerKg, night.OutsideC, AirPa).Run(held, drive, vapour, 30, 600);
        for (int z = 0; z < body.Rooms.Length; z++) Assert.True(more.RatioKgPerKg[z] >= usual.RatioKgPerKg[z] - 1e-15);
    }, iter: 40);

    /// <summary>
    /// Faces of the steady night, latent heat left out as there, until nothing changes. 3 %: the steady balance weighs air behind covers at room temperature,
    /// here at 10 °C; frames carry water over their larger faces here. Nights on which the steady air holds more than it can are left out: here it falls as fog.
    /// </summary>
    [Fact]
    public void It_settles_where_the_steady_balance_is() => Gen.Select(AnyVehicle.AnyBody, AnyVehicle.AnyNight).Sample((furnished, anyNight) =>
    {
        Vehicle vehicle = furnished with { FurnishingsJPerM2K = 0 }; // textiles take weeks to come to rest
        ZoneInputs night = anyNight with { SkyBelowAirK = 0, WindMPerS = 3 };
        ZoneState steady = vehicle.StateIn(night);
        for (int z = 0; z < vehicle.Zones.Count; z++)
            if (steady.HumidityRatiosKgPerKg[z] > MoistAir.HumidityRatioKgPerKg(SaturationPressure.OverWaterPa(steady.TemperaturesC[z]), AirPa)) return;
        Body body = Body.Of(vehicle, FilmRule.Lumped, AirPa);
        Drive drive = MovingHeat.HeldIn(body, steady);
        HeatStepper heat = new HeatStepper(body, 0).Run(60, 7200, drive);
        DampDrive vapour = MovingDamp.Outside(body, night.OutsidePa, AirPa);
        vapour.SourceKgPerS[ZoneBalance.LivingIndex(vehicle)] = night.VapourKgPerS;
        DampStepper damp = new DampStepper(body, vapour.OutsideRatioKgPerKg, night.OutsideC, AirPa).Run(heat.State, drive, vapour, 400, 7200);
        for (int z = 0; z < body.Rooms.Length; z++) Assert.Equal(1, damp.RatioKgPerKg[z] / steady.HumidityRatiosKgPerKg[z], 0.03);
    }, iter: 40);

    [Fact]
    public void A_step_allocates_nothing()
    {
        Body body = Body.Of(PlausibleVan.Vehicle, FilmRule.Separate, AirPa);
        HeatStepper heat = new(body, 5);
        DampStepper damp = new(body, 0.004, 5, AirPa);
        Drive drive = new(body) { OutsideC = -10, SkyC = -20, AirPastMPerS = 3, WantedC = 18, HeaterHighestW = 3000 };
        Array.Fill(drive.OutsideAirKgPerS, 0.003);
        DampDrive vapour = MovingDamp.Outside(body, 200, AirPa);
        vapour.SourceKgPerS[0] = 5e-5;
        MovingDamp.Run(heat, damp, drive, vapour, 60, 600);
        long before = GC.GetAllocatedBytesForCurrentThread();
        MovingDamp.Run(heat, damp, drive, vapour, 60, 600);
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }
}
