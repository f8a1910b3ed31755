using SkiaSharp;
using Thermal.Bridges;
using Thermal.Envelope.Details;

namespace Thermal.Charts;

/// <summary>Which part of a section is drawn, how large, and where.</summary>
/// <param name="View">Where it stands on the sheet.</param>
/// <param name="IsCroppedLow">True where it goes on beyond the lowest x drawn.</param>
/// <param name="IsCroppedHigh">True where it goes on beyond the highest x drawn.</param>
/// <param name="IsCroppedDeep">True where it goes on beyond the highest y drawn.</param>
internal sealed record SectionLayout(SectionView View, bool IsCroppedLow, bool IsCroppedHigh, bool IsCroppedDeep)
{
    // Air drawn on both sides, px; how much of the wall beside the detail is drawn at least, in thicknesses and m. Source: OURS.
    internal const float AirPx = 14;
    // Beyond it, in the room, what a label of the coldest point takes, px.
    internal const float EdgePx = 16, RoomRowPx = 16, RoomColumnPx = 130;
    private const double BesideThicknesses = 0.9, LeastBesideM = 0.02;
    // Of each panel of a corner no more than this is drawn, in thicknesses of the wall. Source: OURS.
    private const double CornerThicknesses = 3;

    /// <summary>Where labels may stand: the picture, and the room beside it.</summary>
    internal SKRect LabelBox => View.Attitude switch
    {
        Attitude.Roof => View.Box with { Bottom = View.Box.Bottom + RoomRowPx },
        Attitude.Floor => View.Box with { Top = View.Box.Top - RoomRowPx },
        Attitude.OutsideLeft => View.Box with { Right = View.Box.Right + RoomColumnPx },
        _ => View.Box with { Left = Math.Max(EdgePx, View.Box.Left - RoomColumnPx) },
    };

    internal bool IsCropped => IsCroppedLow || IsCroppedHigh || IsCroppedDeep;

    /// <param name="night">The section.</param>
    /// <param name="cells">Its cells.</param>
    /// <param name="space">Space for it, px; it stands at its upper left.</param>
    internal static SectionLayout Of(SectionOnNight night, SectionCells cells, SKRect space)
    {
        double thickness = night.Solved.Place.Stack.Layers.Sum(layer => layer.ThicknessM);
        double fromY = cells.YsM[0], toY = night.Solved.Detail is Corner ? Math.Min(cells.YsM[^1], fromY + CornerThicknesses * thickness) : cells.YsM[^1];
        double lengthM = Math.Min(cells.XsM[^1] - cells.XsM[0], night.Solved.Detail is Corner ? toY - fromY : double.PositiveInfinity);
        (double low, double high) = night.Solved.Detail is Corner ? (cells.XsM[0], cells.XsM[0]) : Detail(night, cells);
        double beside = Math.Max(LeastBesideM, BesideThicknesses * thickness);
        bool isLying = night.Attitude is Attitude.Roof or Attitude.Floor;
        (float alongPx, float deepPx) = isLying ? (space.Width, space.Height) : (space.Height, space.Width);
        double scale = Math.Min(alongPx / Math.Min(high - low + 2 * beside, lengthM), (deepPx - 2 * AirPx) / (toY - fromY));
        double span = Math.Min(alongPx / scale, lengthM);
        double from = Math.Clamp((low + high) / 2 - span / 2, cells.XsM[0], cells.XsM[^1] - span);
        float drawnAlong = (float)(span * scale), drawnDeep = (float)((toY - fromY) * scale) + 2 * AirPx;
        SKRect box = SKRect.Create(space.Left, space.Top, isLying ? drawnAlong : drawnDeep, isLying ? drawnDeep : drawnAlong);
        return new SectionLayout(new SectionView(night.Attitude, box, scale, from, fromY - AirPx / scale, night.IsCornerBelow || night.Solved.Detail is FrameEdge or DoorEdge),
            from > cells.XsM[0] + 1e-9, from + span < cells.XsM[^1] - 1e-9, toY < cells.YsM[^1]);
    }

    /// <summary>The same in the middle of the width, as far as the names at its right and the room's labels allow.</summary>
    /// <param name="width">Width of the picture, px.</param>
    /// <param name="roomPx">What the room's labels take beside it, px.</param>
    internal SectionLayout Centred(float width, float roomPx)
    {
        const float names = 176;
        float left = Math.Max(EdgePx + (View.Attitude == Attitude.OutsideRight ? roomPx : 0), Math.Min((width - View.Box.Width) / 2, width - EdgePx - names - View.Box.Width));
        return this with { View = View with { Box = SKRect.Create(left, View.Box.Top, View.Box.Width, View.Box.Height) } };
    }

    // What ends before the ends of the section; where everything runs through, the coldest point.
    private static (double Low, double High) Detail(SectionOnNight night, SectionCells cells)
    {
        Piece[] parts = [.. night.Solved.Loss.Section.Pieces.Where(piece => piece.Where.X1M < cells.XsM[^1] - 1e-9 && (night.IsHalf || piece.Where.X0M > cells.XsM[0] + 1e-9))];
        if (parts.Length == 0)
            return (night.Solved.ColdestAt.XM, night.Solved.ColdestAt.XM);
        (double low, double high) = (parts.Min(piece => piece.Where.X0M), parts.Max(piece => piece.Where.X1M));
        return night.IsHalf ? (-high, high) : (low, high);
    }
}
