using Thermal.Assessments;
using Thermal.Bridges;
using Thermal.Envelope;
using Thermal.Envelope.Details;
using Thermal.Materials;

namespace Thermal.Charts;

/// <summary>Takes one build-up out of an assessment, as its pictures need it.</summary>
public static class CutOfAssessment
{
    // Surfaces less than this from flat are drawn as roof or floor, the others as a side. Source: OURS.
    private const double FlatWithinDeg = 45;

    /// <summary>The cut of one build-up on the cold night.</summary>
    /// <param name="assessment">The assessment.</param>
    /// <param name="damp">One of its build-ups.</param>
    /// <exception cref="InvalidOperationException">The build-up's panel or zone is not in the assessment.</exception>
    public static BuildUpCut Of(Assessment assessment, BuildUpDamp damp)
    {
        Surface surface = assessment.Case.Vehicle.Surfaces.First(s => s.Name == damp.Panel);
        Stack stack = surface.Openings.FirstOrDefault(opening => damp.Name == $"{surface.Name}, {opening.Name}")?.Leaf ?? surface.Stack;
        ZoneNight inside = assessment.ColdNight.Zones.First(zone => zone.Zone == surface.Zone);
        ZoneNight? beyond = surface.Outside == OuterSide.OtherZone ? assessment.ColdNight.Zones.First(zone => zone.Zone == surface.OtherZone) : null;
        CutLayer[] layers = [.. stack.Layers.Select((layer, i) => LayerOf(layer, damp.DiffusionThicknessesM[i]))];
        // Ribs and bolts stand in the panel, not in the leaf of its door.
        bool isPanel = ReferenceEquals(stack, surface.Stack);
        CutRib? rib = isPanel ? RibOf(assessment, surface, layers) : null;
        return new BuildUpCut
        {
            Name = damp.Name,
            Attitude = AttitudeOf(surface),
            Layers = layers,
            TemperaturesAtFacesC = damp.TemperaturesAtFacesC,
            VapourPressuresAtFacesPa = damp.VapourAtFacesPa,
            SettlesByDiffusionGPerM2 = damp.NightByDiffusionGPerM2,
            ReachingDewPointsC = [.. Enumerable.Range(0, stack.Layers.Count + 1).Select(face => face <= damp.AirReachesFace ? damp.RoomDewPointC : (double?)null)],
            InsideC = inside.TemperatureC,
            InsideHumidityFraction = inside.RelativeHumidityFraction,
            InsideName = surface.Zone == assessment.Case.Vehicle.Living.Name ? "room" : surface.Zone,
            OutsideC = beyond?.TemperatureC ?? assessment.ColdNight.Conditions.OutsideC,
            OutsideName = beyond?.Zone ?? OutsideOf(surface),
            Rib = rib,
            RibsNotDrawn = isPanel ? string.Join(", ", surface.Ribs.Select(other => other.Name).Where(name => name != rib?.Name).Concat(surface.Bolts.Select(bolt => bolt.Name)).Distinct()) : "",
        };
    }

    // The closest of the described ribs and battens that repeat and have the build-up unbroken over them.
    private static CutRib? RibOf(Assessment assessment, Surface surface, IReadOnlyList<CutLayer> layers) =>
        assessment.Bridges
            .Where(bridge => bridge.Panel == surface.Name && bridge.Solved is { Detail: Batten or Rib { IsBare: false }, Place.SpacingM: not null })
            .OrderBy(bridge => bridge.Solved!.Place.SpacingM)
            .Select(bridge => RibOf(SectionOnNight.AsSolved(assessment, bridge)!))
            .FirstOrDefault(rib => RibInCut.Fits(rib, layers));

    private static CutRib RibOf(SectionOnNight night)
    {
        double thicknessM = night.Solved.Place.Stack.Layers.Sum(layer => layer.ThicknessM);
        return new CutRib(night.Name, night.Solved.Place.SpacingM!.Value,
        [
            .. from piece in night.Solved.Loss.Section.Pieces
               where piece.IsInset
               from along in Whole(piece.Where, night.IsHalf)
               select new CutPart(along.FromM, along.ToM, thicknessM - piece.Where.Y1M, thicknessM - piece.Where.Y0M, night.GroupOf(piece)),
        ]);
    }

    private static (double FromM, double ToM)[] Whole(Box where, bool isHalf) =>
        !isHalf ? [(where.X0M, where.X1M)] : where.X0M > 0 ? [(-where.X1M, -where.X0M), (where.X0M, where.X1M)] : [(-where.X1M, where.X1M)];

    private static CutLayer LayerOf(StackLayer layer, double diffusionThicknessM) => layer is SolidLayer solid
        ? new CutLayer(solid.Name, solid.ThicknessM, diffusionThicknessM, solid.Material.Group, solid.Battens?.AreaFraction ?? 0)
        : new CutLayer(layer.Name, layer.ThicknessM, diffusionThicknessM, MaterialGroup.Fluid);

    internal static Attitude AttitudeOf(Surface surface) => surface.TiltDeg switch
    {
        < FlatWithinDeg => Attitude.Roof,
        > 180 - FlatWithinDeg => Attitude.Floor,
        _ => surface.Place is SurfacePlace.Left or SurfacePlace.Rear ? Attitude.OutsideLeft : Attitude.OutsideRight,
    };

    internal static string OutsideOf(Surface surface) => surface.Outside == OuterSide.Road
        ? "sheltered road side"
        : surface.TiltDeg < FlatWithinDeg ? "sky and air" : "outside air";
}
