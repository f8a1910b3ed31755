using Thermal.Air;
using Thermal.Envelope;
using Thermal.Moisture;
using Thermal.Trips.Damp;
using Thermal.Trips.Heat;
using static Thermal.Tests.MovingDamp;
using static Thermal.Tests.MovingHeat;
using static Thermal.Tests.Sketches;

namespace Thermal.Tests.Exact;

/// <summary>Water inside a build-up hour by hour: one constant night, drying, and many nights.</summary>
public class BuildUpAccountTests
{
    /// <summary>Lining 6 mm of μ 50 over 25 mm of μ 50 on steel: s_d 0.3 and 1.25 m.</summary>
    private static Surface Wall(LiningFit fit = LiningFit.Bonded, double airM3PerM2H = 0) =>
        Panel("wall", 2, "living", new([Sheet(0.006, 0.13, "lining"), Sheet(0.025, 0.036, "wool"), Steel])) with { LiningFit = fit, AirBehindLiningM3PerM2H = Exactly(airM3PerM2H) };

    private static double Saturation(double temperatureC) => temperatureC >= 0 ? 610.5 * Math.Exp(17.269 * temperatureC / (237.3 + temperatureC)) : 610.5 * Math.Exp(21.875 * temperatureC / (265.5 + temperatureC));

    /// <summary>One plane takes it all: δ0·(p_i − p_sat)/s_d in one hour, less the next to nothing that passes 1000 m of steel.</summary>
    [Fact]
    public void A_constant_hour_wets_the_skin_as_one_line_of_the_handbook_says()
    {
        BuildUpAccount account = new(BareRoom(10, Wall()).Cut(), 0);
        double[] facesC = [17, 16, -6, -6.2];
        account.Take(3600, facesC, 1200, 250);
        (double inKg, double outKg) = account.Close(SeaPa);
        double permeability = 2e-7 * Math.Pow(273.15 + (17 - 6.2) / 2, 0.81) / SeaPa, settles = permeability * ((1200 - Saturation(-6)) / 1.55 - (Saturation(-6) - 250) / 1000) * 3600;
        Assert.Equal(1, account.HeldKgPerM2.Sum() / settles, 1e-9);
        Assert.Equal(2 * account.HeldKgPerM2.Sum(), inKg - outKg, 1e-15);
        Assert.InRange(outKg / inKg, 0, 1e-3);
    }

    /// <summary>Temperatures of the steady chain, thick layers divided alike: the night of the handbook method, at every face. Rounding, and the permeability found between outer faces instead of airs: 1 %.</summary>
    [Fact]
    public void A_constant_night_wets_every_plane_as_the_steady_profile_does()
    {
        Surface wall = Panel("wall", 1, "living", new([Sheet(0.012, 0.13, "lining") with { Material = Of(0.13) with { VapourResistanceFactor = Exactly(20) } }, Sheet(0.08, 0.036, "wool") with { Material = Of(0.036) with { VapourResistanceFactor = Exactly(1.5) } }, Sheet(0.003, 0.2, "board")]));
        Body body = BareRoom(10, wall).Cut();
        BuildUpAccount account = new(body, 0);
        double inside = 0.13, outside = 0.04, lining = 0.012 / 0.13, wool = 0.08 / 0.036, board = 0.003 / 0.2, total = inside + lining + wool + board + outside;
        double At(double passed) => 20 - 35 * passed / total;
        double[] facesC = [At(inside), At(inside + lining), At(inside + lining + wool), At(total - outside)];
        account.Take(8 * 3600, facesC, 1300, 150);
        account.Close(SeaPa);

        FineLayers fine = FineLayers.Of([inside, lining, wool, board, outside], [0, 0.24, 0.12, 0.15, 0]);
        GlaserResult night = GlaserNight.Profile(fine.ResistancesM2KPerW, fine.DiffusionThicknessesM, 20, -15, 1300, 150, Diffusion.PermeabilityKgPerMSPa(2.5, SeaPa));
        double[] atFaces = new double[4];
        account.AtFaces(atFaces);
        Assert.True(night.SettlesKgPerM2S > 0);
        Assert.Equal(1, account.HeldKgPerM2.Sum() / (night.SettlesKgPerM2S * 28_800), 0.01);
        Assert.Equal(account.HeldKgPerM2.Sum(), atFaces.Sum(), 1e-15);
        Assert.Equal(2, Array.IndexOf(atFaces, atFaces.Max()));
    }

