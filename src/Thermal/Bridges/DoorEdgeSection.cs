using Thermal.Envelope;
using Thermal.Envelope.Details;
using Thermal.Materials;

namespace Thermal.Bridges;

/// <summary>Wall, post folded of sheet on the skin, gap with its seal, leaf with its folded edge; outer faces of wall and leaf are flush.</summary>
/// <remarks>
/// The seal is solid rubber, as deep as the gap is wide, at the outer side. Behind it the air of the gap is open to the room by its own width: up to 10 mm it
/// counts as lightly ventilated with twice the conductivity, beyond that the room reaches into it. Off goes the wall's U up to the
/// post's edge and the leaf's U from there on, the gap included. Source: ISO-10077-2, cavities by the width of their slit (from memory); OURS for the seal.
/// </remarks>
internal static class DoorEdgeSection
{
    private const double LightUpToM = 0.01, LightFactor = 2;

    internal static DrawnDetail Draw(DoorEdge door, DetailPlace place, double insideFilmM2KPerW)
    {
        Stack stack = place.Opening?.Leaf ?? throw new ArgumentException("The edge of a door needs its opening with a leaf.", nameof(place));
        WallColumn wall = WallColumn.Of(place, insideFilmM2KPerW), leaf = new(stack, place.TiltDeg, insideFilmM2KPerW, place.OutsideFilmM2KPerW);
        double post1 = wall.ReachM + door.PostM, leaf0 = post1 + door.SealM, endM = leaf0 + door.SheetM + leaf.ReachM;
        double shallower = Math.Min(wall.ThicknessM, leaf.ThicknessM), seal = Math.Min(door.SealM, shallower);
        bool isOpen = door.SealM > LightUpToM;
        List<Piece> pieces =
        [
            .. wall.Pieces(0, post1),
            .. Post(door, place, wall, post1),
            new("seal", new(post1, leaf0, 0, seal), Rubber.ConductivityWPerMK.Value),
            .. leaf.Pieces(leaf0, endM),
            Sheet(door, new(leaf0, leaf0 + door.SheetM, leaf.SkinM, leaf.SkinM + door.DepthM)),
        ];
        if (!isOpen && shallower - seal > door.SealM / 100)
            pieces.Add(new("air", new(post1, leaf0, seal, shallower), GapWPerMK(door, wall, shallower - seal)));
        return new(new("door edge", SectionShape.Plane, pieces, wall.Air(endM, isOpen ? seal : shallower)), 1,
            wall.UWPerM2K * post1 + leaf.UWPerM2K * (endM - post1), wall.UWPerM2K);
    }

    private static Material Rubber => MaterialLibrary.Find("epdm_seal") ?? throw new InvalidOperationException("The library has no rubber for seals.");

    private static IEnumerable<Piece> Post(DoorEdge door, DetailPlace place, WallColumn wall, double x1M)
    {
        double t = door.SheetM, x0M = x1M - door.PostM, low = wall.SkinM, high = low + door.DepthM, emissivity = door.Material.EmissivityFraction.Value;
        yield return new Piece(door.Filling?.Name ?? "air", new(x0M + t, x1M - t, low, high - t), door.Filling?.ConductivityWPerMK.Value
            ?? AirCavity.ConductivityWPerMK(door.DepthM - t, door.PostM - 2 * t, wall.Direction, emissivity, RibSection.SkinEmissivityFraction(place.Stack))) { IsInset = true };
        yield return Sheet(door, new(x0M, x0M + t, low, high));
        yield return Sheet(door, new(x1M - t, x1M, low, high));
        yield return Sheet(door, new(x0M, x1M, high - t, high));
    }

    private static Piece Sheet(DoorEdge door, Box where) => new(door.Material.Name, where, door.Material.ConductivityWPerMK.Value) { IsInset = true };

    private static double GapWPerMK(DoorEdge door, WallColumn wall, double depthM) =>
        AirCavity.ConductivityWPerMK(depthM, door.SealM, wall.Direction) * LightFactor;
}
