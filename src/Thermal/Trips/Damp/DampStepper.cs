using Thermal.Air;
using Thermal.Envelope;
using Thermal.Trips.Heat;

namespace Thermal.Trips.Damp;

/// <summary>Water in the air of the rooms and on their faces, in step with the heat.</summary>
/// <remarks>
/// Done once a step, after the second stage of the heat, implicit in time. Water settles where the room's humidity ratio is above that of saturation at
/// the face (over ice below 0 °C), dries off while there is any; no more dries than is there. Textiles, ribs and the inside of build-ups are left out
/// so far. Carried water: h_c/c_p per unit of humidity ratio (Lewis factor 1); behind an inside cover only the air that gets past it.
/// </remarks>
internal sealed class DampStepper
{
    private const double WaterJPerKg = MoistAir.EvaporationHeatJPerKg;
    private const double RunOffFromKgPerM2 = 0.1;
    private const int MostRounds = 60;
    private const double SettledRatio = 1e-12;

    private readonly Body body;
    private readonly double[] airKg, before, flowKgPerS, inKgPerS, bareKgPerS, carryKgPerS, saturated;
    private readonly double startRatio;

    /// <param name="body">The body.</param>
    /// <param name="startRatioKgPerKg">Humidity ratio of all rooms at the start, kg/kg.</param>
    /// <param name="startC">Temperature of everything at the start, °C.</param>
    /// <param name="airPressurePa">Air pressure, Pa.</param>
    internal DampStepper(Body body, double startRatioKgPerKg, double startC, double airPressurePa)
    {
        (this.body, startRatio) = (body, startRatioKgPerKg);
        int rooms = body.Rooms.Length, parts = body.Parts.Length;
        double density = MoistAir.DryAirDensityKgPerM3(startC, 0, airPressurePa);
        airKg = [.. body.Vehicle.Zones.Select(zone => zone.VolumeM3 * density)];
        bareKgPerS = [.. body.Parts.Select(part => SurfaceResistance.InsideConvectiveWPerM2K(SurfaceResistance.DirectionOf(part.TiltDeg)) * part.AreaM2 / MoistAir.DryAirSpecificHeatJPerKgK)];
        (before, flowKgPerS, inKgPerS, RatioKgPerKg) = (new double[rooms], new double[rooms], new double[rooms], new double[rooms]);
        (carryKgPerS, saturated, LiquidKg, FrostKg) = (new double[parts], new double[parts], new double[parts], new double[parts]);
        (SettledKg, RunOffKg, MeltedKg) = (new double[parts], new double[parts], new double[parts]);
        Array.Fill(RatioKgPerKg, startRatioKgPerKg);
    }

    /// <summary>Does one stage and sets the heat of water in the drive for the next.</summary>
    internal void Stage(int stage, double stepS, HeatState heat, Drive drive, DampDrive damp)
    {
        if (stage == 0) return;
        Prepare(heat, drive, damp);
        RatioKgPerKg.CopyTo(before, 0);
        for (int round = 0; round < MostRounds && Round(stepS, drive, damp) > SettledRatio; round++) { }
        Array.Clear(inKgPerS);
        Settle(stepS, heat, drive);
        Balance(stepS, drive, damp);
        Ledger.InAirKg = Ledger.OnFacesKg = 0;
        for (int z = 0; z < airKg.Length; z++) Ledger.InAirKg += airKg[z] * (RatioKgPerKg[z] - startRatio);
        for (int p = 0; p < LiquidKg.Length; p++) Ledger.OnFacesKg += LiquidKg[p] + FrostKg[p];
    }


    /// <summary>Humidity ratio of each room, kg/kg.</summary>
    internal double[] RatioKgPerKg { get; }
    /// <summary>Liquid water on the inner face of each part, kg.</summary>
    internal double[] LiquidKg { get; }
    /// <summary>Frost on it, kg.</summary>
    internal double[] FrostKg { get; }
    /// <summary>All that settled on it, kg.</summary>
    internal double[] SettledKg { get; }
    /// <summary>All that ran off, kg.</summary>
    internal double[] RunOffKg { get; }
    /// <summary>All frost that melted on it, kg.</summary>
    internal double[] MeltedKg { get; }
    /// <summary>What has flowed since the start.</summary>
    internal DampLedger Ledger { get; } = new();

