using SkiaSharp;
using Thermal.Bridges;
using Thermal.Materials;
using Thermal.Words;

namespace Thermal.Charts;

/// <summary>The section itself: steps of temperature, pieces, surfaces, ways of the heat, lines of equal temperature and the dew point among them.</summary>
internal sealed class SectionDrawing
{
    // Sheets of metal thinner than this are drawn as metal: no step of temperature could be seen in them. Source: OURS.
    private const double SheetPx = 5;
    private const int WaysCount = 15;

    private readonly SectionOnNight night;
    private readonly Figures figures;
    private readonly SectionCells cells;
    private readonly SectionLayout layout;
    private readonly bool[] isShown;
    private readonly IReadOnlyList<(int Step, IReadOnlyList<SKPoint[]> Outlines)> areas;
    private readonly IReadOnlyList<(double Level, IReadOnlyList<SKPoint[]> Lines)> isotherms;
    private readonly IReadOnlyList<SKPoint[]> ways, dewLines, sheets;
    private readonly IReadOnlyList<(MaterialGroup Group, IReadOnlyList<SKPoint[]> Outlines)> textures;
    private readonly SectionSurfaces surfaces;

    internal SectionDrawing(SectionOnNight night, Figures figures, SectionCells cells, SectionLayout layout)
    {
        (this.night, this.figures, this.cells, this.layout) = (night, figures, cells, layout);
        isShown = [.. Enumerable.Range(0, cells.Pieces.Length).Select(IsShown)];
        ContourGrid field = Field(isShown);
        (double low, double high) = field.Span();
        Steps = FieldSteps.Of(low, high);
        areas = [(0, field.Areas(double.NegativeInfinity)), .. Steps.Borders.Select((border, k) => (k + 1, field.Areas(border)))];
        isotherms = [.. Steps.Borders.Select(border => (border, field.Lines(border)))];
        dewLines = field.Lines(figures.Convert(Shown.Temperature, night.DewPointC));
        ways = WaysOf(HeatWays.Of(cells, layout.View.At, isShown));
        surfaces = new SectionSurfaces(cells, layout.View, isShown);
        sheets = Field([.. isShown.Select((shown, cell) => shown && IsSheet(cells.Pieces[cell]!))]).Areas(double.NegativeInfinity);
        textures = [.. cells.Pieces.OfType<Piece>().Distinct().Where(piece => !IsSheet(piece)).Select(piece =>
            (night.GroupOf(piece), Field([.. isShown.Select((shown, cell) => shown && cells.Pieces[cell] == piece)]).Areas(double.NegativeInfinity)))];
        Wet = surfaces.Below(night.DewPointC);
    }

    internal FieldSteps Steps { get; }
    internal IReadOnlyList<SKPoint[]> Wet { get; }
    internal bool HasDewLine => dewLines.Count > 0;
    internal bool HasSheets => sheets.Count > 0;
    internal bool HasWays => ways.Count > 0;
    internal bool HasCuts => surfaces.Of("").Count > 0;

    private SKRect Box => layout.View.Box;

    internal void Draw(Sheet sheet)
    {
        sheet.Canvas.Save();
        sheet.Canvas.ClipRect(Box);
        foreach ((int step, IReadOnlyList<SKPoint[]> outlines) in areas)
            sheet.Areas(outlines, Steps.Colour(sheet.Palette, step));
        foreach ((MaterialGroup group, IReadOnlyList<SKPoint[]> outlines) in textures)
            DrawTexture(sheet, group, outlines);
        foreach (SKPoint[] line in Seams())
            sheet.Polyline(line, sheet.Palette.Ink, 1, 0.4f);
        foreach ((_, IReadOnlyList<SKPoint[]> lines) in isotherms)
            foreach (SKPoint[] line in lines)
                sheet.Polyline(line, sheet.Palette.Ink, 1, 0.55f);
        foreach (SKPoint[] way in ways)
            DrawWay(sheet, way);
        sheet.Areas(sheets, sheet.Palette.Metal);
        foreach (SKPoint[] line in dewLines)
            DewLine(sheet, line);
        DrawSurfaces(sheet);
        sheet.Canvas.Restore();
        SectionEnds.Draw(sheet, cells, layout);
        DrawLabels(sheet);
    }

    internal static void Way(Sheet sheet, IReadOnlyList<SKPoint> way)
    {
        sheet.Polyline(way, sheet.Palette.Card, 2.6f, 0.6f);
        sheet.DashedLine(way, sheet.Palette.Ink, 1, 2, 2.5f);
    }

    internal static void DewLine(Sheet sheet, IReadOnlyList<SKPoint> line)
    {
        sheet.Polyline(line, sheet.Palette.Card, 5);
        sheet.DashedLine(line, sheet.Palette.Ink, 2.6f, 12, 3);
    }

