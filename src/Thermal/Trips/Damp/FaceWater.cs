using Thermal.Air;
using Thermal.Envelope;
using Thermal.Trips.Heat;
using Thermal.Zones;

namespace Thermal.Trips.Damp;

/// <summary>Water and frost on the inner faces of all parts, and the heat they give and take there.</summary>
/// <remarks>
/// Settling gives its heat to the face and drying takes it: 2.501 MJ/kg, with frost 0.334 MJ/kg more. The heat of a stage is found before its water,
/// so it is forecast: what it was in the stage before, falling with the warmth of the face as saturation there says (implicit, hence stable at any
/// step). Frost on a face above 0 °C melts and water on one below freezes by the heat that a conductance to 0 °C carries; so much changes as that heat
/// allows. What forecast and water differ by is given in the step that follows: heat and water never drift apart.
/// Source: ASHRAE-F, chapter 1, heats of evaporation and fusion; the scheme is our own.
/// </remarks>
internal sealed class FaceWater
{
    /// <summary>Heat of melting, J/kg.</summary>
    internal const double MeltingJPerKg = 334_000;
    /// <summary>Conductance between a face that melts or freezes and 0 °C, W/(m²·K). Source: OURS: at 100 W/m² it stays within 0.2 K of 0 °C.</summary>
    internal const double MeltingWPerM2K = 500;

    // A little more than what is there, so that the last of it goes too where the face cools by it; what is too much is given back.
    private const double LastGoesFactor = 1.25;

    private readonly Part[] parts;
    private readonly double[] pinWPerK, limitKg, trueJ, givenJ;

    internal FaceWater(Part[] parts)
    {
        this.parts = parts;
        (pinWPerK, trueJ, givenJ) = (New(), New(), New());
        limitKg = [.. parts.Select(part => StaysOnKgPerM2(part) * part.AreaM2)];
        (LiquidKg, FrostKg, SettledKg, RunOffKg, MeltedKg) = (New(), New(), New(), New(), New());

        double[] New() => new double[parts.Length];
    }

    internal double[] LiquidKg { get; }
    internal double[] FrostKg { get; }
    internal double[] SettledKg { get; }
    internal double[] RunOffKg { get; }
    internal double[] MeltedKg { get; }

    /// <summary>Heat of water not yet given to the faces, J.</summary>
    internal double OwedJ
    {
        get
        {
            double sum = 0;
            for (int p = 0; p < parts.Length; p++) sum += trueJ[p] - givenJ[p];
            return sum;
        }
    }

    /// <summary>Water that stays on a face before more runs off or drips, kg/m².</summary>
    /// <remarks>
    /// Upright glass, metal, plastic 0.1; leaning inwards or overhead 0.2, from which it drips; wood, wool and felt 0.25, soaked; a floor lets nothing run off.
    /// Source: OURS, within 50 to 250 g/m² on upright faces (from memory).
    /// </remarks>
    internal static double StaysOnKgPerM2(Part part) => SurfaceResistance.DirectionOf(part.TiltDeg) switch
    {
        FlowDirection.Down => double.PositiveInfinity,
        _ when part.Kind is SurfaceKind.Bare or SurfaceKind.Behind or SurfaceKind.Leaf && part.Layers?.Layers[0] is SolidLayer { Material.HoldsWater: true } => 0.25,
        FlowDirection.Up => 0.2,
        _ => 0.1,
    };

