using Thermal.Envelope.Details;

namespace Thermal.Bridges;

/// <summary>Grooves pressed outwards: the outermost layer runs down one side, along the bottom and up again, as thick everywhere.</summary>
internal static class CorrugationSection
{
    internal static DrawnDetail Draw(Corrugation groove, DetailPlace place, double insideFilmM2KPerW)
    {
        WallColumn wall = WallColumn.Of(place, insideFilmM2KPerW);
        double half = groove.GrooveM / 2, skin = wall.SkinM, widthM = place.SpacingM ?? 2 * (half + skin + wall.ReachM);
        double emissivity = RibSection.SkinEmissivityFraction(place.Stack);
        double within = groove.Filling?.ConductivityWPerMK.Value
            ?? AirCavity.ConductivityWPerMK(groove.DepthM, groove.GrooveM, wall.Direction, emissivity, emissivity);
        Piece[] pieces =
        [
            .. wall.Pieces(half, widthM / 2, y1M: skin),
            .. wall.Pieces(0, widthM / 2, y0M: skin),
            new(wall.SkinName, new(half, half + skin, -groove.DepthM, 0), wall.SkinConductivityWPerMK),
            new(wall.SkinName, new(0, half, -groove.DepthM, skin - groove.DepthM), wall.SkinConductivityWPerMK),
            new(groove.Filling?.Name ?? "air", new(0, half, skin - groove.DepthM, skin), within),
        ];
        return new(new("groove", SectionShape.Plane, pieces, wall.Air(widthM / 2, wall.ThicknessM)), 2, wall.UWPerM2K * widthM, wall.UWPerM2K, place.SpacingM);
    }
}
