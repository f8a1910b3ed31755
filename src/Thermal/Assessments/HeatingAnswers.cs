using Thermal.Air;
using Thermal.Climates;
using Thermal.Envelope;
using Thermal.Heating;
using Thermal.Materials;
using Thermal.People;
using Thermal.Power;
using Thermal.Water;
using Thermal.Zones;

namespace Thermal.Assessments;

/// <summary>Makes the <see cref="HeatingAnswer"/> and the tanks of the balances of both nights.</summary>
internal static class HeatingAnswers
{
    /// <summary>Exchange of furniture and linings with the air, W/(m²·K): the usual inside film. Source: ISO-6946, table 7.</summary>
    private const double MassFilmWPerM2K = 1 / 0.13;
    /// <summary>Faces of furniture per area of floor. Source: OURS.</summary>
    private const double FurnitureFacesRatio = 2;
    /// <summary>Share of the slow store that follows the thermostat within a cycle, fraction. Source: OURS.</summary>
    private const double QuickShareFraction = 0.25;
    private const double ChamberC = 20;

    internal static HeatingAnswer Of(CaseRuns cases, NightRuns coldRuns, NightRuns mildRuns)
    {
        Case asked = cases.Usual, least = cases.LeastHeat, most = cases.MostHeat;
        double factor = Derating.Factor(asked.Heater, asked.ColdNight.AltitudeM), highest = asked.Heater.HighestW * factor, lowest = asked.Heater.LowestW * factor;
        ZoneState cold = coldRuns.Usual, coldLeast = coldRuns.LeastHeat, coldMost = coldRuns.MostHeat, mild = mildRuns.Usual;
        TwoNode node = Node(asked, cold), nodeLeast = Node(least, coldLeast), nodeMost = Node(most, coldMost);
        double difference = Difference(cold);
        Between steady = coldRuns.HeaterW;
        Between warmUp = Between.Spanning(nodeLeast.WarmUpW(difference, asked.WarmUpH), node.WarmUpW(difference, asked.WarmUpH), nodeMost.WarmUpW(difference, asked.WarmUpH));
        Between need = new(Math.Max(steady.Low, warmUp.Low), Math.Max(steady.Value, warmUp.Value), Math.Max(steady.High, warmUp.High));
        return new()
        {
            NeedW = need,
            SteadyW = steady,
            WarmUpW = warmUp,
            WarmUpH = node.WarmUpH(difference, highest),
            HighestOutputW = highest,
            LowestOutputW = lowest,
            AltitudeFactor = factor,
            Cold = OneNight(asked, steady, cold, node, highest, lowest),
            Mild = OneNight(asked, mildRuns.HeaterW, mild, Node(asked, mild), highest, lowest),
            Suggested = HeaterLibrary.All.Where(heater => heater.Fuel == asked.Heater.Fuel && heater.HighestW * factor >= need.Value).MinBy(heater => heater.HighestW),
            DawnHeaterOffC = Between.Spanning(DawnWith(most, least, coldMost), Dawn(asked, cold, node), DawnWith(least, most, coldLeast)),
            Grades = Grades(asked),
            HotWater = HotWaterOf(asked),
        };
    }

    internal static IReadOnlyList<TankAnswer> Tanks(Case asked, ZoneState cold) => [.. asked.Tanks.Select(tank =>
    {
        int zone = tank.Zone is null ? -1 : DampAnswers.IndexOf(asked.Vehicle, tank.Zone);
        double air = zone < 0 ? cold.Inputs.OutsideC : cold.TemperaturesC[zone];
        double film = zone < 0 ? SurfaceResistance.ShelteredRoadM2KPerW : SurfaceResistance.InsideM2KPerW(FlowDirection.Horizontal);
        double loss = tank.AreaM2 / (tank.InsulationM2KPerW + film), hold = Math.Max(0, loss * (Tank.PadOnC - air));
        return new TankAnswer(tank.Name, air, TankFreezing.HoursToZeroH(tank.WaterL, loss, 10, air),
            TankFreezing.HoursToIceH(tank.WaterL, loss, air, 0.1), hold, tank.PadW >= hold);
    })];