    /// <summary>Takes in what settled or dried off in a stage, and melts or freezes by the heat that the faces gave for it.</summary>
    internal void Take(int p, double faceC, double rateKgPerS, double weightS, Drive drive)
    {
        bool cold = faceC < 0;
        givenJ[p] += weightS * (drive.LatentW[p] - drive.LatentWPerK[p] * faceC);
        double kg = rateKgPerS * weightS;
        if (kg >= 0)
        {
            SettledKg[p] += kg;
            if (cold) FrostKg[p] += kg;
            else LiquidKg[p] += kg;
            trueJ[p] += kg * (MoistAir.EvaporationHeatJPerKg + (cold ? MeltingJPerKg : 0));
        }
        else Dry(p, cold, -kg);
        double meltsKg = pinWPerK[p] * faceC * weightS / MeltingJPerKg;
        meltsKg = meltsKg > 0 ? Math.Min(meltsKg, FrostKg[p]) : Math.Max(meltsKg, -LiquidKg[p]);
        FrostKg[p] -= meltsKg;
        LiquidKg[p] += meltsKg;
        trueJ[p] -= meltsKg * MeltingJPerKg;
        MeltedKg[p] += Math.Max(0, meltsKg);
    }

    /// <summary>Forecasts the heat of water for the next stage.</summary>
    /// <param name="p">Part.</param>
    /// <param name="faceC">Its face now, °C.</param>
    /// <param name="places">What settles now.</param>
    /// <param name="airPressurePa">Air pressure, Pa.</param>
    /// <param name="stepS">Length of a step, s: what is still owed is given within one.</param>
    /// <param name="nextWeightS">Weight of the next stage, s: no more heat is drawn in it for melting than melts all there is.</param>
    /// <param name="drive">Where to write it.</param>
    internal void Forecast(int p, double faceC, WetPlaces places, double airPressurePa, double stepS, double nextWeightS, Drive drive)
    {
        bool cold = faceC < 0;
        double heatJPerKg = MoistAir.EvaporationHeatJPerKg + (cold ? MeltingJPerKg : 0);
        double perK = places.Follows[p] ? heatJPerKg * places.CarryKgPerS[p] * SlopePerK(places.SaturatedKgPerKg[p], faceC, airPressurePa) : 0;
        double changesKg = faceC > 0 ? FrostKg[p] : LiquidKg[p];
        pinWPerK[p] = changesKg > 0 && faceC != 0 ? Math.Min(MeltingWPerM2K * parts[p].AreaM2, LastGoesFactor * MeltingJPerKg * changesKg / (nextWeightS * Math.Abs(faceC))) : 0;
        drive.LatentW[p] = heatJPerKg * places.RateKgPerS[p] + perK * faceC + (trueJ[p] - givenJ[p]) / stepS;
        drive.LatentWPerK[p] = perK + pinWPerK[p];
    }

    /// <summary>Lets what does not stay on a face run off; returns it, kg.</summary>
    internal double RunOff(int p)
    {
        double kg = LiquidKg[p] - limitKg[p];
        if (!(kg > 0)) return 0;
        LiquidKg[p] = limitKg[p];
        RunOffKg[p] += kg;
        return kg;
    }

    private void Dry(int p, bool cold, double kg)
    {
        double frostKg = cold ? Math.Min(kg, FrostKg[p]) : Math.Max(0, kg - LiquidKg[p]);
        // All there is may leave: what rounding asks for beyond it is not there.
        FrostKg[p] = Math.Max(0, FrostKg[p] - frostKg);
        LiquidKg[p] = Math.Max(0, LiquidKg[p] - (kg - frostKg));
        trueJ[p] -= kg * MoistAir.EvaporationHeatJPerKg + frostKg * MeltingJPerKg;
    }

    /// <summary>How fast the humidity ratio at saturation rises, kg/kg per K: derivative of the saturation curve in use.</summary>
    private static double SlopePerK(double saturatedKgPerKg, double faceC, double airPressurePa)
    {
        double offsetC = faceC < 0 ? SaturationPressure.IceOffsetC : SaturationPressure.WaterOffsetC, factor = faceC < 0 ? SaturationPressure.IceFactor : SaturationPressure.WaterFactor;
        double vapourShare = saturatedKgPerKg / (MoistAir.MolarMassRatio + saturatedKgPerKg);
        return saturatedKgPerKg / (1 - vapourShare) * factor * offsetC / ((offsetC + faceC) * (offsetC + faceC));
    }
}
