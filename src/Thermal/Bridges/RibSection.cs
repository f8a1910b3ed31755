using Thermal.Envelope;
using Thermal.Envelope.Details;

namespace Thermal.Bridges;

/// <summary>Ribs of folded sheet and profiles.</summary>
internal static class RibSection
{
    internal static DrawnDetail Draw(Rib rib, DetailPlace place, double insideFilmM2KPerW) => new StandingSection
    {
        Name = "rib",
        Parts = [.. Hollow(rib, place), .. Sheets(rib).Select(where => new Piece(rib.Material.Name, where, rib.Material.ConductivityWPerMK.Value) { IsInset = true })],
        Crown = Crown(rib),
        DepthM = rib.DepthM,
        Over = rib.Over,
        IsBare = rib.IsBare,
        IsSymmetric = rib.Shape is RibShape.Hat or RibShape.Box or RibShape.Plate,
    }.Draw(place, insideFilmM2KPerW);

    private static (double, double) Crown(Rib rib) => rib.Shape switch
    {
        RibShape.Zed => (rib.SheetM - rib.CrownM, rib.SheetM),
        RibShape.Channel => (0, rib.CrownM),
        RibShape.Plate => (-rib.SheetM / 2, rib.SheetM / 2),
        _ => (-rib.CrownM / 2, rib.CrownM / 2),
    };

    /// <summary>Webs, crown or flange, feet; of one web the left face is x = 0.</summary>
    private static IEnumerable<Box> Sheets(Rib rib)
    {
        double t = rib.SheetM, depth = rib.DepthM, foot = rib.FootM;
        (double left, double right) = Crown(rib);
        if (rib.Shape == RibShape.Plate) return [new(left, right, 0, depth)];
        Box crown = new(left, right, depth - t, depth);
        if (rib.Shape is RibShape.Zed or RibShape.Channel)
            return [crown, new(0, t, 0, depth), .. foot > 0 ? [new Box(t, t + foot, 0, t)] : Array.Empty<Box>()];
        Box[] tube = [crown, new(left, left + t, 0, depth), new(right - t, right, 0, depth)];
        if (rib.Shape == RibShape.Box) return [.. tube, new(left, right, 0, t)];
        return foot > 0 ? [.. tube, new(left - foot, left, 0, t), new(right, right + foot, 0, t)] : tube;
    }

    /// <summary>What is inside a hat (down to the skin) or a box.</summary>
    private static IEnumerable<Piece> Hollow(Rib rib, DetailPlace place)
    {
        if (rib.Shape is not (RibShape.Hat or RibShape.Box)) yield break;
        double half = rib.CrownM / 2 - rib.SheetM, from = rib.Shape == RibShape.Box ? rib.SheetM : 0, to = rib.DepthM - rib.SheetM;
        double own = rib.InnerEmissivityFraction ?? rib.Material.EmissivityFraction.Value;
        double outer = rib.Shape == RibShape.Box ? own : rib.InnerEmissivityFraction ?? SkinEmissivityFraction(place.Stack);
        yield return new Piece(rib.Filling?.Name ?? "air", new(-half, half, from, to),
            rib.Filling?.ConductivityWPerMK.Value ?? AirCavity.ConductivityWPerMK(to - from, 2 * half, SurfaceResistance.DirectionOf(place.TiltDeg), own, outer)) { IsInset = true };
    }

    internal static double SkinEmissivityFraction(Stack stack) =>
        stack.Layers[^1] is SolidLayer skin ? skin.Material.EmissivityFraction.Value : SurfaceResistance.UsualEmissivityFraction;
}