    /// <summary>The living space as two stores; where the build-ups lose as much as their films carry, all loss is taken from the air.</summary>
    internal static TwoNode Node(Case asked, ZoneState state)
    {
        state = Driven(state);
        int living = ZoneBalance.LivingIndex(asked.Vehicle);
        Zone zone = asked.Vehicle.Living;
        double difference = Difference(state), opaqueW = 0, areaM2 = 0, mass = SlowJPerK(asked.Vehicle), air = AirJPerK(asked, state.Inputs.AirPressurePa);
        foreach (HeatPath path in state.Shell.Paths)
        {
            if (path.Zone != living || path.Kind is not (PathKind.Panel or PathKind.Bridge)) continue;
            double outer = path.OtherZone < 0 ? state.Inputs.OutsideC - path.SkyShareRatio * state.Inputs.SkyBelowAirK : state.TemperaturesC[path.OtherZone];
            opaqueW += path.CoefficientWPerK * (state.TemperaturesC[living] - outer);
            areaM2 += path.AreaM2;
        }
        double total = state.HeaterW / difference, opaque = opaqueW / difference;
        double exchange = MassFilmWPerM2K * (areaM2 + FurnitureFacesRatio * zone.FloorAreaM2);
        return opaque < exchange ? new(air, mass, exchange, total - opaque, 1 / (1 / opaque - 1 / exchange)) : new(air, mass, exchange, total, 0);
    }

    /// <summary>Heat store of the living space that follows the thermostat within a cycle, J/K: its air and a share of the slow store.</summary>
    internal static double QuickJPerK(Case asked, double airPressurePa) => QuickJPerK(AirJPerK(asked, airPressurePa), SlowJPerK(asked.Vehicle));

    private static double QuickJPerK(double airJPerK, double slowJPerK) => airJPerK + QuickShareFraction * slowJPerK;

    private static double AirJPerK(Case asked, double airPressurePa) =>
        asked.Vehicle.Living.VolumeM3 * MoistAir.DryAirDensityKgPerM3(asked.Habits.SetPointC, 0, airPressurePa) * MoistAir.DryAirSpecificHeatJPerKgK;

    private static double SlowJPerK(Vehicle vehicle)
    {
        double sum = vehicle.FurnishingsJPerM2K * vehicle.Living.FloorAreaM2;
        foreach (Surface surface in vehicle.Surfaces)
            if (surface.Zone == vehicle.Living.Name) sum += surface.OpaqueAreaM2 * InnerCapacityJPerM2K(surface);
        return sum;
    }

    /// <summary>Heat a build-up stores seen from the room: each layer by how warm it gets, linear in resistance.</summary>
    private static double InnerCapacityJPerM2K(Surface surface)
    {
        StackTransmittance found = Transmittance.Of(surface.Stack, surface.Direction, SurfaceResistance.InsideM2KPerW(surface.Direction), 0.05);
        double[] warm = FaceTemperatures.AtFacesC(found, 1, 0);
        double sum = 0;
        for (int i = 0; i < surface.Stack.Layers.Count; i++)
            if (surface.Stack.Layers[i] is SolidLayer solid)
                sum += (warm[i] + warm[i + 1]) / 2 * solid.ThicknessM * solid.Material.DensityKgPerM3.Value * solid.Material.SpecificHeatJPerKgK.Value;
        return sum;
    }

    /// <summary>The same balance with the living space 10 K above the outside, where it is hardly warmer: loss per kelvin needs a difference.</summary>
    private static ZoneState Driven(ZoneState state) => Difference(state) >= 1 ? state
        : ZoneBalance.Solve(state.Shell, state.Inputs with { LivingC = state.Inputs.OutsideC + 10, HeldVapourPa = null });

    private static double Difference(ZoneState state) => Math.Max(state.Inputs.LivingC - state.Inputs.OutsideC, 1e-3);

    private static double People(Case asked) => asked.Habits.SleepersCount * BodyLoads.AsleepHeatW;

