namespace Thermal.Envelope.Details;

/// <summary>Whether a detail fits into the build-up it stands in.</summary>
public static class DetailFit
{
    // Lengths that are equal on paper may differ in their last digits.
    private const double PlayM = 1e-9;

    // What must be left open inside a folded section. Chosen by us.
    private const double LeastHollowM = 0.0002;

    /// <summary>Everything about a detail that does not fit its build-up.</summary>
    /// <param name="detail">The detail.</param>
    /// <param name="stack">The build-up of its panel.</param>
    /// <param name="spacingM">Distance between neighbours, m; null for one alone.</param>
    /// <param name="otherStack">The build-up of the panel a corner joins; null elsewhere, or where not known.</param>
    /// <param name="opening">The opening whose edge it is; null elsewhere, or where not known.</param>
    /// <returns>All problems; empty where it fits.</returns>
    public static IReadOnlyList<DetailProblem> Problems(Detail detail, Stack stack, double? spacingM, Stack? otherStack = null, Opening? opening = null)
    {
        double insideM = InsideM(stack);
        IEnumerable<DetailProblem> own = detail switch
        {
            Rib rib => OfRib(rib, insideM),
            Batten batten => OfStanding(batten.DepthM, batten.Over, insideM),
            Corner corner => OfCorner(corner, insideM, otherStack),
            FrameEdge edge => OfFrame(edge, insideM, opening),
            DoorEdge door => OfDoor(door, insideM, opening),
            Bolt bolt => OfBolt(bolt, stack, insideM),
            _ => [],
        };
        IEnumerable<DetailProblem> wide = spacingM is { } spacing && !(WidthM(detail, stack) <= spacing + PlayM)
            ? [new(DetailFault.WiderThanSpacing, WidthM(detail, stack), spacing)] : [];
        return [.. own, .. wide, .. new[] { stack, otherStack, opening?.Leaf }.OfType<Stack>().SelectMany(Ventilated)];
    }

    /// <summary>Thickness inside the outermost layer, whatever that is of, m: a rib stands on it.</summary>
    private static double InsideM(Stack stack) => stack.ThicknessM - stack.Layers[^1].ThicknessM;

    /// <summary>Width that a detail takes along the panel, m.</summary>
    private static double WidthM(Detail detail, Stack stack) => detail switch
    {
        Rib rib => Math.Max(rib.Over?.WidthM ?? 0, rib.Shape switch
        {
            RibShape.Hat => rib.CrownM + 2 * rib.FootM,
            RibShape.Zed => rib.CrownM + rib.FootM,
            RibShape.Channel => Math.Max(rib.CrownM, rib.SheetM + rib.FootM),
            RibShape.Box => rib.CrownM,
            _ => rib.SheetM,
        }),
        Batten batten => Math.Max(batten.WidthM, batten.Over?.WidthM ?? 0),
        Corrugation groove => groove.GrooveM + 2 * stack.Layers[^1].ThicknessM,
        _ => 0,
    };

    private static IEnumerable<DetailProblem> OfRib(Rib rib, double insideM)
    {
        bool isPlate = rib.Shape == RibShape.Plate, isHollow = rib.Shape is RibShape.Hat or RibShape.Box;
        if (isPlate ? rib.CrownM > 0 : !(rib.CrownM >= 0.003)) yield return new(DetailFault.CrownUnfit, rib.CrownM, isPlate ? 0 : 0.003);
        if (rib.Shape is RibShape.Plate or RibShape.Box && rib.FootM > 0) yield return new(DetailFault.FootUnfit, rib.FootM, 0);
        if (rib.Filling is not null && !isHollow) yield return new(DetailFault.NothingToFill, 0, 0);
        double mostM = isPlate ? double.PositiveInfinity : (Math.Min(rib.DepthM, isHollow ? rib.CrownM : double.PositiveInfinity) - LeastHollowM) / 2;
        if (!(rib.SheetM <= mostM + PlayM)) yield return new(DetailFault.SheetTooThick, rib.SheetM, mostM);
        foreach (DetailProblem problem in OfStanding(rib.DepthM, rib.Over, insideM)) yield return problem;
    }

    private static IEnumerable<DetailProblem> OfStanding(double depthM, OverRib? over, double insideM)
    {
        if (!(depthM <= insideM + PlayM)) yield return new(DetailFault.DeeperThanWall, depthM, insideM);
        else if (over is not null && !(over.ThicknessM <= insideM - depthM + PlayM)) yield return new(DetailFault.StripTooThick, over.ThicknessM, insideM - depthM);
    }

