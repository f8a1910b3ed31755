using Thermal.Assessments;
using Thermal.Bridges;
using Thermal.Envelope;
using Thermal.Envelope.Details;
using Thermal.Materials;
using Thermal.Zones;

namespace Thermal.Choices;

/// <summary>What can be done about a described rib.</summary>
public static class RibChoices
{
    private static readonly double[] StripsM = [0, 0.003, 0.006, 0.010, 0.015, 0.020];

    /// <summary>Strips of 0 to 20 mm over the crown: of the kept strip's material, or of closed-cell foam.</summary>
    /// <param name="kept">The assessment.</param>
    /// <param name="panel">Name of the panel.</param>
    /// <param name="rib">Name of the rib.</param>
    /// <param name="cache">Sections solved before, such as those of the assessment.</param>
    /// <returns>The table; null where the rib is not described, or is bare, or is of a kind that takes no strip.</returns>
    /// <exception cref="ArgumentException">No such panel or rib.</exception>
    /// <remarks>
    /// Where a strip does not fit between crown and lining, the insulation the crown ends in grows by what is missing and the lining moves inwards.
    /// Heat saved is that of the panel between the temperatures of the kept cold night: nothing else is assessed again.
    /// </remarks>
    public static StripTable? Strips(Assessment kept, string panel, string rib, BridgeCache cache)
    {
        (Surface surface, LinearBridge bridge) = Find(kept, panel, rib);
        if (bridge.Detail is null || !TakesStrip(bridge.Detail)) return null;
        OverRib? over = OverOf(bridge.Detail);
        Material material = over?.Material ?? StripFoam;
        double keptM = over?.ThicknessM ?? 0;
        List<StripRow> rows = [];
        Measured? without = null;
        foreach (double stripM in StripsM.Append(keptM).Select(strip => Math.Round(strip, 6)).Distinct().Order())
        {
            bool isKept = Math.Abs(stripM - keptM) < 1e-6;
            double lostM = isKept ? 0 : MissingM(surface.Stack, bridge.Detail, stripM);
            Surface tried = isKept ? surface : WithStrip(surface, bridge, stripM == 0 ? null : new() { Material = material, ThicknessM = stripM, WidthM = over?.WidthM });
            Measured now = Measure(kept, tried, rib, cache);
            without ??= now;
            rows.Add(new(stripM, now.PsiWPerMK, now.UWithRibsWPerM2K, now.ColdestC, now.ToSpareK, without.LossW - now.LossW, lostM, isKept));
        }
        return new(panel, rib, material.Name, rows);
    }

    /// <summary>The rib empty, filled with the material beside it, and foamed with closed-cell foam; and as it is kept.</summary>
    /// <inheritdoc cref="Strips"/>
    /// <returns>The table; null where the rib is not described, or has no hollow.</returns>
    /// <remarks>Heat saved is that of the panel between the temperatures of the kept cold night: nothing else is assessed again.</remarks>
    public static FillingTable? Fillings(Assessment kept, string panel, string rib, BridgeCache cache)
    {
        (Surface surface, LinearBridge bridge) = Find(kept, panel, rib);
        if (bridge.Detail is not Rib { Shape: RibShape.Hat or RibShape.Box } hollow) return null;
        List<FillingRow> rows = [];
        Measured? empty = null;
        foreach (Material? filling in new Material?[] { null, Beside(surface.Stack, hollow.DepthM), MaterialLibrary.Find("spray_foam_closed_cell"), hollow.Filling }.DistinctBy(filling => filling?.Key))
        {
            Surface tried = WithDetail(surface, bridge, hollow with { Filling = filling });
            Measured now = Measure(kept, tried, rib, cache);
            empty ??= now;
            rows.Add(new(filling?.Name, now.PsiWPerMK, now.UWithRibsWPerM2K, now.ColdestC, now.ToSpareK, empty.LossW - now.LossW, filling?.Key == hollow.Filling?.Key));
        }
        return new(panel, rib, rows);
    }

    /// <summary>A panel with a strip of foam over every described rib that has none; null where there is none such.</summary>
    internal static Surface? WithStrips(Surface surface, double stripM)
    {
        Surface covered = surface;
        foreach (LinearBridge rib in surface.Ribs)
            if (rib.Detail is Rib { Over: null, IsBare: false }) covered = WithStrip(covered, rib, new() { Material = StripFoam, ThicknessM = stripM });
        return ReferenceEquals(covered, surface) ? null : covered;
    }

    private static Material StripFoam => MaterialLibrary.Find("elastomeric_foam")!;

    private static (Surface Surface, LinearBridge Rib) Find(Assessment kept, string panel, string rib)
    {
        Surface surface = kept.Case.Vehicle.Surfaces.FirstOrDefault(s => s.Name == panel) ?? throw new ArgumentException($"There is no panel called {panel}.", nameof(panel));
        return (surface, surface.Ribs.FirstOrDefault(r => r.Name == rib) ?? throw new ArgumentException($"{panel} has no rib called {rib}.", nameof(rib)));
    }