    private static NightHeating OneNight(Case asked, Between loss, ZoneState state, TwoNode node, double highest, double lowest)
    {
        Between heat = new(Math.Max(0, loss.Low - People(asked)), Math.Max(0, loss.Value - People(asked)), Math.Max(0, loss.High - People(asked)));
        ZoneState driven = Driven(state);
        double quick = QuickJPerK(node.AirJPerK, node.MassJPerK), hours = asked.Habits.NightH;
        PartLoad usual = PartLoad.Of(asked.Heater, lowest, highest, heat.Value, quick);
        return new()
        {
            HeatW = heat,
            OutputFraction = usual.OutputFraction,
            StartsCount = usual.StartsPerH == 0 ? (heat.Value > 0 ? 1 : 0) : usual.StartsPerH * hours,
            AtLowestOutputC = state.Inputs.OutsideC + (lowest + People(asked)) * Difference(driven) / driven.HeaterW,
            FuelAmount = new(Fuel(heat.Low, Extreme.High), Fuel(heat.Value, Extreme.Usual), Fuel(heat.High, Extreme.Low)),
            ChargeAh = Between.Spanning(Charge(heat.Low, Extreme.Low), Charge(heat.Value, Extreme.Usual), Charge(heat.High, Extreme.High)),
        };

        double Fuel(double heatW, Extreme efficiency) =>
            HeaterFuel.FuelAmount(asked.Heater, Math.Min(heatW, highest) * hours / 1000, efficiency);

        double Charge(double heatW, Extreme end)
        {
            PartLoad load = PartLoad.Of(asked.Heater, lowest, highest, heatW, quick, end);
            double starts = heatW > 0 && load.StartsPerH == 0 ? asked.Heater.StartWh.At(end) : 0;
            return (load.ElectricW * hours + starts) / Battery.NominalV + asked.Habits.FanCurrentA * hours * 12 / Battery.NominalV;
        }
    }

    private static double Dawn(Case asked, ZoneState state, TwoNode node)
    {
        double difference = Difference(state), share = node.AirToMassWPerK / (node.AirToMassWPerK + node.MassToOutsideWPerK);
        return state.Inputs.OutsideC + node.After(asked.Habits.NightH, People(asked), difference, difference * share).AirK;
    }

    /// <summary>Dawn of a run with the stored heat of the other one: what loses most and stores least is coldest.</summary>
    private static double DawnWith(Case run, Case other, ZoneState state)
    {
        Case mixed = run with { Vehicle = run.Vehicle with { FurnishingsJPerM2K = other.Vehicle.FurnishingsJPerM2K } };
        return Dawn(mixed, state, Node(mixed, state));
    }

    private static ChamberGrade[] Grades(Case asked)
    {
        Case warm = asked with { Habits = asked.Habits with { SetPointC = ChamberC, FanAtNightM3PerH = 0, Humidity = HumidityRule.Balance } };
        ZoneState two = Chamber(0), three = Chamber(-15, two.Shell);
        return [Grade(2, two, 2), Grade(3, three, 4)];

        ZoneState Chamber(double outsideC, Shell? known = null) => Balances.Night(warm,
            new() { OutsideC = outsideC, RelativeHumidityFraction = 0.8, WindMPerS = 0, SkyBelowAirK = 0, AltitudeM = 0 }, known: known);

        ChamberGrade Grade(int grade, ZoneState state, double limitH)
        {
            double outsideC = state.Inputs.OutsideC;
            double? reached = Node(warm, state).WarmUpH(ChamberC - outsideC, asked.Heater.HighestW);
            return new(grade, outsideC, limitH, reached, reached <= limitH);
        }
    }

    private static HotWater HotWaterOf(Case asked)
    {
        double heat = ShowerWater.HeatKWh(asked.Habits.ShowersPerDay * asked.Habits.WaterPerShowerL, ShowerWater.ColdC);
        return new(heat, HeaterFuel.FuelAmount(asked.Heater, heat));
    }
}
