using Thermal.Air;
using Thermal.Envelope;
using Thermal.Trips.Heat;
using Thermal.Zones;

namespace Thermal.Trips.Damp;

/// <summary>Water in the air of the rooms, on their faces, in textiles and linings, and inside the build-ups, in step with the heat.</summary>
/// <remarks>
/// Same scheme and stages as <see cref="HeatStepper"/>; a stage is done after that of the heat, with its temperatures. Water settles where
/// the room's humidity ratio is above that of saturation at the face (over ice below 0 °C) and dries off while there is any; in no stage more dries
/// than is there. Carried water: h_c/c_p per unit of humidity ratio (Lewis factor 1); behind an inside cover and behind things only the air that gets
/// there. Air behind linings leaves its water on the plane it reaches, where the hourly account of the build-up holds it. What the account
/// draws from a room or gives to it flows in the hour that follows. Ribs, bolts and edges have no area: they take no water, their coldest
/// temperature tells whether they are wet. Outer faces of partitions take none either. What
/// the air of a room can no longer hold falls out of it as fog on the lowest face. Nothing is allocated in a stage.
/// </remarks>
internal sealed class DampStepper
{
    /// <summary>Time in which what the air can no longer hold falls out of it, s. Source: OURS, droplets settle or meet a face within minutes.</summary>
    private const double FogFallsS = 60;

    private readonly Body body;
    private readonly int[] fogFallsOn;
    private readonly double[] airKg, startOfStep, filmKgPerS, drawnKg, drawnKgPerS;
    private readonly double startRatio;
    private readonly WetPlaces places;
    private readonly RatioSystem rooms;
    private readonly FaceWater faces;
    private readonly Buffer[] buffers;
    private double airPressurePa;

    /// <param name="body">The body.</param>
    /// <param name="startRatioKgPerKg">Humidity ratio of all rooms at the start, kg/kg; textiles and linings are in balance with it, at most saturated.</param>
    /// <param name="startC">Temperature of everything at the start, °C.</param>
    /// <param name="airPressurePa">Air pressure at the start, Pa.</param>
    internal DampStepper(Body body, double startRatioKgPerKg, double startC, double airPressurePa)
    {
        (this.body, startRatio, this.airPressurePa) = (body, startRatioKgPerKg, airPressurePa);
        int n = body.Rooms.Length, parts = body.Parts.Length;
        // The air of the rooms weighs in the balance of water what it weighs in that of heat.
        airKg = [.. body.Rooms.Select(room => room.AirJPerK / MoistAir.DryAirSpecificHeatJPerKgK)];
        (startOfStep, RatioKgPerKg, drawnKg, drawnKgPerS, filmKgPerS) = (new double[n], new double[n], new double[n], new double[n], new double[parts]);
        Array.Fill(RatioKgPerKg, startRatioKgPerKg);
        (rooms, faces) = (new(n), new(body.Parts));
        BuildUps = [.. Enumerable.Range(0, parts).Where(p => body.Parts[p].Layers is not null).Select(p => new BuildUpAccount(body, p))];
        buffers = [.. Buffer.Of(body, airPressurePa)];
        foreach (Buffer buffer in buffers) buffer.Start(startRatioKgPerKg, startC, airPressurePa);
        places = new(parts + BuildUps.Length + n);
        fogFallsOn = [.. Enumerable.Range(0, n).Select(FogFallsOn)];
        for (int z = 0; z < n; z++)
        {
            places.Room[FogPlace(z)] = z;
            places.CarryKgPerS[FogPlace(z)] = fogFallsOn[z] < 0 ? 0 : airKg[z] / FogFallsS;
        }
        for (int p = 0; p < parts; p++) places.Room[p] = body.Parts[p].Zone;
        for (int i = 0; i < BuildUps.Length; i++)
        {
            places.Room[parts + i] = BuildUps[i].Room;
            places.CarryKgPerS[parts + i] = BuildUps[i].AirM3PerS * RoomDensityKgPerM3(BuildUps[i].Room);
        }
    }

    /// <summary>Humidity ratio of each room, kg/kg.</summary>
    internal double[] RatioKgPerKg { get; }
    /// <summary>Liquid water on the inner face of each part, kg.</summary>
    internal double[] LiquidKg => faces.LiquidKg;
    /// <summary>Frost on it, kg.</summary>
    internal double[] FrostKg => faces.FrostKg;
    /// <summary>All that settled on it, kg.</summary>
    internal double[] SettledKg => faces.SettledKg;
    /// <summary>All that ran off, kg.</summary>
    internal double[] RunOffKg => faces.RunOffKg;
    /// <summary>All frost that melted on it, kg.</summary>
    internal double[] MeltedKg => faces.MeltedKg;
    /// <summary>Accounts of the build-ups, in the order of their parts.</summary>
    internal BuildUpAccount[] BuildUps { get; }
    /// <summary>What has flowed since the start.</summary>
    internal DampLedger Ledger { get; } = new();
    /// <summary>Heat of water on faces that the heat model is given in the step that follows, J.</summary>
    internal double OwedJ => faces.OwedJ;

