using SkiaSharp;
using Thermal.Bridges;
using Thermal.Envelope.Details;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Charts;

/// <summary>The section of a rib, bolt or edge with its temperatures: where the heat goes through, how far the cold reaches, and where the room's air would drip.</summary>
public static class SectionField
{
    private const float Edge = 16, NamesPx = 176, TitleBaseline = 24, WordsPx = 18;
    // A wall is thin and its rib wide: a standing section takes this much more height. Source: OURS.
    private const float StandingPx = 80;

    /// <summary>Draws it, in true proportion, turned as it stands in the vehicle.</summary>
    /// <param name="night">The detail on one night.</param>
    /// <param name="palette">Colours.</param>
    /// <param name="units">Units to write in.</param>
    /// <param name="width">Width, px, 480 or more.</param>
    /// <param name="height">Height the section and its words are fitted into, px, 240 or more; the key is added below.</param>
    /// <exception cref="ArgumentOutOfRangeException">A picture too small.</exception>
    /// <exception cref="ArgumentException">A section in three dimensions.</exception>
    public static Picture Draw(SectionOnNight night, Palette palette, UnitSet units, int width = 640, int height = 340)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(width, 480);
        ArgumentOutOfRangeException.ThrowIfLessThan(height, 240);
        if (night.Solved.Loss.Section.Shape == SectionShape.Solid)
            throw new ArgumentException($"{night.Name} is solved in three dimensions: only a plane or a round section can be drawn.", nameof(night));
        Figures figures = Figures.In(units);
        var words = new SectionWords(night, figures);
        bool isLying = night.Attitude is Attitude.Roof or Attitude.Floor;
        bool isOneRow = isLying || Lettering.Value.WidthOf(words.Left) + Lettering.Value.WidthOf(words.Right) + 24 <= width - 2 * Edge;
        float roomRow = isLying ? SectionLayout.RoomRowPx : 0;
        float above = SectionNames.AbovePx(night), top = above + TitleBaseline + 20 + (isOneRow ? 1 : 2) * WordsPx + (night.Attitude == Attitude.Floor ? roomRow : 0), below = isLying ? 30 + (night.Attitude == Attitude.Roof ? roomRow : 0) : 14;
        // A corner has the room inside its picture.
        float roomPx = night.Solved.Detail is Corner ? 0 : SectionLayout.RoomColumnPx;
        SectionCells cells = SectionCells.Of(night.Field, night.TemperaturesC, night.IsHalf);
        SectionLayout layout = isLying
            ? SectionLayout.Of(night, cells, SKRect.Create(Edge, top, width - 2 * Edge - NamesPx, height - top - below))
            : SectionLayout.Of(night, cells, SKRect.Create(Edge, top, width - 2 * Edge - NamesPx - roomPx, height + StandingPx + above - top - below)).Centred(width, roomPx);
        var drawing = new SectionDrawing(night, figures, cells, layout);
        var names = new SectionNames(cells, layout.View, figures, night.IsCornerBelow);
        var key = new SectionKey(drawing, figures, layout.View.PxPerM, layout.IsCropped, night.ColdestC < 0, width - 2 * Edge);
        float keyTop = layout.View.Box.Bottom + below + names.BelowPx;
        int tall = (int)MathF.Ceiling(keyTop + key.HeightPx + 10);
        return new Picture(width, tall, words.AltText(layout, drawing), words.Caption(layout, drawing), canvas =>
        {
            var sheet = new Sheet(canvas, palette);
            sheet.Ground(width, tall);
            sheet.Text(Lettering.Title.Fitting(words.Title, width - 2 * Edge), Edge, TitleBaseline, Lettering.Title);
            DrawSides(sheet, words, layout.View, width, isOneRow);
            drawing.Draw(sheet);
            names.Draw(sheet, width - Edge);
            key.Draw(sheet, Edge, keyTop);
        });
    }

    private static void DrawSides(Sheet sheet, SectionWords words, SectionView view, int width, bool isOneRow)
    {
        float first = TitleBaseline + 26;
        if (view.IsLying)
        {
            sheet.Text(words.Left, Edge, first, Lettering.Value);
            sheet.Text(words.Right, Edge, view.Box.Bottom + (view.Attitude == Attitude.Roof ? SectionLayout.RoomRowPx : 0) + 20, Lettering.Value);
        }
        else
        {
            sheet.Text(words.Left, Edge, first, Lettering.Value);
            sheet.Text(words.Right, width - Edge, isOneRow ? first : first + WordsPx, Lettering.Value, align: SKTextAlign.Right);
        }
    }
}
