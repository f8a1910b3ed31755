using Thermal.Air;
using Thermal.Envelope;
using Thermal.Zones;

namespace Thermal.Trips.Heat;

/// <summary>Steps a body through time; the caller drives it stage by stage.</summary>
/// <remarks>
/// Two-stage singly diagonal implicit Runge–Kutta scheme with γ = 1 − 1/√2: second order, stable at any step and damping at the fastest
/// (L-stable); the second stage is the end of the step. Within a stage the equations are linear: radiation is linearised at the faces of the
/// stage before, what water gives and takes comes from the caller. Chains are eliminated to their ends, rooms are one small dense system,
/// the heater's power is found from it so that the wanted operative temperature is met or its highest output given; it warms the air of the
/// living space. Nothing is allocated.
/// </remarks>
internal sealed class HeatStepper
{
    /// <summary>γ of the scheme.</summary>
    internal static readonly double StageFactor = 1 - 1 / Math.Sqrt(2);
    // The second stage starts from the step's start plus the first stage's change times this: (1 − γ)/γ.
    internal static readonly double DrawnOut = (1 - StageFactor) / StageFactor;

    private readonly Body body;
    private readonly ChainBank chains;
    private readonly StageFilms films;
    private readonly RoomSystem rooms;
    private readonly PartStage[] stages;
    private readonly StoreStage[] airs, furnishings;
    private readonly bool lumped;
    private readonly int living;
    private readonly double startC;

    /// <param name="body">The body.</param>
    /// <param name="startC">Temperature of everything at the start, °C, −60 to 60.</param>
    internal HeatStepper(Body body, double startC)
    {
        this.body = body;
        this.startC = Guard.InRange(startC, -60, 60, "°C");
        (chains, films, rooms) = (new(body.Parts, startC), new(body, startC), new(body.Rooms.Length));
        stages = new PartStage[body.Parts.Length];
        airs = [.. body.Rooms.Select(room => new StoreStage { CapacityJPerK = room.AirJPerK })];
        furnishings = [.. body.Rooms.Select(room => new StoreStage { CapacityJPerK = room.FurnishingJPerK })];
        (lumped, living) = (body.Films == FilmRule.Lumped, ZoneBalance.LivingIndex(body.Vehicle));
        State = HeatState.AtStart(body, startC);
        Ledger = new() { PartsOutJ = new double[body.Parts.Length], TiesOutJ = new double[body.Ties.Length], AirOutJ = new double[body.Rooms.Length] };
    }

    /// <summary>The state of the stage done last; after the second stage that of the step's end.</summary>
    internal HeatState State { get; }
    /// <summary>What has flowed since the start; complete after the second stage.</summary>
    internal HeatLedger Ledger { get; }
    /// <summary>Heat of the heater in the stage done last, W.</summary>
    internal double HeaterW { get; private set; }

    /// <summary>Share of the step that a stage counts for in what flows, fraction: 1 − γ and γ.</summary>
    internal static double WeightFraction(int stage) => stage == 0 ? 1 - StageFactor : StageFactor;

    /// <summary>Temperatures of the middles of the cells of a part, inside to outside, °C.</summary>
    internal ReadOnlySpan<double> CellsC(int part) => chains.OfPart(part);

    /// <summary>Does one stage: 0 reaches StageFactor of the step, 1 its end. Both with one step length.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Wind beyond 40 m/s, a temperature outside −90 to 70 °C, a step outside 1 to 86 400 s, or NaN.</exception>
    internal void Stage(int stage, double stepS, Drive drive)
    {
        double stageS = StageFactor * Guard.InRange(stepS, 1, 86_400, "s");
        Guard.InRange(drive.OutsideC, -90, 70, "°C");
        Guard.InRange(drive.SkyC, -150, 70, "°C");
        chains.Begin(stage, stageS, DrawnOut);
        films.Set(drive, State, HeaterW > 0 ? living : -1);
        rooms.Clear();
        for (int p = 0; p < stages.Length; p++) AddPart(p, drive);
        for (int z = 0; z < airs.Length; z++) AddRoom(z, stage, stageS, drive);
        AddTies(drive);
        AddPassages(drive);
        HeaterW = rooms.Solve(living, drive.WantedC, drive.HeaterHighestW);
        Take(drive);
        Count(WeightFraction(stage) * stepS, drive);
        if (stage == 1) Ledger.StoredJ = StoredJ();
    }