    /// <summary>Does one stage and sets the heat of water in the drive for the next.</summary>
    /// <param name="stage">0 or 1, after the same stage of the heat.</param>
    /// <param name="stepS">Length of the step, s.</param>
    /// <param name="heat">Temperatures of the stage.</param>
    /// <param name="drive">What acted in it; the heat of water there is what the heat was stepped with.</param>
    /// <param name="damp">Vapour.</param>
    internal void Stage(int stage, double stepS, HeatState heat, Drive drive, DampDrive damp)
    {
        double weightS = HeatStepper.WeightFraction(stage) * stepS, stageS = HeatStepper.StageFactor * stepS;
        airPressurePa = damp.AirPressurePa;
        rooms.Clear();
        SetRooms(stage, stageS, drive, damp);
        SetPlaces(weightS, heat, drive);
        foreach (Buffer buffer in buffers)
            buffer.Enter(stage, stageS, FilmOf(buffer), buffer.Part < 0 ? heat.FurnishingC[buffer.Room] : heat.InnerFaceC[buffer.Part], airPressurePa, rooms);
        rooms.Solve(places, RatioKgPerKg);
        foreach (Buffer buffer in buffers) buffer.Take(RatioKgPerKg[buffer.Room]);
        TakeWater(weightS, HeatStepper.WeightFraction(1 - stage) * stepS, stepS, heat, drive, damp);
        Count(weightS, drive, damp);
        if (stage == 1) EndStep();
    }

    /// <summary>Closes an hour, or what has passed of it: wetting and drying inside the build-ups with its mean temperatures and vapour.</summary>
    internal void CloseHour()
    {
        foreach (BuildUpAccount account in BuildUps)
        {
            (double inKg, double outKg) = account.Close(airPressurePa);
            drawnKg[account.Room] += inKg;
            if (account.OtherRoom >= 0) drawnKg[account.OtherRoom] -= outKg;
            else Ledger.ThroughSkinKg += outKg;
        }
        for (int z = 0; z < drawnKg.Length; z++) drawnKgPerS[z] = drawnKg[z] / 3600;
        Stand();
    }

    private void SetRooms(int stage, double stageS, Drive drive, DampDrive damp)
    {
        for (int z = 0; z < airKg.Length; z++)
        {
            if (stage == 0) startOfStep[z] = RatioKgPerKg[z];
            rooms.Exchange(z, airKg[z] / stageS, startOfStep[z] + HeatStepper.DrawnOut * (RatioKgPerKg[z] - startOfStep[z]) * stage);
            rooms.Exchange(z, drive.OutsideAirKgPerS[z], damp.OutsideRatioKgPerKg);
            rooms.Give(z, damp.SourceKgPerS[z] - drawnKgPerS[z]);
        }
        for (int i = 0; i < body.Passages.Length; i++) rooms.Couple(body.Passages[i].From, body.Passages[i].To, drive.LinkAirKgPerS[i]);
    }

    private int FogPlace(int room) => body.Parts.Length + BuildUps.Length + room;

    /// <summary>The face that lies lowest in a room, the largest of equals; -1 where no face looks into it from inside.</summary>
    private int FogFallsOn(int room) => Enumerable.Range(0, body.Parts.Length).Where(p => body.Parts[p].Zone == room)
        .OrderByDescending(p => body.Parts[p].TiltDeg).ThenByDescending(p => body.Parts[p].AreaM2).Prepend(-1).Take(2).Last();

    private void SetPlaces(double weightS, HeatState heat, Drive drive)
    {
        for (int z = 0; z < airKg.Length; z++)
            places.SaturatedKgPerKg[FogPlace(z)] = MoistAir.HumidityRatioUncheckedKgPerKg(SaturationPressure.OverWaterUncheckedPa(heat.AirC[z]), airPressurePa);
        int parts = body.Parts.Length;
        for (int p = 0; p < parts; p++)
        {
            places.CarryKgPerS[p] = filmKgPerS[p] = CarryKgPerS(body.Parts[p], drive.CoverOn[p], heat.AirC[body.Parts[p].Zone], heat.InnerFaceC[p]);
            Set(p, heat.InnerFaceC[p], (faces.LiquidKg[p] + faces.FrostKg[p]) / weightS);
        }
        for (int i = 0; i < BuildUps.Length; i++)
        {
            BuildUpAccount account = BuildUps[i];
            if (account.AirFace >= 0) Set(parts + i, heat.LayerFacesC[account.PartIndex][account.AirFace], account.HeldKgPerM2[account.AirNode] * account.AreaM2 / weightS);
        }

        void Set(int place, double atC, double driesAtMostKgPerS)
        {
            places.SaturatedKgPerKg[place] = MoistAir.HumidityRatioUncheckedKgPerKg(SaturationPressure.PairUncheckedPa(atC), airPressurePa);
            places.DriesAtMostKgPerS[place] = driesAtMostKgPerS;
        }
    }

