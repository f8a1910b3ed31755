using Thermal.Envelope;
using Thermal.Envelope.Details;

namespace Thermal.Bridges;

/// <summary>Two panels at a right angle: the first lies along x, the other along y. Outer skins join; the first's inner layers run through.</summary>
/// <remarks>Off go both U times their bare lengths, from the inner face of a metal or plastic skin as everywhere, or from the outer face of any other outermost layer.</remarks>
internal static class CornerSection
{
    // Where films differ, the first millimetre of the other panel takes the first's: one place has one film.
    private const double EdgeM = 0.001;

    internal static DrawnDetail Draw(Corner corner, DetailPlace place, double insideFilmM2KPerW)
    {
        Stack stack = place.OtherStack ?? throw new ArgumentException("A corner needs the other panel's build-up.", nameof(place));
        double loss = SurfaceResistance.InsideM2KPerW(SurfaceResistance.DirectionOf(place.TiltDeg));
        // The loss films go by direction, panel by panel; any other inside film holds for both.
        double otherFilm = insideFilmM2KPerW == loss ? SurfaceResistance.InsideM2KPerW(SurfaceResistance.DirectionOf(place.OtherTiltDeg)) : insideFilmM2KPerW;
        WallColumn first = WallColumn.Of(place, insideFilmM2KPerW), other = new(stack, place.OtherTiltDeg, otherFilm, place.OtherOutsideFilmM2KPerW);
        double reach = Math.Max(first.ReachM, other.ReachM), xM = other.ThicknessM + corner.AngleLegM + reach, yM = first.ThicknessM + corner.AngleLegM + reach;
        List<Piece> pieces =
        [
            .. first.Pieces(0, xM, y1M: first.SkinM),
            .. first.Pieces(other.SkinM, xM, y0M: first.SkinM),
            .. other.Pieces(first.SkinM, yM, y1M: other.SkinM).Select(Turned),
            .. other.Pieces(first.ThicknessM, yM, y0M: other.SkinM).Select(Turned),
            .. Angle(corner, other.SkinM, first.SkinM),
        ];
        return new(new("corner", SectionShape.Plane, pieces, Air(first, other, xM, yM)), 1,
            first.UWPerM2K * (xM - other.BareFaceM) + other.UWPerM2K * (yM - first.BareFaceM), first.UWPerM2K);
    }

    private static Piece Turned(Piece piece) => piece with { Where = new(piece.Where.Y0M, piece.Where.Y1M, piece.Where.X0M, piece.Where.X1M) };

    private static IEnumerable<Piece> Angle(Corner corner, double x0M, double y0M)
    {
        if (corner is not { AngleSheetM: { } t, AngleMaterial: { } metal }) yield break;
        double leg = corner.AngleLegM;
        yield return new Piece(metal.Name, new(x0M, x0M + leg, y0M, y0M + t), metal.ConductivityWPerMK.Value) { IsInset = true };
        yield return new Piece(metal.Name, new(x0M, x0M + t, y0M, y0M + leg), metal.ConductivityWPerMK.Value) { IsInset = true };
    }

    private static Boundary[] Air(WallColumn first, WallColumn other, double xM, double yM)
    {
        double x0 = other.ThicknessM, y0 = first.ThicknessM, far = double.PositiveInfinity;
        Boundary[] outside =
        [
            new(DetailSection.Outside, new(0, xM, -far, 0), first.OutsideFilmM2KPerW),
            new(DetailSection.Outside, new(-far, 0, 0, yM), other.OutsideFilmM2KPerW),
        ];
        return first.InsideFilmM2KPerW == other.InsideFilmM2KPerW
            ? [.. outside, new(DetailSection.Room, new(x0, xM, y0, yM), first.InsideFilmM2KPerW)]
            :
            [
                .. outside,
                new(DetailSection.Room, new(x0, xM, y0, y0 + EdgeM), first.InsideFilmM2KPerW),
                new(DetailSection.Room, new(x0, xM, y0 + EdgeM, yM), other.InsideFilmM2KPerW),
            ];
    }
}