    private void AddPart(int p, Drive drive)
    {
        Part part = body.Parts[p];
        ref FaceSide inner = ref films.Inner[p];
        ref PartStage s = ref stages[p];
        (double innerW, double outerW) = chains.Condense(p);
        double outerWPerK = chains.OuterWPerK[p];
        innerW += inner.ToFaceW + drive.LatentW[p] - inner.AirWPerK * inner.StandsAboveFactor * drive.OutsideC;
        if (part.OtherZone < 0)
        {
            outerWPerK += films.Weather[p].FaceWPerK;
            outerW += films.Weather[p].FaceW;
        }
        else
        {
            ref FaceSide outer = ref films.Outer[p];
            outerWPerK += outer.AirWPerK + outer.RadiantWPerK;
            outerW += drive.SunUptakeW[p] + outer.ToFaceW - outer.AirWPerK * outer.StandsAboveFactor * drive.OutsideC;
        }
        s.Set(chains.InnerWPerK[p] + inner.AirWPerK + inner.RadiantWPerK + drive.LatentWPerK[p], chains.AcrossWPerK[p], outerWPerK, innerW, outerW);
        AddSide(inner, part.Zone, s.InnerKPerW, s.InnerC, drive.OutsideC);
        if (part.OtherZone < 0) return;
        AddSide(films.Outer[p], part.OtherZone, s.OuterKPerW, s.OuterC, drive.OutsideC);
        AddAcross(inner, part.Zone, films.Outer[p], part.OtherZone, s.AcrossKPerW);
        AddAcross(films.Outer[p], part.OtherZone, inner, part.Zone, s.AcrossKPerW);
    }

    /// <summary>A face in the balance of its room: what it takes from air and radiant node, its own temperature eliminated.</summary>
    private void AddSide(in FaceSide side, int room, double kelvinPerW, double freeC, double outsideC)
    {
        int air = RoomSystem.Air(room), radiant = RoomSystem.Radiant(room);
        double above = 1 + side.StandsAboveFactor, toAir = side.AirWPerK, toRadiant = side.RadiantWPerK;
        double airOwn = toAir + side.AirToRadiantWPerK - toAir * kelvinPerW * toAir, between = side.AirToRadiantWPerK + toAir * kelvinPerW * toRadiant;
        rooms.Add(air, air, airOwn * above);
        rooms.Add(air, radiant, -between);
        rooms.Add(radiant, air, -between * above);
        rooms.Add(radiant, radiant, toRadiant + side.AirToRadiantWPerK - toRadiant * kelvinPerW * toRadiant);
        // The free temperature already holds what the standing air does at the face; here is what it does at the front.
        double standing = side.StandsAboveFactor * outsideC;
        rooms.SourceW[air] += toAir * freeC + side.ToAirW + (toAir + side.AirToRadiantWPerK) * standing;
        rooms.SourceW[radiant] += toRadiant * freeC + side.ToRadiantW - side.AirToRadiantWPerK * standing;
    }

    private void AddAcross(in FaceSide from, int fromRoom, in FaceSide to, int toRoom, double kelvinPerW)
    {
        double above = 1 + to.StandsAboveFactor;
        rooms.Add(RoomSystem.Air(fromRoom), RoomSystem.Air(toRoom), -from.AirWPerK * kelvinPerW * to.AirWPerK * above);
        rooms.Add(RoomSystem.Air(fromRoom), RoomSystem.Radiant(toRoom), -from.AirWPerK * kelvinPerW * to.RadiantWPerK);
        rooms.Add(RoomSystem.Radiant(fromRoom), RoomSystem.Air(toRoom), -from.RadiantWPerK * kelvinPerW * to.AirWPerK * above);
        rooms.Add(RoomSystem.Radiant(fromRoom), RoomSystem.Radiant(toRoom), -from.RadiantWPerK * kelvinPerW * to.RadiantWPerK);
    }

