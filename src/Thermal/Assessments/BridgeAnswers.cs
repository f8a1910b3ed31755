using Thermal.Air;
using Thermal.Bridges;
using Thermal.Envelope;
using Thermal.Envelope.Details;
using Thermal.Zones;

namespace Thermal.Assessments;

/// <summary>Says of every rib, bolt and described edge what it costs and how cold it gets on the cold night.</summary>
internal static class BridgeAnswers
{
    /// <summary>Largest loss first.</summary>
    /// <param name="asked">The case, its details solved.</param>
    /// <param name="cold">The usual balance of its cold night.</param>
    /// <param name="cache">Where those solutions are found again.</param>
    internal static IReadOnlyList<BridgeAnswer> Of(Case asked, ZoneState cold, BridgeCache cache) =>
        [.. asked.Vehicle.Surfaces.SelectMany(surface => Of(asked, surface, cold, cache)).OrderByDescending(answer => answer.LossW)];

    private static IEnumerable<BridgeAnswer> Of(Case asked, Surface surface, ZoneState cold, BridgeCache cache)
    {
        double wind = asked.ColdNight.WindMPerS;
        int zone = DampAnswers.IndexOf(asked.Vehicle, surface.Zone);
        double insideC = cold.TemperaturesC[zone], dewPointC = DewPoint.OfPressureC(cold.VapourPa(zone));
        double outsideC = surface.Outside == OuterSide.OtherZone ? cold.TemperaturesC[DampAnswers.IndexOf(asked.Vehicle, surface.OtherZone!)]
            : cold.Inputs.OutsideC - Shell.SkyShareRatio(surface, wind) * cold.Inputs.SkyBelowAirK;
        foreach (LinearBridge rib in surface.Ribs)
            yield return Answer(rib.Name, rib.LossWPerK, rib.ColdestFactor) with { Solved = Line(rib.Detail, rib.SpacingM, null), LengthM = rib.LengthM, SpacingM = rib.SpacingM };
        foreach (PointBridge bolt in surface.Bolts)
            yield return Answer(bolt.Name, bolt.LossWPerK, bolt.ColdestFactor) with
            {
                Solved = bolt.Detail is { } detail ? DetailSolver.Solve(detail, DetailPlace.In(asked.Vehicle, surface, detail, wind), cache) : null,
                Count = bolt.Count,
            };
        foreach (Opening opening in surface.Openings)
            if (opening.Edge is not null)
                yield return Answer(opening.Name, opening.EdgeLossWPerK, opening.EdgeColdestFactor) with { Solved = Line(opening.Edge, null, opening), LengthM = opening.PerimeterM };

        SolvedLine? Line(LineDetail? detail, double? spacingM, Opening? opening) =>
            detail is null ? null : DetailSolver.Solve(detail, DetailPlace.In(asked.Vehicle, surface, detail, wind, spacingM, opening), cache);

        BridgeAnswer Answer(string name, double lossWPerK, double? factor)
        {
            double? coldestC = factor is { } share ? outsideC + share * (insideC - outsideC) : null;
            return new()
            {
                Name = name,
                Panel = surface.Name,
                LossWPerK = lossWPerK,
                LossW = lossWPerK * (insideC - outsideC),
                ColdestC = coldestC,
                ToSpareK = coldestC - dewPointC,
                IsFrost = coldestC < 0,
                InsideC = insideC,
                OutsideC = outsideC,
                DewPointC = dewPointC,
            };
        }
    }
}
