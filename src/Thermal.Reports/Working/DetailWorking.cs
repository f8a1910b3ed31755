using Thermal.Assessments;
using Thermal.Bridges;
using Thermal.Materials;
using Thermal.Words;

namespace Thermal.Reports.Working;

/// <summary>How the ψ or χ of a described detail and its coldest point were found, line by line, in SI units.</summary>
internal static class DetailWorking
{
    private const string Bridges = "ISO 10211", Mould = "ISO 13788";

    private static Figures F => Figures.Metric;

    internal static IReadOnlyList<Step> Of(BridgeAnswer bridge, SolvedDetail solved)
    {
        List<Step> steps = [];
        if (solved is SolvedLine line)
            steps.AddRange(Line(line));
        else if (solved is SolvedPoint point)
            steps.AddRange(Point(point));
        steps.Add(new("coldest inner point", "θ_si = θ_e + f · (θ_i − θ_e), loss films",
            $"{F.Temperature(bridge.OutsideC)} + {F.Write(Shown.Factor, solved.ColdestFactor)} · {F.Difference(bridge.InsideC - bridge.OutsideC)}", bridge.ColdestC is { } coldestC ? F.Temperature(coldestC) : "", Bridges));
        if (bridge is { ColdestC: { } thereC, ToSpareK: { } spareK })
            steps.Add(new("to spare", "θ_si − θ_dew of the room's air", $"{F.Temperature(thereC)} − ({F.Temperature(bridge.DewPointC)})", F.Difference(spareK), Mould));
        steps.Add(new("temperature factor for mould", "f_Rsi = (θ_si − θ_e)/(θ_i − θ_e), films for mould", "its own solution with R_si 0.25 m²·K/W", F.Write(Shown.Factor, solved.MouldFactor), Mould));
        return steps;
    }

    private static IEnumerable<Step> Line(SolvedLine line)
    {
        string whole = F.LinearTransmittance(line.WholeCouplingWPerK);
        yield return new("coupling of the section", "L2D = Φ/(θ_i − θ_e) per metre", Cells(line), whole, Bridges);
        yield return new("its plain parts", "ΣU·l", $"U beside it {F.Transmittance(line.PlainUWPerM2K)}", F.LinearTransmittance(line.PlainCouplingWPerK), Bridges);
        yield return new("linear transmittance", "ψ = L2D − ΣU·l", $"{F.Number(Shown.LinearTransmittance, line.WholeCouplingWPerK)} − {F.Number(Shown.LinearTransmittance, line.PlainCouplingWPerK)}; solved between {Ends(Shown.LinearTransmittance, line.PsiWPerMK)}",
            F.LinearTransmittance(line.PsiWPerMK.Value), Bridges);
        if (line is { UWithRibsWPerM2K: { } withRibs, Place.SpacingM: { } spacingM })
            yield return new("transmittance with them", "U = L2D/spacing", $"{F.Number(Shown.LinearTransmittance, line.WholeCouplingWPerK)} / {F.Length(spacingM)}", F.Transmittance(withRibs), Bridges);
    }

    private static IEnumerable<Step> Point(SolvedPoint point)
    {
        yield return new("coupling of the body", "L3D = Φ/(θ_i − θ_e)", Cells(point), F.Write(Shown.PointTransmittance, point.WholeCouplingWPerK), Bridges);
        yield return new("its plain part", "U·A", $"U beside it {F.Transmittance(point.PlainUWPerM2K)}", F.Write(Shown.PointTransmittance, point.PlainCouplingWPerK), Bridges);
        yield return new("point transmittance", "χ = L3D − U·A", $"{F.Number(Shown.PointTransmittance, point.WholeCouplingWPerK)} − {F.Number(Shown.PointTransmittance, point.PlainCouplingWPerK)}; solved between {Ends(Shown.PointTransmittance, point.ChiWPerK)}",
            F.Write(Shown.PointTransmittance, point.ChiWPerK.Value), Bridges);
    }

    private static string Cells(SolvedDetail solved) => $"{F.Write(Shown.Factor, solved.Loss.CellCount)} cells; were each halved, the flow would change by at most {F.Write(Shown.FinePercent, solved.Loss.DoublingChangeFraction)}";

    private static string Ends(Shown shown, Bounded found) => $"{F.Number(shown, found.Low)} and {F.Number(shown, found.High)}";
}