    private static bool TakesStrip(LineDetail detail) => detail is Batten or Rib { IsBare: false };
    private static OverRib? OverOf(LineDetail detail) => detail switch { Rib rib => rib.Over, Batten batten => batten.Over, _ => null };
    private static double DepthM(LineDetail detail) => detail switch { Rib rib => rib.DepthM, Batten batten => batten.DepthM, _ => 0 };

    private static Surface WithStrip(Surface surface, LinearBridge bridge, OverRib? over)
    {
        LineDetail detail = bridge.Detail is Batten batten ? batten with { Over = over } : ((Rib)bridge.Detail!) with { Over = over };
        double missingM = MissingM(surface.Stack, detail, over?.ThicknessM ?? 0);
        int layer = LayerAtCrown(surface.Stack, DepthM(detail));
        Surface changed = WithDetail(surface, bridge, detail);
        return missingM > 0 ? changed with { Stack = surface.Stack.WithThicknessM(layer, surface.Stack.Layers[layer].ThicknessM + missingM) } : changed;
    }

    private static Surface WithDetail(Surface surface, LinearBridge bridge, LineDetail detail) =>
        surface with { Ribs = [.. surface.Ribs.Select(rib => rib.Name == bridge.Name ? rib with { Detail = detail } : rib)] };

    /// <summary>How far the lining must move inwards so that the strip fits between crown and lining, m.</summary>
    private static double MissingM(Stack stack, LineDetail detail, double stripM)
    {
        if (stripM == 0) return 0;
        int layer = LayerAtCrown(stack, DepthM(detail));
        double roomM = -DepthM(detail);
        for (int i = stack.Layers.Count - 2; i >= layer; i--) roomM += stack.Layers[i].ThicknessM;
        for (int i = layer - 1; i >= 0 && IsSoft(stack.Layers[i]); i--) roomM += stack.Layers[i].ThicknessM;
        double missingM = stripM - roomM;
        return missingM > 1e-9 ? missingM : 0;
    }

    /// <summary>The insulation the crown ends in; where it ends in a board, the insulation behind that; where there is none, the board.</summary>
    private static int LayerAtCrown(Stack stack, double depthM)
    {
        int layer = stack.Layers.Count - 1;
        double reachedM = 0;
        do reachedM += stack.Layers[--layer].ThicknessM;
        while (layer > 0 && reachedM < depthM - 1e-9);
        for (int i = layer; i < stack.Layers.Count - 1; i++)
            if (IsSoft(stack.Layers[i])) return i;
        return layer;
    }

    private static bool IsSoft(StackLayer layer) => layer is AirLayer or SolidLayer { Material.Group: MaterialGroup.Foam or MaterialGroup.Wool };

    /// <summary>The material that most of the rib stands in; null where that is air.</summary>
    private static Material? Beside(Stack stack, double depthM)
    {
        double fromM = 0, mostM = 0;
        Material? most = null;
        for (int i = stack.Layers.Count - 2; i >= 0 && fromM < depthM; i--)
        {
            double besideM = Math.Min(stack.Layers[i].ThicknessM, depthM - fromM);
            if (besideM > mostM) (mostM, most) = (besideM, (stack.Layers[i] as SolidLayer)?.Material);
            fromM += stack.Layers[i].ThicknessM;
        }
        return most;
    }

    private static Measured Measure(Assessment kept, Surface tried, string rib, BridgeCache cache)
    {
        double wind = kept.Case.ColdNight.WindMPerS;
        Vehicle vehicle = SolvedVehicle.ForHeat(Changed.Panel(kept.Case, tried.Name, _ => tried).Vehicle, wind, cache);
        Surface surface = vehicle.Surfaces.First(s => s.Name == tried.Name);
        LinearBridge solved = surface.Ribs.First(r => r.Name == rib);
        BridgeAnswer there = kept.Bridges.First(bridge => bridge.Panel == tried.Name && bridge.Name == rib && bridge.Count is null);
        double differenceK = there.InsideC - there.OutsideC, coldestC = there.OutsideC + solved.ColdestFactor!.Value * differenceK;
        // The density of the room's air moves cold places alone, not the ways of heat.
        double lossWPerK = Shell.Of(vehicle, wind, 1.2).Paths.Where(path => path.Panel == tried.Name).Sum(path => path.CoefficientWPerK);
        double uWithRibs = DetailSolver.Loss(solved.Detail!, DetailPlace.In(vehicle, surface, solved.Detail!, wind, solved.SpacingM), cache).UWithRibsWPerM2K
            ?? PanelAnswer.WithRibsWPerM2K(surface, PanelAnswer.Between(surface, wind));
        return new(solved.PsiWPerMK!.Value, uWithRibs, coldestC, coldestC - there.DewPointC, lossWPerK * differenceK);
    }

    private sealed record Measured(double PsiWPerMK, double UWithRibsWPerM2K, double ColdestC, double ToSpareK, double LossW);
}
