using ScottPlot;
using ScottPlot.TickGenerators;
using SkiaSharp;

namespace Thermal.Charts;

/// <summary>A plot with the one look of all charts: title and units in words, a light grid, no box. Drawn on a sheet; labels come after.</summary>
internal sealed class Frame : IDisposable
{
    private const float TitleBaseline = 24, AxisTitleBaseline = 48;

    private readonly Sheet sheet;
    private readonly PixelRect area;
    private readonly AxisScale across, up;
    private readonly PixelPadding padding;

    /// <param name="sheet">Where to draw.</param>
    /// <param name="area">Where the plot stands on the sheet, px, titles and ticks included.</param>
    /// <param name="across">The lower axis.</param>
    /// <param name="up">The left axis.</param>
    /// <param name="padding">Space round the data for ticks, titles and labels, px.</param>
    internal Frame(Sheet sheet, SKRect area, AxisScale across, AxisScale up, PixelPadding padding)
    {
        EmbeddedFonts.Use();
        (this.sheet, this.across, this.up, this.padding) = (sheet, across, up, padding);
        this.area = new PixelRect(area.Left, area.Right, area.Bottom, area.Top);
        Plot = new Plot();
        Plot.Layout.Fixed(padding);
        Plot.RenderManager.ClearCanvasBeforeEachRender = false;
        Plot.FigureBackground.Color = Colors.Transparent;
        Plot.DataBackground.Color = Colors.Transparent;
        Style();
    }

    /// <summary>The plot, to add lines, bars and areas to.</summary>
    internal Plot Plot { get; }

    /// <summary>The part of the sheet that data is drawn in, px.</summary>
    internal SKRect Data => new(area.Left + padding.Left, area.Top + padding.Top, area.Right - padding.Right, area.Bottom - padding.Bottom);

    public void Dispose() => Plot.Dispose();

    /// <summary>Draws the plot with what was added to it, and the words round it; without a title where it is empty, as in the lower of two plots.</summary>
    internal void Render(string title)
    {
        Plot.Axes.SetLimits(across.Low, across.High, up.Low, up.High);
        // The first render of a plot draws everything twice to settle its layout; that one goes nowhere.
        using (var nowhere = new SKNoDrawCanvas((int)area.Width, (int)area.Height))
            Plot.Render(nowhere, area);
        Plot.Render(sheet.Canvas, area);
        if (title.Length > 0)
            sheet.Text(Lettering.Title.Fitting(title, area.Width - 32), area.Left + 16, area.Top + TitleBaseline, Lettering.Title);
        sheet.Text(up.Title, area.Left + 16, area.Top + AxisTitleBaseline, Lettering.Small, sheet.Palette.Muted);
        if (across.Title.Length > 0)
            sheet.Text(across.Title, Data.Right, Data.Bottom + 38, Lettering.Small, sheet.Palette.Muted, SKTextAlign.Right);
    }

    /// <summary>Leaves out the lower axis, where the labels at the bars say it all.</summary>
    internal void HideAcross()
    {
        Plot.Axes.Bottom.FrameLineStyle.Width = 0;
        Plot.Grid.YAxisStyle.MajorLineStyle.Width = 0;
    }

    /// <summary>Where a point of the plot stands on the sheet, px.</summary>
    internal SKPoint At(double x, double y) => new(AcrossPx(x), UpPx(y));

    internal float AcrossPx(double x) => Data.Left + (float)((x - across.Low) / (across.High - across.Low)) * Data.Width;

    internal float UpPx(double y) => Data.Bottom - (float)((y - up.Low) / (up.High - up.Low)) * Data.Height;

    /// <summary>Adds an unbroken line.</summary>
    internal void Line(IEnumerable<double> xs, IEnumerable<double> ys, string colour, float width)
    {
        var line = Plot.Add.ScatterLine(xs.ToArray(), ys.ToArray(), Shade(colour));
        line.LineWidth = width;
    }

    /// <summary>Adds an area between two lines over the same places.</summary>
    internal void Band(double[] xs, double[] lows, double[] highs, string colour, double opacity = 1)
    {
        var band = Plot.Add.FillY(xs, lows, highs);
        band.FillColor = Shade(colour).WithAlpha(opacity);
        band.LineWidth = 0;
        band.MarkerSize = 0;
    }

    internal static Color Shade(string colour) => Color.FromHex(colour);

    private void Style()
    {
        Color ink = Shade(sheet.Palette.Ink), muted = Shade(sheet.Palette.Muted), line = Shade(sheet.Palette.Line);
        Plot.Axes.Bottom.TickGenerator = new NumericManual([.. across.Ticks.Select(t => t.At)], [.. across.Ticks.Select(t => t.Label)]);
        Plot.Axes.Left.TickGenerator = new NumericManual([.. up.Ticks.Select(t => t.At)], [.. up.Ticks.Select(t => t.Label)]);
        foreach (IAxis axis in (IAxis[])[Plot.Axes.Bottom, Plot.Axes.Left])
        {
            axis.TickLabelStyle.FontName = EmbeddedFonts.Family;
            axis.TickLabelStyle.FontSize = Lettering.Small.Size;
            axis.TickLabelStyle.ForeColor = muted;
            axis.MajorTickStyle.Length = 4;
            axis.MajorTickStyle.Color = line;
            axis.MinorTickStyle.Length = 0;
        }
        Plot.Axes.Left.FrameLineStyle.Width = 0;
        Plot.Axes.Left.MajorTickStyle.Length = 0;
        Plot.Axes.Right.FrameLineStyle.Width = 0;
        Plot.Axes.Top.FrameLineStyle.Width = 0;
        Plot.Axes.Bottom.FrameLineStyle.Width = 1;
        Plot.Axes.Bottom.FrameLineStyle.Color = ink;
        Plot.Grid.MajorLineColor = line;
        Plot.Grid.MajorLineWidth = 1;
        Plot.Grid.XAxisStyle.MajorLineStyle.Width = 0;
    }
}
