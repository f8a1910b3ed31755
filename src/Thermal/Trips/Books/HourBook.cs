using Thermal.Trips.Course;
using Thermal.Trips.Heat;
using Thermal.Zones;

namespace Thermal.Trips.Books;

/// <summary>Collects the hours of a trip, step by step, into room taken once.</summary>
internal sealed class HourBook
{
    private readonly TripCase asked;
    private readonly HourColumns columns;
    private readonly int[] panelParts;
    private readonly bool hasBattery;

    /// <param name="asked">Vehicle and journey.</param>
    /// <param name="body">Faces and rooms.</param>
    internal HourBook(TripCase asked, Body body)
    {
        this.asked = asked;
        HoursCount = (int)Math.Ceiling((asked.Trip.EndLocal - asked.Trip.StartLocal).TotalHours);
        columns = new(HoursCount, body, asked.Case.Tanks.Count);
        hasBattery = asked.Case.Power is not null;
        panelParts = [.. body.Vehicle.Surfaces.Select((_, index) => PartOf(body, index))];
    }

    /// <summary>Number of hours, a begun one counted.</summary>
    internal int HoursCount { get; }

    /// <summary>Coolest operative temperature of each hour with people in, °C; infinite with nobody in.</summary>
    internal double[] CoolestHomeC => columns.CoolestHomeC;

    /// <summary>Takes in a step of an hour.</summary>
    internal void Take(int hour, StepFacts step)
    {
        double s = step.StepS;
        columns.OutsideC[hour] += s * step.Outside.AirC;
        columns.SkyC[hour] += s * step.Outside.SkyC;
        columns.AirPastMPerS[hour] += s * step.Air.AirPastMPerS;
        columns.SunOnFlatWPerM2[hour] += s * step.SunOnFlatWPerM2;
        columns.WantedC[hour] += s * step.Doing.WantedC;
        columns.OperativeC.Take(hour, s, step.OperativeC);
        columns.CarbonDioxidePpm.Take(hour, s, step.CarbonDioxide.Ppm[step.Living]);
        columns.HeaterW[hour] += s * step.HeaterW;
        Board board = step.Board;
        columns.DrawnA[hour] += 3600 * board.DrawnAh;
        columns.ChargedA[hour] += 3600 * board.ChargedAh;
        columns.BatteryC.Take(hour, s, board.Battery?.BatteryC ?? 0);
        columns.Starts[hour] += board.Heater.StartsCount;
        columns.Fuel[hour] += board.Heater.FuelAmount + board.HotWaterFuelAmount;
        if (step.Doing.IsHome && !step.Doing.IsDriving) columns.CoolestHomeC[hour] = Math.Min(columns.CoolestHomeC[hour], step.OperativeC);
        TakeRooms(hour, s, step);
        TakeFaces(hour, s, step);
        for (int i = 0; i < board.Tanks.Length; i++)
        {
            columns.WaterC[i].Take(hour, s, board.Tanks[i].WaterC);
            columns.IceFraction[i].Take(hour, s, board.Tanks[i].IceFraction);
            columns.PadW[i][hour] += 3600 * board.Tanks[i].PadWh;
        }
    }

    /// <summary>Closes an hour: means, and what there is at its end.</summary>
    internal void Close(int hour, double seconds, int leg, StepFacts step)
    {
        columns.Close(hour, seconds);
        columns.Leg[hour] = leg;
        columns.ChargeFraction[hour] = step.Board.Battery?.ChargeFraction ?? 0;
        (columns.OnGlassG[hour], columns.FrostOnGlassG[hour], columns.OnLiningsG[hour]) = WetBook.Now(step);
        columns.InBuildUpsG[hour] = 1000 * step.Damp.Ledger.InBuildUpsKg;
    }

    /// <summary>The hours as a result.</summary>
    internal TripHours Hours() => new()
    {
        StartLocal = asked.Trip.StartLocal,
        Legs = columns.Leg,
        Rooms = [.. asked.Case.Vehicle.Zones.Select((zone, z) => new RoomHours(zone.Name, columns.AirC[z].Hours, columns.HumidityFraction[z].Hours, columns.VapourPa[z].Hours, columns.OutsideAirM3PerH[z], columns.ColdestC[z].Hours))],
        OutsideC = columns.OutsideC,
        SkyC = columns.SkyC,
        AirPastMPerS = columns.AirPastMPerS,
        SunOnFlatWPerM2 = columns.SunOnFlatWPerM2,
        WantedC = columns.WantedC,
        OperativeC = columns.OperativeC.Hours,
        CarbonDioxidePpm = columns.CarbonDioxidePpm.Hours,
        HeaterW = columns.HeaterW,
        StartsCount = columns.Starts,
        FuelAmount = columns.Fuel,
        DrawnA = columns.DrawnA,
        ChargedA = columns.ChargedA,
        ChargeFraction = hasBattery ? columns.ChargeFraction : [],
        BatteryC = hasBattery ? columns.BatteryC.Hours : [],
        OnGlassG = columns.OnGlassG,
        FrostOnGlassG = columns.FrostOnGlassG,
        OnLiningsG = columns.OnLiningsG,
        InBuildUpsG = columns.InBuildUpsG,
        Panels = [.. asked.Case.Vehicle.Surfaces.Select((surface, i) => new PanelHours(surface.Name, columns.InnerC[i].Hours, columns.OuterC[i].Hours))],
        Tanks = [.. asked.Case.Tanks.Select((tank, i) => new TankHours(tank.Name, columns.WaterC[i].Hours, columns.IceFraction[i].Hours, columns.PadW[i]))],
    };

    private void TakeRooms(int hour, double s, StepFacts step)
    {
        for (int z = 0; z < columns.AirC.Length; z++)
        {
            columns.AirC[z].Take(hour, s, step.Heat.State.AirC[z]);
            columns.HumidityFraction[z].Take(hour, s, ComfortBook.HumidityFraction(step, z));
            columns.VapourPa[z].Take(hour, s, ComfortBook.VapourPa(step, z));
            columns.OutsideAirM3PerH[z][hour] += s * step.Air.OutsideAirM3PerH[z];
            columns.ColdestC[z].Take(hour, s, Coldest(step, z));
        }
    }

    private void TakeFaces(int hour, double s, StepFacts step)
    {
        for (int i = 0; i < panelParts.Length; i++)
        {
            columns.InnerC[i].Take(hour, s, step.Heat.State.InnerFaceC[panelParts[i]]);
            columns.OuterC[i].Take(hour, s, step.Heat.State.OuterFaceC[panelParts[i]]);
        }
    }

    private static double Coldest(StepFacts step, int room)
    {
        double coldest = double.PositiveInfinity;
        for (int p = 0; p < step.Body.Parts.Length; p++)
            if (step.Body.Parts[p].Zone == room) coldest = Math.Min(coldest, step.Heat.State.InnerFaceC[p]);
        for (int i = 0; i < step.Body.Ties.Length; i++)
            if (step.Body.Ties[i].Zone == room && step.Heat.State.TieColdestC[i] < coldest) coldest = step.Heat.State.TieColdestC[i];
        return coldest;
    }

    /// <summary>The bare lining of a panel; where things cover it all, what stands behind them; where openings fill it, the first of them.</summary>
    private static int PartOf(Body body, int surface)
    {
        int found = Array.FindIndex(body.Parts, part => part.Surface == surface && part.Kind == SurfaceKind.Bare);
        if (found < 0) found = Array.FindIndex(body.Parts, part => part.Surface == surface && part.Opening < 0);
        return found >= 0 ? found : Array.FindIndex(body.Parts, part => part.Surface == surface);
    }
}
