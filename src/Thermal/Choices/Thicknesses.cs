using Thermal.Assessments;
using Thermal.Bridges;
using Thermal.Envelope;
using Thermal.Materials;

namespace Thermal.Choices;

/// <summary>What more thickness buys.</summary>
public static class Thicknesses
{
    private static readonly double[] WithoutListM = [0.01, 0.02, 0.03, 0.04, 0.05, 0.06, 0.08, 0.1];

    /// <summary>Assesses the case once for each thickness sold.</summary>
    /// <param name="asked">The case.</param>
    /// <param name="panel">Name of the panel.</param>
    /// <param name="layer">Index of the layer, 0 at the room.</param>
    /// <param name="cache">Sections of details solved before; null starts an empty one.</param>
    /// <exception cref="ArgumentException">No such panel or layer.</exception>
    /// <remarks>
    /// Cut-to-size materials without a list take 10 to 100 mm. A given ψ belongs to one build-up: rows at other thicknesses say so
    /// (<see cref="ThicknessRow.BridgesStale"/>). Described ribs, bolts and edges are solved for each thickness; one in which they do not fit has
    /// no row and stands in <see cref="ThicknessTable.LeftOut"/>.
    /// </remarks>
    public static ThicknessTable Of(Case asked, string panel, int layer, BridgeCache? cache = null)
    {
        Surface surface = asked.Vehicle.Surfaces.FirstOrDefault(s => s.Name == panel) ?? throw new ArgumentException($"There is no panel called {panel}.", nameof(panel));
        if (layer < 0 || layer >= surface.Stack.Layers.Count) throw new ArgumentException($"{panel} has layers 0 to {surface.Stack.Layers.Count - 1}.", nameof(layer));
        StackLayer kept = surface.Stack.Layers[layer];
        IReadOnlyList<double> sold = kept is SolidLayer { Material.ThicknessesSoldM: { Count: > 0 } list } ? list : WithoutListM;
        double[] thicknesses = [.. sold.Append(kept.ThicknessM).Select(t => Math.Round(t, 6)).Distinct().Order()];
        BridgeCache known = cache ?? new();
        List<ThicknessRow> rows = [];
        List<ThicknessLeftOut> leftOut = [];
        foreach (double thickness in thicknesses)
        {
            bool isKept = Math.Abs(thickness - kept.ThicknessM) < 1e-6;
            Case tried = isKept ? asked : With(asked, panel, layer, thickness);
            if (!isKept && SolvedVehicle.Unfit(tried.Vehicle) is [{ } reason, ..]) leftOut.Add(new(thickness, reason));
            else rows.Add(Row(tried, surface, thickness, isKept, known));
        }
        for (int i = 0; i + 1 < rows.Count; i++)
            rows[i] = rows[i] with { NextTenMmSaveW = (rows[i].LossW - rows[i + 1].LossW) / (rows[i + 1].ThicknessM - rows[i].ThicknessM) * 0.01 };
        return new(panel, kept.Name, layer, kept.ThicknessM, FuelData.Of(asked.Heater.Fuel).UnitName, rows) { LeftOut = leftOut };
    }

    /// <summary>The main layers of the panels that lose most, each in all thicknesses sold.</summary>
    /// <param name="kept">The assessment.</param>
    /// <param name="count">How many panels, 0 to 60.</param>
    /// <param name="cache">Sections of details solved before; null starts an empty one.</param>
    /// <returns>Largest loss first; fewer where fewer panels have a layer that insulates.</returns>
    public static IReadOnlyList<ThicknessTable> OfLargest(Assessment kept, int count, BridgeCache? cache = null)
    {
        BridgeCache known = cache ?? new();
        return [.. kept.Panels.Where(panel => panel.Surface.Outside != OuterSide.OtherZone && MainLayer(panel) is not null)
            .OrderByDescending(panel => panel.LossW).Take(count).Select(panel => Of(kept.Case, panel.Surface.Name, MainLayer(panel)!.Value, known))];
    }

    /// <summary>Index of the layer of a panel that insulates most; null where none has 0.1 m²·K/W.</summary>
    /// <param name="panel">The panel.</param>
    public static int? MainLayer(PanelAnswer panel)
    {
        int best = -1;
        for (int i = 0; i < panel.Surface.Stack.Layers.Count; i++)
            if (panel.Surface.Stack.Layers[i] is SolidLayer && panel.Transmittance.LayersM2KPerW[i] > (best < 0 ? 0.1 : panel.Transmittance.LayersM2KPerW[best])) best = i;
        return best < 0 ? null : best;
    }

    /// <summary>The case with one layer's thickness changed.</summary>
    /// <param name="asked">The case.</param>
    /// <param name="panel">Name of the panel.</param>
    /// <param name="layer">Index of the layer.</param>
    /// <param name="thicknessM">New thickness, m, 1e-6 to 1.</param>
    public static Case With(Case asked, string panel, int layer, double thicknessM) =>
        Changed.Panel(asked, panel, surface => surface with { Stack = surface.Stack.WithThicknessM(layer, thicknessM) });

    private static ThicknessRow Row(Case tried, Surface surface, double thicknessM, bool isKept, BridgeCache cache)
    {
        Assessment found = Assess.UsualOf(tried, cache);
        PanelAnswer panel = found.Panels.First(answer => answer.Surface.Name == surface.Name);
        BuildUpDamp? damp = found.BuildUps.FirstOrDefault(buildUp => buildUp.Name == surface.Name);
        return new()
        {
            ThicknessM = thicknessM,
            IsKept = isKept,
            UWPerM2K = panel.Transmittance.UWPerM2K,
            UWithRibsWPerM2K = panel.UWithRibsWPerM2K,
            LossW = found.ColdNight.LossW,
            FuelAmount = found.Heating.Cold.FuelAmount.Value,
            HeadroomM = found.Space.HeadroomM,
            InnerWidthM = found.Space.InnerWidthM,
            MassKg = found.Space.BuildUpMassKg,
            Verdict = damp?.Verdict ?? DampVerdict.Dry,
            PeakGPerM2 = damp?.Year?.PeakGPerM2,
            ColdestC = panel.ColdestC,
            BridgesStale = found.Findings.Any(finding => finding.Kind == FindingKind.StaleBridge && finding.Where.StartsWith(surface.Name + ",", StringComparison.Ordinal)),
        };
    }
}