    private void AddRoom(int z, int stage, double stageS, Drive drive)
    {
        int air = RoomSystem.Air(z), radiant = RoomSystem.Radiant(z);
        airs[z].Begin(stage, State.AirC[z], stageS, DrawnOut);
        furnishings[z].Begin(stage, State.FurnishingC[z], stageS, DrawnOut);
        rooms.Ground(air, airs[z].HeldWPerK, airs[z].FromC);
        rooms.Ground(air, drive.OutsideAirKgPerS[z] * MoistAir.DryAirSpecificHeatJPerKgK, drive.OutsideC);
        rooms.SourceW[air] += drive.ConvectiveW[z] + (lumped ? drive.RadiantW[z] : 0);
        if (lumped) rooms.Couple(air, radiant, 1);
        else rooms.SourceW[radiant] += drive.RadiantW[z];
        // Furnishings: a store with one face, eliminated like a part.
        double area = body.Rooms[z].FurnishingM2;
        double toAir = area * (lumped ? 1 / SurfaceResistance.InsideM2KPerW(FlowDirection.Horizontal) : films.ConvectiveWPerM2K(z, SurfaceResistance.InsideConvectiveWPerM2K(FlowDirection.Horizontal)));
        double toRadiant = lumped ? 0 : area * Longwave.CoefficientWPerM2K(SurfaceResistance.UsualEmissivityFraction, State.FurnishingC[z], State.RadiantC[z]);
        furnishings[z].Face(toAir, toRadiant, drive.SunInsideW[z] * area / body.Rooms[z].InnerM2);
        double kelvinPerW = furnishings[z].KelvinPerW, freeC = furnishings[z].FreeC, between = toAir * kelvinPerW * toRadiant;
        rooms.Add(air, air, toAir - toAir * kelvinPerW * toAir);
        rooms.Add(air, radiant, -between);
        rooms.Add(radiant, air, -between);
        rooms.Add(radiant, radiant, toRadiant - toRadiant * kelvinPerW * toRadiant);
        rooms.SourceW[air] += toAir * freeC;
        rooms.SourceW[radiant] += toRadiant * freeC;
    }

    private void AddTies(Drive drive)
    {
        for (int i = 0; i < body.Ties.Length; i++)
        {
            Tie tie = body.Ties[i];
            int air = RoomSystem.Air(tie.Zone), radiant = RoomSystem.Radiant(tie.Zone);
            double share = FromAir(tie), toAir = share * tie.LossWPerK, toRadiant = (1 - share) * tie.LossWPerK;
            rooms.SourceW[air] += drive.TieLatentW[i];
            if (tie.OtherZone >= 0)
            {
                rooms.Couple(air, RoomSystem.Air(tie.OtherZone), toAir);
                rooms.Couple(radiant, RoomSystem.Radiant(tie.OtherZone), toRadiant);
                continue;
            }
            double outsideC = TieOutsideC(tie, drive);
            rooms.Ground(air, toAir, outsideC);
            rooms.Ground(radiant, toRadiant, outsideC);
        }
    }

    private void AddPassages(Drive drive)
    {
        // A curtain's film is that of an upright face.
        double share = lumped ? 1 : SurfaceResistance.InsideConvectiveWPerM2K(FlowDirection.Horizontal) * SurfaceResistance.InsideM2KPerW(FlowDirection.Horizontal);
        for (int i = 0; i < body.Passages.Length; i++)
        {
            Passage passage = body.Passages[i];
            double closed = drive.LinkOpen[i] ? 0 : passage.ClosedWPerK;
            rooms.Couple(RoomSystem.Air(passage.From), RoomSystem.Air(passage.To), drive.LinkAirKgPerS[i] * MoistAir.DryAirSpecificHeatJPerKgK + share * closed);
            rooms.Couple(RoomSystem.Radiant(passage.From), RoomSystem.Radiant(passage.To), (1 - share) * closed);
        }
    }

    private double FromAir(Tie tie) => lumped ? 1 : tie.FromAirFraction;

    private double TieOutsideC(Tie tie, Drive drive) =>
        tie.SeesSky ? drive.OutsideC - films.TieSkyFactor * drive.SkyViewFraction[tie.Surface] * (drive.OutsideC - drive.SkyC) : drive.OutsideC;

