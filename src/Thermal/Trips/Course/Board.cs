using Thermal.Air;
using Thermal.Assessments;
using Thermal.Heating;
using Thermal.Materials;
using Thermal.Power;
using Thermal.Trips.Heat;
using Thermal.Trips.Living;
using Thermal.Trips.Outdoors;
using Thermal.Water;
using Thermal.Zones;

namespace Thermal.Trips.Course;

/// <summary>Heater, battery, tanks and pipes of a trip, step by step after the heat.</summary>
/// <remarks>
/// Whether there is current is known from the step before; heat of tanks and battery goes to their rooms in the step after. An electric heater and
/// an electric cooker run from shore; off shore the cooker draws on the battery and the heater is off. Tanks stay as full as they are.
/// </remarks>
internal sealed class Board
{
    private readonly Case asked;
    private readonly HeaterRun heater;
    private readonly BatteryRun? battery;
    private readonly int living, batteryRoom;
    private readonly int[] tankRooms, pipeRooms, loadRooms;
    private readonly double[] loadsW, lateJ;
    private double lateS = 1;

    /// <param name="asked">The vehicle with all that is fitted.</param>
    /// <param name="trip">How full and how cold it starts.</param>
    /// <param name="body">Rooms.</param>
    /// <param name="startC">Temperature of everything at the start, °C.</param>
    internal Board(Case asked, Trip trip, Body body, double startC)
    {
        this.asked = asked;
        living = ZoneBalance.LivingIndex(asked.Vehicle);
        heater = new(asked.Heater, HeatingAnswers.QuickJPerK(asked, Atmosphere.PressurePa(trip.Legs[0].Weather.AltitudeM)));
        Loads = asked.Power?.Loads ?? [];
        if (asked.Power is { } power) battery = new(power.Battery, startC, trip.StartChargeFraction);
        batteryRoom = RoomOf(asked.Power?.Battery.Zone, "the battery");
        Tanks = [.. asked.Tanks.Select(tank => new TankRun(tank, trip.WaterStartC))];
        Pipes = [.. asked.Pipes.Select(pipe => new PipeRun(pipe, trip.WaterStartC))];
        tankRooms = [.. asked.Tanks.Select(tank => RoomOf(tank.Zone, tank.Name))];
        pipeRooms = [.. asked.Pipes.Select(pipe => RoomOf(pipe.Zone, pipe.Name))];
        loadRooms = [.. Loads.Select(load => RoomOf(load.Zone, load.Name))];
        (loadsW, lateJ) = (new double[Loads.Count], new double[asked.Vehicle.Zones.Count]);
        DrawsAh = new double[Loads.Count + OtherDraws.Length];
    }

    /// <summary>What draws current beside the loads, after them in <see cref="DrawsAh"/>.</summary>
    internal static readonly string[] OtherDraws = ["heater", "roof fan", "tank pads", "battery pad", "cooker"];

    /// <summary>Loads, in the order of the case.</summary>
    internal IReadOnlyList<Load> Loads { get; }
    /// <summary>Tanks.</summary>
    internal TankRun[] Tanks { get; }
    /// <summary>Pipes.</summary>
    internal PipeRun[] Pipes { get; }
    /// <summary>The battery; null without one.</summary>
    internal BatteryRun? Battery => battery;
    /// <summary>The heater.</summary>
    internal HeaterRun Heater => heater;
    /// <summary>Drawn so far by each load and by each of the others, Ah.</summary>
    internal double[] DrawsAh { get; }
    /// <summary>Drawn in the last step by everything, Ah.</summary>
    internal double DrawnAh { get; private set; }
    /// <summary>Charged in the last step, Ah.</summary>
    internal double ChargedAh { get; private set; }
    /// <summary>Fuel burnt in the last step for hot water, in the heater's unit.</summary>
    internal double HotWaterFuelAmount { get; private set; }
    /// <summary>Fuel burnt in the last step to cook, in the cooker's unit.</summary>
    internal double CookingFuelAmount { get; private set; }
    /// <summary>Highest and lowest heat of the heater on this leg, without asking for current, W.</summary>
    internal double HighestW { get; private set; }
    /// <summary>Lowest.</summary>
    internal double LowestW { get; private set; }

    private bool NeedsCurrent => asked.Heater.BurnsAir && asked.Heater.ElectricHighestW.Value > 0;

    /// <summary>True where fans, pads and loads have current.</summary>
    internal bool HasCurrent(Leg leg) => battery is null || !battery.IsFlat || leg.ShoreW is not null && asked.Power!.ShoreChargerA > 0;

