using Thermal.Envelope.Details;

namespace Thermal.Bridges;

/// <summary>What stands on the inner face of the outermost layer and reaches into the build-up, with or without a strip over it.</summary>
internal sealed record StandingSection
{
    internal required string Name { get; init; }
    /// <summary>Its parts about x = 0 in the order they are set in, y from the skin's inner face.</summary>
    internal required IReadOnlyList<Piece> Parts { get; init; }
    /// <summary>Left and right edge of its face towards the room, m.</summary>
    internal required (double X0M, double X1M) Crown { get; init; }
    internal required double DepthM { get; init; }
    internal required OverRib? Over { get; init; }
    internal required bool IsBare { get; init; }
    /// <summary>True where its left half mirrors its right.</summary>
    internal required bool IsSymmetric { get; init; }

    internal DrawnDetail Draw(DetailPlace place, double insideFilmM2KPerW)
    {
        WallColumn wall = WallColumn.Of(place, insideFilmM2KPerW);
        double crownM = wall.SkinM + DepthM, left = Math.Min(Crown.X0M, Parts.Min(part => part.Where.X0M)), right = Math.Max(Crown.X1M, Parts.Max(part => part.Where.X1M));
        Piece? strip = Strip(crownM);
        (double notch0, double notch1) = (Math.Min(Crown.X0M, strip?.Where.X0M ?? 0), Math.Max(Crown.X1M, strip?.Where.X1M ?? 0));
        (left, right) = (Math.Min(left, notch0), Math.Max(right, notch1));
        double widthM = place.SpacingM ?? right - left + 2 * wall.ReachM;
        double drawnM = IsSymmetric ? widthM / 2 : widthM, shift = IsSymmetric ? 0 : (widthM - left - right) / 2;
        (notch0, notch1) = (Math.Max(0, notch0 + shift), Math.Min(drawnM, notch1 + shift));
        IEnumerable<Piece> layers = IsBare
            ? [.. wall.Pieces(0, notch0), .. wall.Pieces(notch0, notch1, y1M: crownM), .. wall.Pieces(notch1, drawnM)]
            : wall.Pieces(0, drawnM);
        IEnumerable<Piece> parts = Parts.Select(part => Moved(part, 0, wall.SkinM)).Concat(strip is null ? [] : [strip]);
        List<Piece> pieces = [.. layers, .. parts.Select(part => Within(Moved(part, shift, 0), drawnM)).OfType<Piece>()];
        return new(new(Name, SectionShape.Plane, pieces, wall.Air(drawnM, IsBare ? crownM : wall.ThicknessM)),
            IsSymmetric ? 2 : 1, wall.UWPerM2K * widthM, wall.UWPerM2K, place.SpacingM);
    }

    /// <summary>The strip over the crown; over a bare crown it stands in the room.</summary>
    private Piece? Strip(double crownM)
    {
        if (Over is not { } over) return null;
        double middle = (Crown.X0M + Crown.X1M) / 2, half = (over.WidthM ?? Crown.X1M - Crown.X0M) / 2;
        return new(over.Material.Name, new(middle - half, middle + half, crownM, crownM + over.ThicknessM), over.Material.ConductivityWPerMK.Value) { IsInset = !IsBare };
    }

    private static Piece Moved(Piece piece, double xM, double yM) => piece with
    {
        Where = piece.Where with { X0M = piece.Where.X0M + xM, X1M = piece.Where.X1M + xM, Y0M = piece.Where.Y0M + yM, Y1M = piece.Where.Y1M + yM },
    };

    private static Piece? Within(Piece piece, double widthM)
    {
        Box cut = piece.Where with { X0M = Math.Max(0, piece.Where.X0M), X1M = Math.Min(widthM, piece.Where.X1M) };
        return cut.X1M > cut.X0M ? piece with { Where = cut } : null;
    }
}
