using ScottPlot;
using SkiaSharp;

namespace Thermal.Charts;

/// <summary>One plot over the time of a trip: nights shaded, legs named above, lines named at their ends where there is room and else in a key.</summary>
internal sealed class TripPlot : IDisposable
{
    /// <summary>From this width lines are named at their ends.</summary>
    internal const float NamesFromPx = 560;
    internal const int LeastWidthPx = 320;
    private const float LeftPx = 52, NamesPx = 158, EdgePx = 16, HeadPx = 56, LegsPx = 20, KeyRowPx = 18, TicksPx = 26;

    private readonly Sheet sheet;
    private readonly TripTime time;
    private readonly Frame frame;
    private readonly IReadOnlyList<TripLine> lines;
    private readonly bool namesAtEnds, isFirst;
    private readonly float keyTop;

    /// <param name="sheet">Where to draw.</param>
    /// <param name="area">Where it stands, px.</param>
    /// <param name="time">The time of the trip.</param>
    /// <param name="up">Its left axis.</param>
    /// <param name="lines">Its lines.</param>
    /// <param name="isFirst">True for the upper one, which bears the title and the legs.</param>
    /// <param name="isLast">True for the lowest one, which bears the ticks of time.</param>
    internal TripPlot(Sheet sheet, SKRect area, TripTime time, AxisScale up, IReadOnlyList<TripLine> lines, bool isFirst = true, bool isLast = true)
    {
        (this.sheet, this.time, this.lines, this.isFirst) = (sheet, time, lines, isFirst);
        namesAtEnds = area.Width >= NamesFromPx;
        // The plot below another one has no title: what stands above its words is not its own.
        SKRect place = isFirst ? area : new SKRect(area.Left, area.Top - 30, area.Right, area.Bottom);
        keyTop = place.Top + HeadPx;
        float top = HeadPx + (namesAtEnds ? 0 : KeyRows(area.Width).Count * KeyRowPx) + (isFirst ? LegsPx : 5);
        float right = namesAtEnds ? NamesPx : EdgePx;
        AxisScale across = time.AxisFor(area.Width - LeftPx - right);
        frame = new Frame(sheet, place, isLast ? across : across with { Ticks = [] }, up, new PixelPadding(LeftPx, right, isLast ? TicksPx : 8, top));
    }

    internal Frame Frame => frame;

    internal SKRect Data => frame.Data;

    public void Dispose() => frame.Dispose();

    /// <summary>Draws ground, nights, legs and axes; areas and lines come after.</summary>
    internal void Ground(string title)
    {
        foreach ((int from, int to) in time.Nights())
            sheet.Area(new SKRect(frame.AcrossPx(from), Data.Top, frame.AcrossPx(to), Data.Bottom), sheet.Palette.Line, 0.4f);
        frame.Render(title);
        foreach ((string name, double from, double to) in time.Legs())
        {
            float left = frame.AcrossPx(from), right = frame.AcrossPx(to);
            if (from > 0)
                sheet.Line(left, isFirst ? Data.Top - LegsPx + 4 : Data.Top, left, Data.Bottom, sheet.Palette.Muted, 1, 0.6f);
            if (!isFirst)
                continue;
            string shown = Lettering.Small.Fitting(name, right - left - 8);
            if (shown.Length >= Math.Min(name.Length, 6))
                sheet.Text(shown, left + 4, Data.Top - 6, Lettering.Small, sheet.Palette.Muted);
        }
    }

    /// <summary>Draws the lines and their names.</summary>
    internal void Lines()
    {
        foreach (TripLine line in lines.Where(line => line.HasBand && time.IsByDay))
            Band(line);
        foreach (TripLine line in lines)
            foreach (List<SKPoint> piece in Pieces(line))
                Piece(piece, line);
        if (namesAtEnds)
            LineLabel.Draw(sheet, Data, [.. lines.Where(line => line.Known.Any()).Select(line => new LineLabel(Lettering.Label.Fitting(line.Name, NamesPx - 20), End(line)))]);
        else
            Key();
    }

    /// <summary>An area from nothing up to the values, in steps.</summary>
    internal void Steps(IReadOnlyList<double> values, string fill, string rim)
    {
        List<SKPoint> edge = [];
        foreach ((int from, int to) in time.Spans)
        {
            double mean = Mean(values, from, to);
            edge.Add(frame.At(from, mean));
            edge.Add(frame.At(to, mean));
        }
        float ground = frame.UpPx(0);
        sheet.Area([new SKPoint(edge[0].X, ground), .. edge, new SKPoint(edge[^1].X, ground)], fill);
        sheet.Polyline(edge, rim, 1.2f);
    }

    /// <summary>The area below a line.</summary>
    internal void Under(TripLine line, string fill)
    {
        float ground = frame.UpPx(0);
        foreach (List<SKPoint> piece in Pieces(line).Where(piece => piece.Count > 1))
            sheet.Area([new SKPoint(piece[0].X, ground), .. piece, new SKPoint(piece[^1].X, ground)], fill);
    }

