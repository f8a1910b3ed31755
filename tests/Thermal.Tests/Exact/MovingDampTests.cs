using System.Numerics;
using Thermal.Air;
using Thermal.Envelope;
using Thermal.Trips.Damp;
using Thermal.Trips.Heat;
using Thermal.Zones;
using static Thermal.Tests.MovingDamp;
using static Thermal.Tests.MovingHeat;
using static Thermal.Tests.Sketches;

namespace Thermal.Tests.Exact;

/// <summary>Water in rooms and on faces through time, against closed forms evaluated here.</summary>
public class MovingDampTests
{
    /// <summary>10 m³, one air change an hour, 40 g/h, start and outside 4 g/m³. 0.01 g/m³ with steps of 5 minutes.</summary>
    [Theory, InlineData(0.25, 4.885), InlineData(0.5, 5.574), InlineData(1, 6.528), InlineData(2, 7.459), InlineData(4, 7.927)]
    public void A_well_mixed_room_grows_humid_as_the_exponential_says(double hours, double gPerM3)
    {
        Body body = BareRoom(10).Cut();
        double kgPerM3 = DryAirKg(1), startRatio = 0.004 / kgPerM3;
        Drive drive = new(body) { OutsideAirKgPerS = { [0] = 10 * kgPerM3 / 3600 } };
        DampDrive vapour = new(1) { OutsideRatioKgPerKg = startRatio, AirPressurePa = SeaPa, SourceKgPerS = { [0] = 0.04 / 3600 } };
        DampStepper damp = new DampStepper(body, startRatio, 10, SeaPa).Run(HeatState.AtStart(body, 10), drive, vapour, (int)(hours * 12), 300);
        Assert.Equal(gPerM3, 1000 * damp.RatioKgPerKg[0] * kgPerM3, 0.01);
    }

    /// <summary>A room of 10 m³ at 20 °C, vapour and fresh air, and a steel plate of 3 m² held at 4 °C.</summary>
    private static (Body Body, HeatState Held, Drive Drive, DampDrive Vapour) Plate(double plateC, double sourceKgPerS, double tiltDeg = 90)
    {
        Body body = BareRoom(10, Panel("plate", 3, "living", new([Steel]), tiltDeg)).Cut();
        HeatState held = HeatState.AtStart(body, 20);
        held.InnerFaceC[0] = plateC;
        DampDrive vapour = Outside(body, 500);
        vapour.SourceKgPerS[0] = sourceKgPerS;
        return (body, held, new(body) { OutsideAirKgPerS = { [0] = 0.002 } }, vapour);
    }

    /// <summary>m·w′ = S + A·(w_out − w) − K·(w − w_sat), K = 2.5·3/1006: one exponential, and its integral on the plate. 1e-4: steps of a minute against 13 minutes.</summary>
    [Fact]
    public void Water_settles_on_a_cold_plate_as_the_exponential_says()
    {
        (Body body, HeatState held, Drive drive, DampDrive vapour) = Plate(4, 1e-4);
        double carry = 2.5 * 3 / 1006, saturated = RatioKgPerKg(610.5 * Math.Exp(17.269 * 4 / 241.3)), start = saturated * 1.2;
        DampStepper damp = new DampStepper(body, start, 20, SeaPa).Run(held, drive, vapour, 45, 60);
        double rate = (carry + 0.002) / DryAirKg(10), end = (1e-4 + 0.002 * RatioKgPerKg(500) + carry * saturated) / (carry + 0.002), passed = Math.Exp(-rate * 2700);
        Assert.Equal(1, damp.RatioKgPerKg[0] / (end + (start - end) * passed), 1e-4);
        double settled = carry * ((end - saturated) * 2700 + (start - end) * (1 - passed) / rate);
        Assert.Equal(1, damp.LiquidKg[0] / settled, 1e-4);
        Assert.Equal(0, damp.Ledger.ClosureKg, 1e-15);
    }

