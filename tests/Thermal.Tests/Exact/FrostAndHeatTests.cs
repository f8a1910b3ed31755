using Thermal.Envelope;
using Thermal.Trips.Damp;
using Thermal.Trips.Heat;
using static Thermal.Tests.MovingDamp;
using static Thermal.Tests.MovingHeat;
using static Thermal.Tests.Sketches;

namespace Thermal.Tests.Exact;

/// <summary>Frost on glass overnight and its melting in the morning, with the heat of water.</summary>
public class FrostAndHeatTests
{
    private static Vehicle Glasshouse => BareRoom(10, Panel("wall", 4, "living", new([Sheet(0.04, 0.04), Steel])) with
    {
        Openings = [new() { Name = "window", WidthM = 1, HeightM = 1, Glazing = new([new() { Material = Of(1, Materials.MaterialGroup.Pane) with { DensityKgPerM3 = Exactly(2500), SpecificHeatJPerKgK = Exactly(840) }, ThicknessM = 0.004 }], []) }],
    });

    /// <summary>Steam all the time, so that next to nothing dries: in long steps the face is once or twice warmer than its air for a moment, a twentieth at most.</summary>
    [Theory, InlineData(60), InlineData(600), InlineData(900)]
    public void What_froze_on_the_glass_melts_gram_for_gram(double stepS)
    {
        Body body = Glasshouse.Cut(FilmRule.Separate);
        int glass = Array.FindIndex(body.Parts, part => part.Opening >= 0);
        Drive drive = new(body) { OutsideC = -15, SkyC = -25, AirPastMPerS = 3, WantedC = 5, HeaterHighestW = 1500, OutsideAirKgPerS = { [0] = 0.001 } };
        DampDrive vapour = Outside(body, 150);
        vapour.SourceKgPerS[0] = 1e-5;
        HeatStepper heat = new(body, -15);
        DampStepper damp = new(body, vapour.OutsideRatioKgPerKg, -15, SeaPa);
        MovingDamp.Run(heat, damp, drive, vapour, (int)(28_800 / stepS), stepS);
        double frostKg = damp.FrostKg[glass];
        Assert.InRange(frostKg, 0.03, 0.3);

        vapour.SourceKgPerS[0] = 3e-5;
        (drive.OutsideC, drive.SkyC, drive.WantedC) = (12, 8, 14);
        MovingDamp.Run(heat, damp, drive, vapour, (int)(14_400 / stepS), stepS);
        Assert.Equal(0, damp.FrostKg[glass]);
        // Some frost more settles while the glass is still below zero.
        Assert.InRange(damp.MeltedKg[glass] / frostKg, 0.98, 1.1);
        Assert.InRange((damp.LiquidKg[glass] + damp.RunOffKg[glass]) / damp.SettledKg[glass], 0.95, 1 + 1e-12);
        Assert.Equal(0, damp.Ledger.ClosureKg, 1e-12);
    }

    /// <summary>While frost melts the glass stays near 0 °C: as much heat goes into it as the frost needs, 334 kJ/kg.</summary>
    [Fact]
    public void Glass_stays_at_zero_while_its_frost_melts()
    {
        Body body = Glasshouse.Cut(FilmRule.Separate);
        int glass = Array.FindIndex(body.Parts, part => part.Opening >= 0);
        Drive drive = new(body) { OutsideC = 6, SkyC = 2, AirPastMPerS = 2, WantedC = 12, HeaterHighestW = 3000, OutsideAirKgPerS = { [0] = 0.001 } };
        HeatStepper heat = new(body, -5);
        DampStepper damp = new(body, 0.002, -5, SeaPa);
        damp.FrostKg[glass] = 0.1;
        List<double> melting = [];
        MovingDamp.Run(heat, damp, drive, Outside(body, 500), 200, 60, () =>
        {
            if (damp.FrostKg[glass] > 0.01 && damp.MeltedKg[glass] > 0.01) melting.Add(heat.State.InnerFaceC[glass]);
        });
        Assert.NotEmpty(melting);
        Assert.All(melting, faceC => Assert.InRange(faceC, 0, 0.6));
        Assert.True(heat.State.InnerFaceC[glass] > 3);
    }

    /// <summary>A wet ceiling of thin sheet in warm dry air: what dries takes more heat per kelvin than the face gets elsewhere, and the steps are long. No swinging. Water is put back after each step.</summary>
    [Fact]
    public void A_warm_wet_sheet_does_not_swing_in_long_steps()
    {
        Body body = BareRoom(20, Panel("ceiling", 6, "living", new([Sheet(0.001, 0.1), Sheet(0.08, 0.03)]), 0)).Cut(FilmRule.Separate);
        Drive drive = new(body) { OutsideC = 25, SkyC = 20, AirPastMPerS = 1, WantedC = 35, HeaterHighestW = 3000, OutsideAirKgPerS = { [0] = 0.02 } };
        HeatStepper heat = new(body, 30);
        DampStepper damp = new(body, 0.010, 30, SeaPa);
        damp.LiquidKg[0] = 1.19;
        List<double> faces = [];
        MovingDamp.Run(heat, damp, drive, Outside(body, 1600), 12, 900, () =>
        {
            damp.LiquidKg[0] = 1.19;
            faces.Add(heat.State.InnerFaceC[0]);
        });
        for (int i = 2; i < faces.Count; i++) Assert.True((faces[i] - faces[i - 1]) * (faces[i - 1] - faces[i - 2]) > -0.01, $"{faces[i - 2]}, {faces[i - 1]}, {faces[i]} °C");
    }
}