    /// <summary>Fills in what the heater can give, and the heat of loads, tanks and battery.</summary>
    /// <returns>Heat of loads, then of tanks and battery, W.</returns>
    internal (double LoadsW, double StoresW) Fill(Leg leg, TripHabits habits, double clockH, double hours, HeatState heat, Drive drive)
    {
        double factor = Derating.Factor(asked.Heater, leg.Weather.AltitudeM);
        (HighestW, LowestW) = (asked.Heater.HighestW * factor, asked.Heater.LowestW * factor);
        if (!asked.Heater.BurnsAir) HighestW = Math.Min(HighestW, leg.ShoreW ?? 0);
        bool hasCurrent = HasCurrent(leg);
        drive.HeaterHighestW = NeedsCurrent && !hasCurrent ? 0 : HighestW;
        double loads = 0, stores = 0;
        for (int i = 0; i < loadsW.Length; i++)
        {
            int room = loadRooms[i];
            loadsW[i] = LoadPower.MeanW(Loads[i], clockH, hours, habits.BedtimeH, room < 0 ? drive.OutsideC : heat.AirC[room]);
            if (room < 0 || !hasCurrent) continue;
            drive.ConvectiveW[room] += loadsW[i];
            loads += loadsW[i];
        }
        for (int z = 0; z < lateJ.Length; z++)
        {
            drive.ConvectiveW[z] += lateJ[z] / lateS;
            stores += lateJ[z] / lateS;
        }
        return (loads, stores);
    }

    /// <summary>Goes through one step after the heat.</summary>
    internal void Step(double stepS, Leg leg, Doings doing, OutdoorsNow outside, HeatState heat, double heaterW, bool fanOn, double sunW)
    {
        bool hasCurrent = HasCurrent(leg);
        Array.Clear(lateJ);
        lateS = stepS;
        double padsW = 0;
        for (int i = 0; i < Tanks.Length; i++) padsW += StepTank(i, stepS, leg, outside, heat, hasCurrent);
        for (int i = 0; i < Pipes.Length; i++) Pipes[i].Step(stepS, pipeRooms[i] < 0 ? outside.AirC : heat.AirC[pipeRooms[i]], leg.SpeedMPerS);
        heater.Step(stepS, heaterW, LowestW, HighestW);
        HotWaterFuelAmount = HeaterFuel.FuelAmount(asked.Heater, ShowerWater.HeatKWh(doing.WarmWaterLPerS * stepS, ShowerWater.ColdC));
        CookingFuelAmount = doing.FlameW * stepS / 3.6e6 / FuelData.Of(asked.Habits.CookerFuel ?? Fuel.Electricity).NetHeatPerUnitKWh;
        double fanW = fanOn ? asked.Fan!.CurrentA * Power.Battery.NominalV : 0, heaterElectricW = heater.ElectricWh * 3600 / stepS;
        double cookerW = asked.Habits.CookerFuel is null ? doing.FlameW : 0, fromShoreW = cookerW + (asked.Heater.BurnsAir ? 0 : heaterW);
        double cookerDrawW = leg.ShoreW is null ? cookerW : 0, loadW = fanW + heaterElectricW + padsW + cookerDrawW;
        foreach (double load in loadsW) loadW += load;
        StepBattery(stepS, leg, outside, heat, loadW, leg.ShoreW is { } site ? Math.Max(0, site - fromShoreW) : null, sunW);
        double servedAhPerW = (battery?.ServedFraction ?? 1) * stepS / 3600 / Power.Battery.NominalV;
        for (int i = 0; i < loadsW.Length; i++) DrawsAh[i] += loadsW[i] * servedAhPerW;
        int next = loadsW.Length;
        DrawsAh[next] += heaterElectricW * servedAhPerW;
        DrawsAh[next + 1] += fanW * servedAhPerW;
        DrawsAh[next + 2] += padsW * servedAhPerW;
        DrawsAh[next + 3] += (battery?.PadWh ?? 0) / Power.Battery.NominalV;
        DrawsAh[next + 4] += cookerDrawW * servedAhPerW;
    }

    private double StepTank(int i, double stepS, Leg leg, OutdoorsNow outside, HeatState heat, bool hasCurrent)
    {
        int room = tankRooms[i];
        Tanks[i].Step(stepS, room < 0 ? outside.AirC : heat.AirC[room], leg.SpeedMPerS, heat.AirC[living], outside.PressurePa, hasCurrent);
        if (room >= 0) lateJ[room] += Tanks[i].GivenJ;
        lateJ[living] -= Tanks[i].FromWarmAirJ;
        return Tanks[i].PadWh * 3600 / stepS;
    }

    private void StepBattery(double stepS, Leg leg, OutdoorsNow outside, HeatState heat, double loadW, double? shoreW, double sunW)
    {
        if (battery is null)
        {
            (DrawnAh, ChargedAh) = (loadW * stepS / 3600 / Power.Battery.NominalV, 0);
            return;
        }
        battery.Step(stepS, loadW, ChargeOffer.Of(asked.Power!, sunW, shoreW, leg.IsDriving), batteryRoom < 0 ? outside.AirC : heat.AirC[batteryRoom], leg.SpeedMPerS);
        if (batteryRoom >= 0) lateJ[batteryRoom] += battery.GivenJ;
        DrawnAh = battery.DrawnAh + battery.PadWh / Power.Battery.NominalV;
        ChargedAh = battery.SunAh + battery.ShoreAh + battery.AlternatorAh;
    }

    private int RoomOf(string? zone, string what)
    {
        if (zone is null) return -1;
        for (int i = 0; i < asked.Vehicle.Zones.Count; i++)
            if (asked.Vehicle.Zones[i].Name == zone) return i;
        throw new ArgumentException($"There is no zone called {zone}, where {what} should stand.", nameof(zone));
    }
}
