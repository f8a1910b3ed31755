using Thermal.Envelope;
using Thermal.Envelope.Details;

namespace Thermal.Bridges;

/// <summary>Wall, gap, lip of the skin, frame: the frame's outer face is flush with the skin's, its glass side is cut.</summary>
/// <remarks>
/// The gap lies between the cut insulation and lip or frame, from the skin inwards up to the innermost layer, which runs over it; its air is taken as
/// closed. Off goes the wall's U up to the frame and the frame's U over its width.
/// </remarks>
internal static class FrameEdgeSection
{
    // A slit as thin as paper counts as none. Chosen by us.
    private const double LeastGapM = 1e-4;

    internal static DrawnDetail Draw(FrameEdge edge, DetailPlace place, double insideFilmM2KPerW)
    {
        Opening opening = place.Opening ?? throw new ArgumentException("The edge of an opening needs its opening.", nameof(place));
        WallColumn wall = WallColumn.Of(place, insideFilmM2KPerW);
        double block = FrameResistance.BlockM2KPerW(opening.FrameUWPerM2K), skin = wall.SkinM;
        double cutM = wall.ReachM + edge.GapM + skin, endM = cutM + edge.FrameWidthM, frameTop = edge.FrameDepthM;
        List<Piece> pieces = [.. wall.Pieces(0, cutM)];
        double lip = edge.LipM > 0 ? skin : 0, gap0 = cutM - lip - edge.GapM;
        if (edge.GapM >= LeastGapM && wall.LiningM - skin >= LeastGapM)
            pieces.Add(new("air", new(gap0, cutM, skin, wall.LiningM), GapWPerMK(edge, wall)) { IsInset = true });
        if (edge.LipM > 0)
            pieces.Add(new(wall.SkinName, new(cutM - skin, cutM, skin, skin + edge.LipM), wall.SkinConductivityWPerMK) { IsInset = true });
        pieces.Add(new("frame", new(cutM, endM, 0, frameTop), frameTop / block));
        double frameU = 1 / (insideFilmM2KPerW + block + wall.OutsideFilmM2KPerW);
        return new(new("frame edge", SectionShape.Plane, pieces, wall.Air(endM, Math.Min(frameTop, wall.ThicknessM))), 1,
            wall.UWPerM2K * cutM + frameU * edge.FrameWidthM, wall.UWPerM2K);
    }

    private static double GapWPerMK(FrameEdge edge, WallColumn wall) => AirCavity.ConductivityWPerMK(wall.LiningM - wall.SkinM, edge.GapM, wall.Direction);
}