    private void Prepare(HeatState heat, Drive drive, DampDrive damp)
    {
        for (int p = 0; p < body.Parts.Length; p++)
        {
            Part part = body.Parts[p];
            Covering? cover = drive.CoverOn[p] >= 0 ? part.Coverings[drive.CoverOn[p]] : null;
            carryKgPerS[p] = cover is { Side: CoveringSide.Inside } ? cover.EdgeLeakM3PerM2H * part.AreaM2 / 3600 * airKg[part.Zone] / body.Vehicle.Zones[part.Zone].VolumeM3 : bareKgPerS[p];
            saturated[p] = MoistAir.HumidityRatioUncheckedKgPerKg(SaturationPressure.PairUncheckedPa(heat.InnerFaceC[p]), damp.AirPressurePa);
        }
    }

    /// <summary>One round over rooms and faces: what settles or dries off at each face, then each room with that; returns the largest change.</summary>
    private double Round(double stepS, Drive drive, DampDrive damp)
    {
        for (int z = 0; z < airKg.Length; z++)
        {
            flowKgPerS[z] = airKg[z] / stepS + drive.OutsideAirKgPerS[z];
            inKgPerS[z] = airKg[z] / stepS * before[z] + drive.OutsideAirKgPerS[z] * damp.OutsideRatioKgPerKg + damp.SourceKgPerS[z];
        }
        for (int i = 0; i < body.Passages.Length; i++)
        {
            (int from, int to) = (body.Passages[i].From, body.Passages[i].To);
            flowKgPerS[from] += drive.LinkAirKgPerS[i];
            flowKgPerS[to] += drive.LinkAirKgPerS[i];
            inKgPerS[from] += drive.LinkAirKgPerS[i] * RatioKgPerKg[to];
            inKgPerS[to] += drive.LinkAirKgPerS[i] * RatioKgPerKg[from];
        }
        for (int p = 0; p < LiquidKg.Length; p++)
        {
            int room = body.Parts[p].Zone;
            double heldKg = LiquidKg[p] + FrostKg[p], wantedKg = carryKgPerS[p] * (RatioKgPerKg[room] - saturated[p]) * stepS;
            if (wantedKg < -heldKg) inKgPerS[room] += heldKg / stepS;
            else if (wantedKg > 0 || heldKg > 0)
            {
                flowKgPerS[room] += carryKgPerS[p];
                inKgPerS[room] += carryKgPerS[p] * saturated[p];
            }
        }
        double change = 0;
        for (int z = 0; z < airKg.Length; z++)
        {
            double ratio = inKgPerS[z] / flowKgPerS[z];
            change = Math.Max(change, Math.Abs(ratio - RatioKgPerKg[z]));
            RatioKgPerKg[z] = ratio;
        }
        return change;
    }

    /// <summary>The air of each room from what really flowed, so that what the rounds left open is not lost.</summary>
    private void Balance(double stepS, Drive drive, DampDrive damp)
    {
        for (int i = 0; i < body.Passages.Length; i++)
        {
            (int from, int to) = (body.Passages[i].From, body.Passages[i].To);
            double kgPerS = drive.LinkAirKgPerS[i] * (RatioKgPerKg[to] - RatioKgPerKg[from]);
            inKgPerS[from] += kgPerS;
            inKgPerS[to] -= kgPerS;
        }
        for (int z = 0; z < airKg.Length; z++)
        {
            double airedKgPerS = drive.OutsideAirKgPerS[z] * (RatioKgPerKg[z] - damp.OutsideRatioKgPerKg);
            Ledger.SourceKg += damp.SourceKgPerS[z] * stepS;
            Ledger.AiredKg += airedKgPerS * stepS;
            RatioKgPerKg[z] = before[z] + (inKgPerS[z] + damp.SourceKgPerS[z] - airedKgPerS) * stepS / airKg[z];
        }
    }

    private void Settle(double stepS, HeatState heat, Drive drive)
    {
        for (int p = 0; p < LiquidKg.Length; p++)
        {
            double heldKg = LiquidKg[p] + FrostKg[p], movedKg = carryKgPerS[p] * (RatioKgPerKg[body.Parts[p].Zone] - saturated[p]) * stepS;
            if (movedKg < 0) movedKg = Math.Max(movedKg, -heldKg);
            drive.LatentW[p] = movedKg * WaterJPerKg / stepS;
            inKgPerS[body.Parts[p].Zone] -= movedKg / stepS;
            SettledKg[p] += Math.Max(0, movedKg);
            double kg = heldKg + movedKg, limitKg = RunOffFromKgPerM2 * body.Parts[p].AreaM2;
            bool freezes = heat.InnerFaceC[p] < 0;
            if (!freezes) MeltedKg[p] += FrostKg[p];
            double ranOff = freezes ? 0 : Math.Max(0, kg - limitKg);
            RunOffKg[p] += ranOff;
            Ledger.RunOffKg += ranOff;
            (LiquidKg[p], FrostKg[p]) = freezes ? (0.0, kg) : (kg - ranOff, 0.0);
        }
    }
}