    /// <summary>Water carried to a face per unit of humidity ratio, kg/s: as in the steady balance, with the convection of the moment.</summary>
    private double CarryKgPerS(Part part, int coverOn, double airC, double faceC)
    {
        double area = part.AreaM2 * part.Films.FaceFactor;
        double bare = area * StageFilms.ConvectiveWPerM2K(SurfaceResistance.DirectionOf(part.TiltDeg), airC, faceC) / MoistAir.DryAirSpecificHeatJPerKgK;
        double airM3PerM2H = coverOn >= 0 && part.Coverings[coverOn] is { Side: CoveringSide.Inside } cover ? cover.EdgeLeakM3PerM2H
            : part.Kind == SurfaceKind.Behind ? Shell.AirBehindThingsM3PerM2H : double.PositiveInfinity;
        double getsThere = airM3PerM2H / 3600 * RoomDensityKgPerM3(part.Zone) * part.AreaM2;
        return double.IsPositiveInfinity(getsThere) ? bare : bare * getsThere / (bare + getsThere);
    }

    private double RoomDensityKgPerM3(int room) => airKg[room] / body.Vehicle.Zones[room].VolumeM3;

    private double FilmOf(Buffer buffer) => buffer.Part >= 0 ? filmKgPerS[buffer.Part] * buffer.AreaM2 / body.Parts[buffer.Part].AreaM2
        : buffer.AreaM2 * SurfaceResistance.InsideConvectiveWPerM2K(FlowDirection.Horizontal) / MoistAir.DryAirSpecificHeatJPerKgK;

    private void TakeWater(double weightS, double nextWeightS, double stepS, HeatState heat, Drive drive, DampDrive damp)
    {
        int parts = body.Parts.Length;
        for (int p = 0; p < parts; p++)
        {
            int room = body.Parts[p].Zone;
            faces.Take(p, heat.InnerFaceC[p], places.RateKgPerS[p] + (fogFallsOn[room] == p ? places.RateKgPerS[FogPlace(room)] : 0), weightS, drive);
            faces.Forecast(p, heat.InnerFaceC[p], places, airPressurePa, stepS, nextWeightS, drive);
        }
        for (int i = 0; i < BuildUps.Length; i++)
        {
            BuildUpAccount account = BuildUps[i];
            if (account.AirFace >= 0) account.TakeByAir(places.RateKgPerS[parts + i] * weightS);
            account.Take(weightS, heat.LayerFacesC[account.PartIndex], VapourPa(account.Room), account.OtherRoom >= 0 ? VapourPa(account.OtherRoom) : damp.OutsidePa);
        }
    }

    private double VapourPa(int room) => airPressurePa * RatioKgPerKg[room] / (MoistAir.MolarMassRatio + RatioKgPerKg[room]);

    private void Count(double weightS, Drive drive, DampDrive damp)
    {
        for (int z = 0; z < airKg.Length; z++)
        {
            Ledger.SourceKg += weightS * damp.SourceKgPerS[z];
            Ledger.AiredKg += weightS * drive.OutsideAirKgPerS[z] * (RatioKgPerKg[z] - damp.OutsideRatioKgPerKg);
            drawnKg[z] -= weightS * drawnKgPerS[z];
        }
    }

    private void EndStep()
    {
        for (int p = 0; p < body.Parts.Length; p++) Ledger.RunOffKg += faces.RunOff(p);
        Stand();
    }

    /// <summary>Where the water is now. What an account holds but has not yet drawn from its room still counts as in the room.</summary>
    private void Stand()
    {
        Ledger.InAirKg = Ledger.OnFacesKg = Ledger.InTextilesKg = Ledger.InBuildUpsKg = 0;
        for (int z = 0; z < airKg.Length; z++)
        {
            Ledger.InAirKg += airKg[z] * (RatioKgPerKg[z] - startRatio);
            Ledger.InBuildUpsKg -= drawnKg[z];
        }
        for (int p = 0; p < body.Parts.Length; p++) Ledger.OnFacesKg += faces.LiquidKg[p] + faces.FrostKg[p];
        foreach (Buffer buffer in buffers) Ledger.InTextilesKg += buffer.GainKg;
        foreach (BuildUpAccount account in BuildUps) Ledger.InBuildUpsKg += account.HeldKg;
    }
}