    /// <summary>
    /// Closed room, faces as warm as the air at 10 °C: the plate takes what is above saturation through its film, fog what is left. At rest all that is
    /// given off has settled, and the air stands above saturation only by what keeps both flowing: S/(m/60 s + K).
    /// </summary>
    [Fact]
    public void What_the_air_can_no_longer_hold_falls_out_of_it()
    {
        (Body body, HeatState held, Drive drive, DampDrive vapour) = Plate(20, 1e-4);
        drive.OutsideAirKgPerS[0] = 0;
        double saturated = RatioKgPerKg(610.5 * Math.Exp(17.269 * 20 / 257.3)), carry = 2.5 * 3 / 1006;
        DampStepper damp = new DampStepper(body, saturated, 20, SeaPa).Run(held, drive, vapour, 120, 60);
        double above = 1e-4 / (DryAirKg(10) / 60 + carry);
        Assert.Equal(1, damp.RatioKgPerKg[0] / (saturated + above), 1e-9);
        Assert.Equal(1, damp.LiquidKg[0] / (1e-4 * 7200 - above * DryAirKg(10) - damp.Ledger.InTextilesKg - damp.Ledger.RunOffKg), 1e-9);
    }

    [Fact]
    public void Halving_the_step_quarters_the_error()
    {
        double[] ratios = [.. new[] { 240.0, 120, 60 }.Select(stepS =>
        {
            (Body body, HeatState held, Drive drive, DampDrive vapour) = Plate(4, 1e-4);
            return new DampStepper(body, 0.006, 20, SeaPa).Run(held, drive, vapour, (int)(1200 / stepS), stepS).RatioKgPerKg[0];
        })];
        Assert.InRange(Math.Log2((ratios[0] - ratios[1]) / (ratios[1] - ratios[2])), 1.85, 2.15);
    }

    /// <summary>10 g on the plate; air far too dry for it. In long steps too the last gram dries, and nothing more.</summary>
    [Theory, InlineData(60), InlineData(900), InlineData(3600)]
    public void No_more_dries_than_was_there(double stepS)
    {
        (Body body, HeatState held, Drive drive, DampDrive vapour) = Plate(15, 0);
        DampStepper damp = new(body, 0.003, 20, SeaPa);
        damp.LiquidKg[0] = 0.010;
        double least = 1;
        for (int i = 0; i < 3600 / stepS * 10; i++) least = Math.Min(least, damp.Run(held, drive, vapour, 1, stepS).LiquidKg[0]);
        Assert.Equal(0, least);
        Assert.Equal(0, damp.LiquidKg[0]);
        // What the ledger misses is the water put there by hand.
        Assert.Equal(-0.010, damp.Ledger.ClosureKg, 1e-12);
    }

    /// <summary>Upright 100 g/m², overhead 200 g/m²; a floor keeps its puddle.</summary>
    [Theory, InlineData(90, 0.3), InlineData(0, 0.6), InlineData(180, double.PositiveInfinity)]
    public void What_a_face_cannot_hold_runs_off(double tiltDeg, double limitKg)
    {
        (Body body, HeatState held, Drive drive, DampDrive vapour) = Plate(4, 2e-4, tiltDeg);
        DampStepper damp = new DampStepper(body, 0.006, 20, SeaPa).Run(held, drive, vapour, 200, 600);
        if (double.IsPositiveInfinity(limitKg)) Assert.Equal(0, damp.RunOffKg[0]);
        else Assert.Equal(limitKg, damp.LiquidKg[0], 1e-12);
        Assert.Equal(damp.SettledKg[0], damp.LiquidKg[0] + damp.RunOffKg[0], 1e-12);
    }