    /// <summary>A wet skin under a warm sun dries inwards at δ0·(p_sat − p_i)/s_d, to the gram, and then stays dry; what it held is back in the room.</summary>
    [Fact]
    public void A_warm_skin_dries_inwards_until_nothing_is_left()
    {
        BuildUpAccount account = new(BareRoom(10, Wall()).Cut(), 0);
        account.HeldKgPerM2[^2] = 0.002;
        double[] facesC = [20, 20, 20, 20];
        double perHour = 2e-7 * Math.Pow(293.15, 0.81) / SeaPa * (Saturation(20) - 1200) / 1.55 * 3600, backKg = 0;
        for (int hour = 1; hour <= 20; hour++)
        {
            account.Take(3600, facesC, 1200, 1200);
            backKg -= account.Close(SeaPa).InKg;
            Assert.Equal(Math.Max(0, 0.002 - hour * perHour), account.HeldKgPerM2.Sum(), 5e-6); // what passes 1000 m of steel
        }
        Assert.Equal(0, account.HeldKgPerM2.Sum());
        Assert.InRange(backKg, 0.0039, 0.0041);
    }

    /// <summary>Room air behind the lining, 0.3 m³/m²h: all it can no longer hold stays at the cold side, and the same grams are gone from the room. The density is that of 10 °C.</summary>
    [Fact]
    public void Air_behind_the_lining_leaves_its_water_where_it_gets_to()
    {
        Body body = BareRoom(10, Wall(LiningFit.Slatted, 0.3)).Cut();
        HeatState held = HeatState.AtStart(body, 20);
        (held.LayerFacesC[0][1], held.LayerFacesC[0][2], held.LayerFacesC[0][3]) = (18, -5, -5.1);
        double ratio = RatioKgPerKg(1400), flow = 0.3 * 2 / 3600 * DryAirKg(1);
        DampDrive vapour = Outside(body, 1400);
        Drive drive = new(body) { OutsideAirKgPerS = { [0] = 100 } };
        DampStepper damp = new DampStepper(body, ratio, 20, SeaPa).Run(held, drive, vapour, 6, 600);
        Assert.Equal(1, damp.BuildUps[0].HeldKg / (flow * (ratio - RatioKgPerKg(Saturation(-5))) * 3600), 1e-4);
        Assert.Equal(0, damp.Ledger.ClosureKg, 1e-12);
        Assert.Equal(damp.BuildUps[0].HeldKg, 2 * damp.BuildUps[0].ByAirKgPerM2, 1e-15);
    }

    /// <summary>Frosty nights add up, mild days in between dry less than they brought; a week of warm days dries it all.</summary>
    [Fact]
    public void Nights_add_up_and_warm_days_dry()
    {
        Body body = BareRoom(10, Wall(LiningFit.Slatted, 0.1)).Cut();
        DampStepper damp = new(body, RatioKgPerKg(1200), 18, SeaPa);
        HeatState held = HeatState.AtStart(body, 18);
        Drive drive = new(body) { OutsideAirKgPerS = { [0] = 100 } };
        double last = 0;
        for (int night = 0; night < 5; night++)
        {
            Hours(12, 1200, -8);
            Hours(12, 500, 2);
            Assert.True(damp.Ledger.InBuildUpsKg > last + 1e-3, $"night {night}: {damp.Ledger.InBuildUpsKg} kg");
            last = damp.Ledger.InBuildUpsKg;
        }
        Hours(7 * 24, 1000, 28);
        Assert.Equal(0, damp.BuildUps[0].HeldKg);
        Assert.Equal(0, damp.Ledger.ClosureKg, 1e-9); // tonnes of air went through

        void Hours(int count, double roomPa, double skinC)
        {
            (held.LayerFacesC[0][1], held.LayerFacesC[0][2], held.LayerFacesC[0][3]) = (17, skinC, skinC);
            for (int hour = 0; hour < count; hour++)
            {
                damp.Run(held, drive, Outside(body, roomPa), 6, 600);
                damp.CloseHour();
            }
        }
    }
}