    private static IEnumerable<DetailProblem> OfCorner(Corner corner, double insideM, Stack? otherStack)
    {
        bool isWhole = corner.AngleSheetM is not null && corner.AngleMaterial is not null && corner.AngleLegM >= 0.003;
        bool isNone = corner.AngleSheetM is null && corner.AngleMaterial is null && corner.AngleLegM == 0;
        if (!isWhole && !isNone) yield return new(DetailFault.AngleUnfit, corner.AngleLegM, 0.003);
        double mostM = Math.Min(Math.Min(insideM, otherStack is null ? insideM : InsideM(otherStack)), isWhole ? corner.AngleLegM : insideM);
        if (corner.AngleSheetM is { } sheet && !(sheet <= mostM)) yield return new(DetailFault.SheetTooThick, sheet, mostM);
    }

    /// <summary>A frame with films of 0.13 and 0.04 m²·K/W on flat faces lets at most 5.88 W/(m²·K) through.</summary>
    private static IEnumerable<DetailProblem> OfFrame(FrameEdge edge, double insideM, Opening? opening)
    {
        if (!(edge.LipM <= insideM + PlayM)) yield return new(DetailFault.DeeperThanWall, edge.LipM, insideM);
        if (opening is not null && !(FrameResistance.BlockM2KPerW(opening.FrameUWPerM2K) >= FrameResistance.LeastM2KPerW)) yield return new(DetailFault.FrameTooOpen, 0, 0);
    }

    private static IEnumerable<DetailProblem> OfDoor(DoorEdge door, double insideM, Opening? opening)
    {
        double deepestM = opening?.Leaf is { } leaf ? Math.Min(insideM, InsideM(leaf)) : insideM;
        if (!(door.DepthM <= deepestM + PlayM)) yield return new(DetailFault.DeeperThanWall, door.DepthM, deepestM);
        double mostM = (Math.Min(door.DepthM, door.PostM) - LeastHollowM) / 2;
        if (!(door.SheetM <= mostM + PlayM)) yield return new(DetailFault.SheetTooThick, door.SheetM, mostM);
    }

    private static IEnumerable<DetailProblem> OfBolt(Bolt bolt, Stack stack, double insideM)
    {
        if (bolt.LayersOver > stack.Layers.Count - 1)
        {
            yield return new(DetailFault.TooManyLayersOver, 0, 0);
            yield break;
        }
        double headRoomM = insideM - stack.Layers.Take(bolt.LayersOver).Sum(layer => layer.ThicknessM);
        if (bolt.LayersOver > 0 && !(bolt.HeadThicknessM <= headRoomM + PlayM)) yield return new(DetailFault.DeeperThanWall, bolt.HeadThicknessM, headRoomM);
        foreach (double head in new[] { bolt.HeadM, bolt.OuterHeadM ?? bolt.DiameterM })
        {
            if (!(head >= bolt.DiameterM - PlayM)) yield return new(DetailFault.HeadNarrowerThanShank, head, bolt.DiameterM);
            else if (head > bolt.DiameterM + PlayM && !(bolt.HeadThicknessM > 0)) yield return new(DetailFault.HeadWithoutThickness, bolt.HeadThicknessM, 0);
        }
    }

    private static IEnumerable<DetailProblem> Ventilated(Stack stack)
    {
        if (stack.Layers.Any(layer => layer is AirLayer { OpeningsMm2: > AirLayerResistance.ClosedUpToMm2 }))
            yield return new(DetailFault.CrossesVentilatedLayer, 0, 0);
    }
}

/// <summary>One thing that does not fit.</summary>
/// <param name="Fault">What is wrong.</param>
/// <param name="GivenM">The length given, m; 0 where it is not about a length.</param>
/// <param name="LimitM">The limit it breaks, m; 0 where it is not about a length.</param>
public sealed record DetailProblem(DetailFault Fault, double GivenM, double LimitM);

/// <summary>What can be wrong with a detail.</summary>
public enum DetailFault
{
    /// <summary>It reaches deeper than the build-up inside the skin.</summary>
    DeeperThanWall,
    /// <summary>Strip or batten over it does not fit between its crown and the room.</summary>
    StripTooThick,
    /// <summary>It is wider than the distance to its neighbour.</summary>
    WiderThanSpacing,
    /// <summary>Its sheet is thicker than half its depth or width allows.</summary>
    SheetTooThick,
    /// <summary>A crown is missing, or given for a plate.</summary>
    CrownUnfit,
    /// <summary>A foot is given for a box or a plate, which have none.</summary>
    FootUnfit,
    /// <summary>A filling is given for a section that encloses no hollow.</summary>
    NothingToFill,
    /// <summary>More layers over the head than the build-up has.</summary>
    TooManyLayersOver,
    /// <summary>The head is narrower than the shank.</summary>
    HeadNarrowerThanShank,
    /// <summary>A head wider than the shank has no thickness.</summary>
    HeadWithoutThickness,
    /// <summary>Of the angle in a corner thickness, leg or material is missing.</summary>
    AngleUnfit,
    /// <summary>The opening's frame lets more heat through than a flat block with films can.</summary>
    FrameTooOpen,
    /// <summary>The build-up, that of the other panel or the leaf has a ventilated layer: which part of the detail it washes nobody can say.</summary>
    CrossesVentilatedLayer,
}
