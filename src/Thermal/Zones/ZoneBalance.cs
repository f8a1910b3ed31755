using System.Globalization;
using Thermal.Air;
using Thermal.Envelope;
using Thermal.Numerics;
using Thermal.Ventilation;

namespace Thermal.Zones;

/// <summary>Steady heat and vapour of living space, cab and hold, as one network.</summary>
public static class ZoneBalance
{
    private const int MostRounds = 200;
    private const double SettledK = 1e-8;
    /// <summary>No room is tighter than this, so that a sealed one in still air has one answer, m³/h. Source: OURS.</summary>
    private const double TightestM3PerH = 1e-6;

    /// <summary>Solves it.</summary>
    /// <param name="shell">Paths and places.</param>
    /// <param name="inputs">The outside and the living space.</param>
    /// <remarks>
    /// Heat: the living space is held, every other zone takes the temperature at which its gains equal its losses. Air flows
    /// depend on temperatures, so both are repeated until they agree. Vapour: sources = air exchange + Σ settling, where settling
    /// starts at each place's saturation: piecewise linear and convex, so repeating with the places that are wet ends after finitely
    /// many rounds at the exact solution. Every round lies above it, the first one with all places wet too, so that a place that has
    /// turned dry stays dry. Carried water: h_c/c_p per unit of humidity ratio (Lewis factor 1). Latent heat is left out.
    /// </remarks>
    /// <exception cref="NotConvergedException">The flows did not settle.</exception>
    public static ZoneState Solve(Shell shell, ZoneInputs inputs)
    {
        int n = shell.Vehicle.Zones.Count, living = LivingIndex(shell.Vehicle);
        double density = MoistAir.DryAirDensityKgPerM3(inputs.OutsideC, inputs.OutsidePa, inputs.AirPressurePa);
        double[] temperatures = new double[n], flows = new double[n], links = LinkFlows(shell.Vehicle, density);
        Array.Fill(temperatures, (inputs.LivingC + inputs.OutsideC) / 2);
        temperatures[living] = inputs.LivingC;
        double change = double.MaxValue;
        for (int round = 0; change > SettledK; round++)
        {
            if (round == MostRounds)
                throw new NotConvergedException(string.Create(CultureInfo.InvariantCulture, $"Air flows between zones did not settle: still {change} K after {round} rounds."));
            Flows(shell, inputs, temperatures, density, living, flows);
            change = n == 1 ? 0 : Temperatures(shell, inputs, flows, links, density, living, temperatures);
        }
        double outsideRatio = MoistAir.HumidityRatioUncheckedKgPerKg(inputs.OutsidePa, inputs.AirPressurePa);
        ZoneState state = new()
        {
            Shell = shell,
            Inputs = inputs,
            TemperaturesC = temperatures,
            HumidityRatiosKgPerKg = new double[n],
            OutsideAirM3PerH = flows,
            OutsideDensityKgPerM3 = density,
            OutsideRatioKgPerKg = outsideRatio,
            HeaterW = HeaterW(shell, inputs, temperatures, flows, links, density, living),
        };
        return state with { HumidityRatiosKgPerKg = Ratios(state, links, living) };
    }

    /// <summary>Index of the living space.</summary>
    public static int LivingIndex(Vehicle vehicle)
    {
        for (int i = 0; i < vehicle.Zones.Count; i++)
            if (vehicle.Zones[i].Kind == ZoneKind.Living) return i;
        throw new ArgumentException("A vehicle has one living space.", nameof(vehicle));
    }

    /// <summary>Heat carried by outside air into a zone, W/K: dry air counts.</summary>
    internal static double AirWPerK(double flowM3PerH, double density) => flowM3PerH / 3600 * density * MoistAir.DryAirSpecificHeatJPerKgK;

    /// <summary>Air exchanged by each passage, kg/s.</summary>
    private static double[] LinkFlows(Vehicle vehicle, double density)
    {
        double[] flows = new double[vehicle.Links.Count];
        for (int i = 0; i < flows.Length; i++) flows[i] = vehicle.Links[i].AirM3PerM2H.Value * vehicle.Links[i].AreaM2 / 3600 * density;
        return flows;
    }

    private static void Flows(Shell shell, ZoneInputs inputs, double[] temperatures, double density, int living, double[] flows)
    {
        for (int i = 0; i < flows.Length; i++)
            flows[i] = Math.Max(TightestM3PerH, AirFlow.OfZoneM3PerH(shell.Vehicle.Zones[i], temperatures[i], inputs.OutsideC, inputs.WindMPerS,
                shell.Vehicle.WindPressureFactor.Value, density, i == living ? inputs.FanM3PerH : 0) + (i == living ? inputs.HeaterFreshAirM3PerH : 0));
    }