    /// <summary>A line across at a value, drawn before the lines, which run over it; its words stand above it where the lines are farthest.</summary>
    internal void Mark(double value, string words)
    {
        float y = frame.UpPx(value);
        sheet.Line(Data.Left, y, Data.Right, y, sheet.Palette.Ink, 1.2f);
        float half = Lettering.Small.WidthOf(words) / 2 + 4, middle = y - 9 < Data.Top + 8 ? y + 10 : y - 9;
        SKPoint[] all = [.. lines.SelectMany(Pieces).SelectMany(piece => piece)];
        float[] places = [Data.Left + half, Data.MidX, Data.Right - half];
        float Clear(float x) => all.Where(point => Math.Abs(point.X - x) <= half + 4).Select(point => Math.Abs(point.Y - middle)).DefaultIfEmpty(float.MaxValue).Min();
        sheet.TextWithin(Data, words, places.MaxBy(Clear), middle + 4, Lettering.Small, sheet.Palette.Muted);
    }

    /// <summary>The mean of what is known over some hours; NaN where nothing is.</summary>
    internal static double Mean(IReadOnlyList<double> values, int from, int to)
    {
        double sum = 0;
        int count = 0;
        for (int i = from; i < to; i++)
            if (!double.IsNaN(values[i]))
                (sum, count) = (sum + values[i], count + 1);
        return count > 0 ? sum / count : double.NaN;
    }

    private void Band(TripLine line)
    {
        (int From, int To)[] days = [.. time.Days.Where(day => !double.IsNaN(Mean(line.Values, day.From, day.To)))];
        if (days.Length < 2)
            return;
        SKPoint At((int From, int To) day, Func<IEnumerable<double>, double> end) =>
            frame.At((day.From + day.To) / 2.0, end(line.Values.Skip(day.From).Take(day.To - day.From).Where(value => !double.IsNaN(value))));
        sheet.Area([.. days.Select(day => At(day, values => values.Min())), .. days.Reverse().Select(day => At(day, values => values.Max()))], line.Colour, 0.22f);
    }

    private IEnumerable<List<SKPoint>> Pieces(TripLine line)
    {
        List<SKPoint> piece = [];
        foreach ((int from, int to) in time.Spans)
        {
            double mean = Mean(line.Values, from, to);
            if (!double.IsNaN(mean))
            {
                piece.Add(frame.At((from + to) / 2.0, mean));
                continue;
            }
            if (piece.Count > 0)
                yield return piece;
            piece = [];
        }
        if (piece.Count > 0)
            yield return piece;
    }

    // A single point is drawn as wide as its hour, so that it is seen.
    private void Piece(List<SKPoint> piece, TripLine line)
    {
        float half = Math.Max(2, (frame.AcrossPx(1) - frame.AcrossPx(0)) / 2);
        IReadOnlyList<SKPoint> points = piece.Count > 1 ? piece : [new SKPoint(piece[0].X - half, piece[0].Y), new SKPoint(piece[0].X + half, piece[0].Y)];
        if (line.IsDashed)
            sheet.DashedLine(points, line.Colour, line.Width, 5, 4);
        else
            sheet.Polyline(points, line.Colour, line.Width);
    }

    private SKPoint End(TripLine line)
    {
        SKPoint last = Pieces(line).Last()[^1];
        return new SKPoint(last.X, last.Y);
    }

    private void Key()
    {
        IReadOnlyList<List<TripLine>> rows = KeyRows(Data.Right + EdgePx);
        for (int row = 0; row < rows.Count; row++)
        {
            float x = EdgePx, y = keyTop + 10 + row * KeyRowPx;
            foreach (TripLine line in rows[row])
            {
                SKPoint[] swatch = [new SKPoint(x, y - 4), new SKPoint(x + 18, y - 4)];
                if (line.IsDashed)
                    sheet.DashedLine(swatch, line.Colour, line.Width, 5, 4);
                else
                    sheet.Polyline(swatch, line.Colour, line.Width);
                sheet.Text(Shortened(line, Data.Right + EdgePx), x + 23, y, Lettering.Small);
                x += KeyPx(line, Data.Right + EdgePx);
            }
        }
    }

    private List<List<TripLine>> KeyRows(float width)
    {
        List<List<TripLine>> rows = [];
        float x = width;
        foreach (TripLine line in lines.Where(line => line.Known.Any()))
        {
            float each = KeyPx(line, width);
            if (x + each > width)
                (rows, x) = ([.. rows, []], EdgePx);
            rows[^1].Add(line);
            x += each;
        }
        return rows;
    }

    private static string Shortened(TripLine line, float width) => Lettering.Small.Fitting(line.Name, width - 2 * EdgePx - 37);

    private static float KeyPx(TripLine line, float width) => 37 + Lettering.Small.WidthOf(Shortened(line, width));
}