    /// <summary>
    /// A slab far thicker than a day's swing reaches: √(iωkc)·A behind a film, in vapour pressure at 15 °C. The store with its effective depth is to meet its
    /// size and its lag; 1 % because a humidity ratio is not quite straight in pressure: at saturation it is 1.7 % above.
    /// </summary>
    [Fact]
    public void Wood_buffers_a_daily_swing_as_a_thick_slab_does()
    {
        const double mu = 40, density = 450, at80 = 0.13, areaM2 = 2, swingPa = 1, dayS = 86_400, stepS = 300;
        double film = 2.5 * areaM2 / 1006, perPa = 0.621945 / SeaPa;
        double k = 2e-7 * Math.Pow(288.15, 0.81) / SeaPa / mu, c = density * at80 / 0.8 / (610.5 * Math.Exp(17.269 * 15 / 252.3)), omega = 2 * Math.PI / dayS;
        Complex slab = areaM2 * Complex.Sqrt(new Complex(0, omega * k * c)), exact = swingPa / (1 / slab + 1 / (film * perPa)) / new Complex(0, omega);

        Trips.Damp.Buffer buffer = new(0, 0, areaM2, 1, density, at80, mu, SeaPa);
        RatioSystem room = new(1);
        WetPlaces none = new(0);
        double mean = 0.002;
        double[] ratio = [mean];
        buffer.Start(mean, 15, SeaPa);
        Complex swing = 0;
        for (int i = 0; i < 6 * 288; i++)
            for (int stage = 0; stage < 2; stage++)
            {
                double atS = (i + (stage == 0 ? HeatStepper.StageFactor : 1)) * stepS;
                room.Clear();
                room.Exchange(0, 1e12, mean + perPa * swingPa * Math.Cos(omega * atS));
                buffer.Enter(stage, HeatStepper.StageFactor * stepS, film, 15, SeaPa, room);
                room.Solve(none, ratio);
                buffer.Take(ratio[0]);
                if (stage == 1 && i >= 5 * 288) swing += 2.0 / 288 * buffer.GainKg * Complex.FromPolarCoordinates(1, -omega * atS);
            }
        Assert.Equal(1, swing.Magnitude / exact.Magnitude, 0.01);
        Assert.Equal(exact.Phase, swing.Phase, 0.01);
    }

    /// <summary>The cab has no vapour of its own: with its curtain's air it shares the living space's, without it stays as dry as outside.</summary>
    [Fact]
    public void A_cab_behind_a_curtain_takes_part()
    {
        Body body = (PlausibleVan.Vehicle with { FurnishingsJPerM2K = 0 }).Cut(FilmRule.Separate); // no seats that give off what they hold
        double outside = RatioKgPerKg(500), shut = CabRatio(0), curtain = CabRatio(0.01);
        Assert.Equal(outside, shut, 1e-5);
        Assert.True(curtain > outside + 3e-4, $"{curtain}");

        double CabRatio(double linkKgPerS)
        {
            int living = ZoneBalance.LivingIndex(body.Vehicle);
            Drive drive = new(body) { OutsideC = 5, SkyC = 0, AirPastMPerS = 3, WantedC = 18, HeaterHighestW = 4000, LinkAirKgPerS = { [0] = linkKgPerS } };
            DampDrive vapour = Outside(body, 500);
            vapour.SourceKgPerS[living] = 0.1 / 3600;
            Array.Fill(drive.OutsideAirKgPerS, 0.003);
            HeatStepper heat = new(body, 5);
            DampStepper damp = new(body, outside, 5, SeaPa);
            MovingDamp.Run(heat, damp, drive, vapour, 48, 600);
            return damp.RatioKgPerKg[1 - living];
        }
    }

    /// <summary>At +6 °C and 90 % outside air can hardly dry anything, at −10 °C it can: same people, same air exchange.</summary>
    [Fact]
    public void A_mild_damp_night_is_more_humid_than_a_frosty_one()
    {
        Body body = PlausibleVan.Vehicle.Cut(FilmRule.Separate);
        double mild = HumidityAfterNight(6), frosty = HumidityAfterNight(-10);
        Assert.True(mild > frosty + 0.05, $"mild {mild}, frosty {frosty}");

        double HumidityAfterNight(double outsideC)
        {
            int living = ZoneBalance.LivingIndex(body.Vehicle);
            double outsidePa = 0.9 * SaturationPressure.OverWaterPa(outsideC);
            Drive drive = new(body) { OutsideC = outsideC, SkyC = outsideC - 5, AirPastMPerS = 3, WantedC = 16, HeaterHighestW = 4000, LinkAirKgPerS = { [0] = 0.007 } };
            DampDrive vapour = Outside(body, outsidePa);
            vapour.SourceKgPerS[living] = 0.08 / 3600;
            Array.Fill(drive.OutsideAirKgPerS, 0.004);
            HeatStepper heat = new(body, outsideC);
            DampStepper damp = new(body, vapour.OutsideRatioKgPerKg, outsideC, SeaPa);
            MovingDamp.Run(heat, damp, drive, vapour, 72, 600);
            return MoistAir.VapourPressurePa(damp.RatioKgPerKg[living], SeaPa) / SaturationPressure.OverWaterPa(heat.State.AirC[living]);
        }
    }
}