    /// <summary>Takes the temperatures of rooms, faces, cells and ties out of the solved system.</summary>
    private void Take(Drive drive)
    {
        for (int z = 0; z < airs.Length; z++)
        {
            double airC = rooms.SourceW[RoomSystem.Air(z)], radiantC = rooms.SourceW[RoomSystem.Radiant(z)];
            if (!double.IsFinite(airC + radiantC)) throw new InvalidOperationException($"The air of {body.Vehicle.Zones[z].Name} has no temperature: something that acts on it is not a number.");
            (State.AirC[z], State.RadiantC[z], State.FurnishingC[z]) = (airC, radiantC, furnishings[z].FaceC(airC, radiantC));
        }
        for (int p = 0; p < stages.Length; p++)
        {
            Part part = body.Parts[p];
            double intoInner = ForcedW(films.Inner[p], part.Zone), intoOuter = part.OtherZone < 0 ? 0 : ForcedW(films.Outer[p], part.OtherZone);
            double innerC = stages[p].InnerC + stages[p].InnerKPerW * intoInner + stages[p].AcrossKPerW * intoOuter;
            double outerC = stages[p].OuterC + stages[p].AcrossKPerW * intoInner + stages[p].OuterKPerW * intoOuter;
            chains.Expand(p, innerC, outerC);
            films.Keep(p, innerC, outerC, drive, State);
            (State.InnerFaceC[p], State.OuterFaceC[p]) = (innerC, films.OuterFrontC[p]);
            ChainBank.FacesC(part.Chain, innerC, chains.OfPart(p), outerC, State.LayerFacesC[p]);
        }
        for (int i = 0; i < body.Ties.Length; i++)
        {
            Tie tie = body.Ties[i];
            if (tie.ColdestFactor is not { } factor) continue;
            double outer = tie.OtherZone >= 0 ? FeltC(tie, tie.OtherZone) : TieOutsideC(tie, drive);
            State.TieColdestC[i] = outer + factor * (FeltC(tie, tie.Zone) - outer);
        }
    }

    private double ForcedW(in FaceSide side, int room) => side.AirWPerK * (1 + side.StandsAboveFactor) * State.AirC[room] + side.RadiantWPerK * State.RadiantC[room];

    private double FeltC(Tie tie, int room) => FromAir(tie) * State.AirC[room] + (1 - FromAir(tie)) * State.RadiantC[room];

    private void Count(double weightS, Drive drive)
    {
        double sun = 0, latent = 0, given = 0;
        for (int p = 0; p < stages.Length; p++)
        {
            sun += drive.SunUptakeW[p];
            latent += drive.LatentW[p] - drive.LatentWPerK[p] * State.InnerFaceC[p];
            if (body.Parts[p].OtherZone < 0) Ledger.PartsOutJ[p] += weightS * films.Weather[p].OutW(films.OuterFrontC[p]);
        }
        for (int i = 0; i < body.Ties.Length; i++)
        {
            Tie tie = body.Ties[i];
            latent += drive.TieLatentW[i];
            if (tie.OtherZone < 0) Ledger.TiesOutJ[i] += weightS * tie.LossWPerK * (FeltC(tie, tie.Zone) - TieOutsideC(tie, drive));
        }
        for (int z = 0; z < airs.Length; z++)
        {
            sun += drive.SunInsideW[z];
            given += drive.ConvectiveW[z] + drive.RadiantW[z];
            Ledger.AirOutJ[z] += weightS * drive.OutsideAirKgPerS[z] * MoistAir.DryAirSpecificHeatJPerKgK * (State.AirC[z] - drive.OutsideC);
        }
        Ledger.HeaterJ += weightS * HeaterW;
        Ledger.GivenJ += weightS * given;
        Ledger.SunJ += weightS * sun;
        Ledger.LatentJ += weightS * latent;
    }

    private double StoredJ()
    {
        double sum = chains.HeldJ(startC);
        for (int z = 0; z < airs.Length; z++)
            sum += body.Rooms[z].AirJPerK * (State.AirC[z] - startC) + body.Rooms[z].FurnishingJPerK * (State.FurnishingC[z] - startC);
        return sum;
    }
}