    /// <summary>One solve with given flows; returns the largest change, K.</summary>
    private static double Temperatures(Shell shell, ZoneInputs inputs, double[] flows, double[] links, double density, int living, double[] temperatures)
    {
        int n = temperatures.Length;
        Span<double> matrix = stackalloc double[n * n], rhs = stackalloc double[n];
        matrix.Clear();
        for (int i = 0; i < n; i++)
        {
            double air = AirWPerK(flows[i], density);
            matrix[i * n + i] = air;
            rhs[i] = air * inputs.OutsideC;
        }
        foreach (HeatPath path in shell.PathSpan)
            if (path.OtherZone < 0)
            {
                matrix[path.Zone * n + path.Zone] += path.CoefficientWPerK;
                rhs[path.Zone] += path.CoefficientWPerK * (inputs.OutsideC - path.SkyShareRatio * inputs.SkyBelowAirK);
            }
            else Couple(matrix, n, path.Zone, path.OtherZone, path.CoefficientWPerK);
        for (int i = 0; i < links.Length; i++)
            Couple(matrix, n, shell.LinkEnds[i].From, shell.LinkEnds[i].To, links[i] * MoistAir.DryAirSpecificHeatJPerKgK);
        matrix.Slice(living * n, n).Clear();
        matrix[living * n + living] = 1;
        rhs[living] = inputs.LivingC;
        DenseSolve.Solve(matrix, rhs);
        double change = 0;
        for (int i = 0; i < n; i++)
        {
            change = Math.Max(change, Math.Abs(rhs[i] - temperatures[i]));
            temperatures[i] = rhs[i];
        }
        return change;
    }

    private static void Couple(Span<double> matrix, int n, int a, int b, double conductance)
    {
        matrix[a * n + a] += conductance;
        matrix[b * n + b] += conductance;
        matrix[a * n + b] -= conductance;
        matrix[b * n + a] -= conductance;
    }

    private static double HeaterW(Shell shell, ZoneInputs inputs, double[] temperatures, double[] flows, double[] links, double density, int living)
    {
        double sum = AirWPerK(flows[living], density) * (temperatures[living] - inputs.OutsideC);
        foreach (HeatPath path in shell.PathSpan)
        {
            if (path.Zone == living)
                sum += path.CoefficientWPerK * (temperatures[living] - (path.OtherZone < 0 ? inputs.OutsideC - path.SkyShareRatio * inputs.SkyBelowAirK : temperatures[path.OtherZone]));
            else if (path.OtherZone == living) sum += path.CoefficientWPerK * (temperatures[living] - temperatures[path.Zone]);
        }
        for (int i = 0; i < links.Length; i++)
        {
            (int a, int b) = shell.LinkEnds[i];
            if (a == living || b == living)
                sum += links[i] * MoistAir.DryAirSpecificHeatJPerKgK * (temperatures[living] - temperatures[a == living ? b : a]);
        }
        return sum;
    }

    private static double[] Ratios(ZoneState state, double[] links, int living)
    {
        Shell shell = state.Shell;
        int n = shell.Vehicle.Zones.Count;
        ReadOnlySpan<ColdPlace> places = shell.PlaceSpan;
        double[] saturation = new double[places.Length], ratios = new double[n];
        bool[] wet = new bool[places.Length];
        for (int i = 0; i < places.Length; i++)
        {
            wet[i] = places[i] is { InUse: true, TransferKgPerS: > 0 };
            saturation[i] = MoistAir.HumidityRatioUncheckedKgPerKg(SaturationPressure.PairUncheckedPa(state.PlaceC(places[i])), state.Inputs.AirPressurePa);
        }
        Span<double> matrix = stackalloc double[n * n], rhs = stackalloc double[n];
        for (bool changed = true; changed;)
        {
            matrix.Clear();
            for (int i = 0; i < n; i++)
            {
                double air = state.OutsideAirM3PerH[i] / 3600 * state.OutsideDensityKgPerM3;
                matrix[i * n + i] = air;
                rhs[i] = air * state.OutsideRatioKgPerKg + (i == living ? state.Inputs.VapourKgPerS : 0);
            }
            for (int i = 0; i < links.Length; i++)
                Couple(matrix, n, shell.LinkEnds[i].From, shell.LinkEnds[i].To, links[i]);
            for (int i = 0; i < places.Length; i++)
            {
                ColdPlace place = places[i];
                if (!wet[i]) continue;
                matrix[place.Zone * n + place.Zone] += place.TransferKgPerS;
                rhs[place.Zone] += place.TransferKgPerS * saturation[i];
            }
            if (state.Inputs.HeldVapourPa is { } held)
            {
                matrix.Slice(living * n, n).Clear();
                matrix[living * n + living] = 1;
                rhs[living] = MoistAir.HumidityRatioUncheckedKgPerKg(held, state.Inputs.AirPressurePa);
            }
            DenseSolve.Solve(matrix, rhs);
            rhs.CopyTo(ratios);
            changed = false;
            for (int i = 0; i < places.Length; i++)
            {
                if (!wet[i] || ratios[places[i].Zone] > saturation[i]) continue;
                wet[i] = false;
                changed = true;
            }
        }
        return ratios;
    }
}
