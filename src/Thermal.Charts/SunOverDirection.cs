using ScottPlot;
using SkiaSharp;
using Thermal.Climates;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Charts;

/// <summary>The sun's height over its direction on some days of the year, above the horizon where the vehicle stands.</summary>
public static class SunOverDirection
{
    private const double HalfTurnDeg = 180, HighestDeg = 90;

    /// <summary>Draws it.</summary>
    /// <param name="name">Name of the place.</param>
    /// <param name="paths">The days, at least one.</param>
    /// <param name="horizonDeg">Height of hills, trees or houses all round, degrees, 0 to 80.</param>
    /// <param name="palette">Colours.</param>
    /// <param name="units">Units to write in.</param>
    /// <param name="width">Width, px, 480 or more.</param>
    /// <param name="height">Height, px, 280 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A picture too small, or no day.</exception>
    public static Picture Draw(string name, IReadOnlyList<SunPath> paths, double horizonDeg, Palette palette, UnitSet units, int width = 640, int height = 360)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(width, 480);
        ArgumentOutOfRangeException.ThrowIfLessThan(height, 280);
        ArgumentOutOfRangeException.ThrowIfLessThan(paths.Count, 1);
        Figures figures = Figures.In(units);
        string caption = string.Join(" ", paths.Select(path => Sentence(path, horizonDeg, figures)));
        return new Picture(width, height, $"{name}, height of the sun over its direction. {caption}", caption, canvas =>
        {
            var sheet = new Sheet(canvas, palette);
            sheet.Ground(width, height);
            DrawPaths(sheet, SKRect.Create(width, height), name, paths, horizonDeg, figures);
        });
    }

    private static void DrawPaths(Sheet sheet, SKRect area, string name, IReadOnlyList<SunPath> paths, double horizonDeg, Figures figures)
    {
        // The picture looks to where the sun stands at noon in the middle of the year's swing: south, or north in the southern half of the world.
        double centreDeg = paths.Count(path => Math.Abs(Noon(path).AzimuthDeg - HalfTurnDeg) < 90) * 2 >= paths.Count ? HalfTurnDeg : 0;
        double most = Math.Min(HighestDeg, Math.Max(Math.Max(paths.Max(path => path.HighestDeg), horizonDeg) + 10, 20));
        AxisScale across = AxisScale.Bare("direction", -HalfTurnDeg, HalfTurnDeg) with { Ticks = [.. Enumerable.Range(-4, 9).Select(i => (i * 45.0, Letters(centreDeg + i * 45)))] };
        AxisScale up = AxisScale.Rounded("height above the flat horizon, °", 0, most);
        using var frame = new Frame(sheet, area, across, up, new PixelPadding(48, 24, 48, 62));
        if (horizonDeg > 0)
            frame.Band([-HalfTurnDeg, HalfTurnDeg], [0, 0], [horizonDeg, horizonDeg], sheet.Palette.Line);
        frame.Render($"{name}: where the sun stands");
        for (int i = 0; i < paths.Count; i++)
            foreach (IReadOnlyList<SKPoint> run in Runs(paths[i], centreDeg, frame))
                sheet.Polyline(run, sheet.Palette.Ink, 2.2f);
        if (horizonDeg > 0)
        {
            sheet.Line(frame.Data.Left, frame.UpPx(horizonDeg), frame.Data.Right, frame.UpPx(horizonDeg), sheet.Palette.Ink, 1.4f);
            sheet.TextWithin(frame.Data, $"horizon {figures.Write(Shown.Angle, horizonDeg)}", frame.Data.Left, frame.UpPx(horizonDeg) + 16, Lettering.Small, sheet.Palette.Ink);
        }
        foreach (SunPath path in paths.Where(path => path.HighestDeg > 0))
            DrawNoon(sheet, frame, path, centreDeg, figures);
    }

    private static void DrawNoon(Sheet sheet, Frame frame, SunPath path, double centreDeg, Figures figures)
    {
        SunPosition noon = Noon(path);
        SKPoint at = frame.At(Turned(noon.AzimuthDeg, centreDeg), noon.ElevationDeg);
        sheet.Dot(at.X, at.Y, 4, sheet.Palette.Ink);
        sheet.TextWithin(frame.Data, $"{DayName(path)}: {figures.Write(Shown.Angle, noon.ElevationDeg)}", at.X, at.Y - 9, Lettering.Value, sheet.Palette.Ink);
    }

    // The part of the path above the flat horizon, broken where it leaves the picture at one side and comes back at the other.
    private static List<List<SKPoint>> Runs(SunPath path, double centreDeg, Frame frame)
    {
        List<List<SKPoint>> runs = [];
        for (int i = 1; i < path.Positions.Count; i++)
        {
            SunPosition from = path.Positions[i - 1], to = path.Positions[i];
            double x1 = Turned(from.AzimuthDeg, centreDeg), x2 = Turned(to.AzimuthDeg, centreDeg), y1 = from.ElevationDeg, y2 = to.ElevationDeg;
            if ((y1 <= 0 && y2 <= 0) || Math.Abs(x2 - x1) > HalfTurnDeg)
                continue;
            double cut = y1 * y2 < 0 ? y1 / (y1 - y2) : 0;
            SKPoint start = y1 < 0 ? frame.At(x1 + cut * (x2 - x1), 0) : frame.At(x1, y1), end = y2 < 0 ? frame.At(x1 + cut * (x2 - x1), 0) : frame.At(x2, y2);
            if (runs.Count > 0 && runs[^1][^1] == start)
                runs[^1].Add(end);
            else
                runs.Add([start, end]);
        }
        return runs;
    }

    private static SunPosition Noon(SunPath path) => path.Positions.MaxBy(position => position.ElevationDeg);

    private static double Turned(double azimuthDeg, double centreDeg)
    {
        double turned = azimuthDeg - centreDeg;
        return turned > HalfTurnDeg ? turned - 360 : turned;
    }

    private static string Letters(double azimuthDeg) =>
        string.Concat(PlaceWords.Direction((azimuthDeg + 360) % 360).Split('-').Select(part => char.ToUpperInvariant(part[0])));

    private static string DayName(SunPath path) => $"{path.Day.Day} {Grammar.Month(path.Day.Month)}";

    private static string Sentence(SunPath path, double horizonDeg, Figures figures)
    {
        double hours = path.AboveH(horizonDeg);
        if (hours <= 0)
            return $"On {DayName(path)} the sun does not rise above the horizon of {figures.Write(Shown.Angle, horizonDeg)}.";
        string above = hours >= 23.99 ? "all day and night" : figures.Hours(hours);
        return $"On {DayName(path)} it reaches {figures.Write(Shown.Angle, path.HighestDeg)} and stands {above} above the horizon of {figures.Write(Shown.Angle, horizonDeg)}.";
    }
}