    internal static void Surface(Sheet sheet, IReadOnlyList<SKPoint> line, string environment)
    {
        if (environment == DetailSection.Room)
            sheet.Polyline(line, sheet.Palette.Ink, 2.2f);
        else if (environment.Length > 0)
            sheet.DashedLine(line, sheet.Palette.Ink, 2.2f, 10, 4);
        else
            sheet.DashedLine(line, sheet.Palette.Ink, 2.2f, 2, 4);
    }

    private ContourGrid Field(bool[] isIn)
    {
        int columns = cells.XsM.Length;
        double[] shown = [.. cells.TemperaturesC.Select(celsius => figures.Convert(Shown.Temperature, celsius))];
        SKPoint[] at = [.. Enumerable.Range(0, shown.Length).Select(k => layout.View.At(cells.XsM[k % columns], cells.YsM[k / columns]))];
        return new ContourGrid(at, columns, shown, isIn);
    }

    private bool IsShown(int cell)
    {
        int i = cell % cells.Across, j = cell / cells.Across;
        SKPoint one = layout.View.At(cells.XsM[i], cells.YsM[j]), other = layout.View.At(cells.XsM[i + 1], cells.YsM[j + 1]);
        var area = new SKRect(Math.Min(one.X, other.X), Math.Min(one.Y, other.Y), Math.Max(one.X, other.X), Math.Max(one.Y, other.Y));
        return cells.Pieces[cell] is not null && SKRect.Inflate(Box, 0.01f, 0.01f).IntersectsWith(area);
    }

    private bool IsSheet(Piece piece) => night.GroupOf(piece) == MaterialGroup.Metal
        && Math.Min(piece.Where.X1M - piece.Where.X0M, piece.Where.Y1M - piece.Where.Y0M) * layout.View.PxPerM < SheetPx;

    private static IReadOnlyList<SKPoint[]> WaysOf(ContourGrid function)
    {
        (double low, double high) = function.Span();
        // Where nothing flows there is only rounding.
        return high - low > 1e-6
            ? [.. Enumerable.Range(0, WaysCount).SelectMany(k => function.Lines(low + (k + 0.5) / WaysCount * (high - low)))]
            : [];
    }

    // Lines between pieces of different name, along the lines of the grid.
    private IEnumerable<SKPoint[]> Seams()
    {
        int columns = cells.XsM.Length;
        List<(int From, int To)> seams = [];
        for (int cell = 0; cell < isShown.Length; cell++)
        {
            int corner = cell % cells.Across + cell / cells.Across * columns;
            if (cell % cells.Across + 1 < cells.Across && IsSeam(cell, cell + 1))
                seams.Add((corner + 1, corner + 1 + columns));
            if (cell + cells.Across < isShown.Length && IsSeam(cell, cell + cells.Across))
                seams.Add((corner + columns, corner + columns + 1));
        }
        return Chain.Of(seams).Select(chain => Simplified.Line([.. chain.Select(k => layout.View.At(cells.XsM[k % columns], cells.YsM[k / columns]))], 0.1f));
    }

    private bool IsSeam(int one, int other) => isShown[one] && isShown[other] && cells.Pieces[one]!.Name != cells.Pieces[other]!.Name;

    private void DrawTexture(Sheet sheet, MaterialGroup group, IReadOnlyList<SKPoint[]> outlines)
    {
        if (outlines.Count == 0)
            return;
        sheet.Canvas.Save();
        using SKPath path = Sheet.PathOf(outlines);
        sheet.Canvas.ClipPath(path);
        Texture.Over(sheet, path.Bounds, group, layout.View.IsLying);
        sheet.Canvas.Restore();
    }

    // High values stand at the left of a line and heat flows towards them crosswise: along the line backwards.
    private static void DrawWay(Sheet sheet, SKPoint[] way)
    {
        Way(sheet, way);
        SKPoint[] tip = Arrow.In([.. way.Reverse()]);
        if (tip.Length > 0)
            sheet.Polyline(tip, sheet.Palette.Ink, 1.2f);
    }

    private void DrawSurfaces(Sheet sheet)
    {
        string[] environments = [.. night.Solved.Loss.Environments, ""];
        foreach (string environment in environments)
            foreach (SKPoint[] line in surfaces.Of(environment))
                Surface(sheet, line, environment);
        foreach (SKPoint[] line in Wet)
            sheet.Polyline(line, sheet.Palette.Water[3], 5);
    }

    private void DrawLabels(Sheet sheet)
    {
        var places = new FreePlaces(layout.LabelBox);
        foreach (SKPoint[] line in isotherms.SelectMany(isotherm => isotherm.Lines).Concat(dewLines).Concat(sheets).Concat(surfaces.Of(DetailSection.Room)).Concat(surfaces.Of(DetailSection.Outside)).Concat(Wet))
            places.Avoid(line);
        SurfacePoint coldest = night.Solved.ColdestAt;
        new SectionLabels(sheet, figures, places).Draw(layout.View, layout.View.At(coldest.XM, coldest.YM), night, dewLines, isotherms, Steps);
    }
}
