using ScottPlot;
using SkiaSharp;
using Thermal.Air;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Charts;

/// <summary>Temperature and dew point over the depth of a build-up: the engineer's view. Room at the left, outside at the right.</summary>
public static class TemperatureAndDewPoint
{
    private const float Edge = 16, AxesPx = 108;

    /// <summary>Draws it.</summary>
    /// <param name="cut">The build-up on one night.</param>
    /// <param name="palette">Colours.</param>
    /// <param name="units">Units to write in.</param>
    /// <param name="width">Width, px, 480 or more.</param>
    /// <param name="height">Height, px, without the list of layers that is added below.</param>
    /// <exception cref="ArgumentOutOfRangeException">A width below 480 px.</exception>
    public static Picture Draw(BuildUpCut cut, Palette palette, UnitSet units, int width = 640, int height = 340)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(width, 480);
        Figures figures = Figures.In(units);
        IReadOnlyList<string> names = LayerList.WithThickness(cut, figures);
        int listPx = LayerList.HeightPx(names, width - 2 * Edge);
        return new Picture(width, height + listPx, AltText(cut, figures), Caption(cut, figures), canvas =>
        {
            var sheet = new Sheet(canvas, palette);
            sheet.Ground(width, height + listPx);
            DrawGraph(sheet, SKRect.Create(width, height), cut, figures);
            LayerList.Draw(sheet, names, Edge, height, width - 2 * Edge);
        });
    }

    private static void DrawGraph(Sheet sheet, SKRect area, BuildUpCut cut, Figures figures)
    {
        double Depth(double metres) => figures.Convert(Shown.Thickness, metres);
        double Degrees(double celsius) => figures.Convert(Shown.Temperature, celsius);
        double[] faces = [0, .. cut.Layers.Select((_, i) => Depth(cut.Layers.Take(i + 1).Sum(layer => layer.ThicknessM)))];
        double total = faces[^1], air = total * 0.05;
        double[] temperatures = [Degrees(cut.InsideC), .. cut.TemperaturesAtFacesC.Select(Degrees), Degrees(cut.OutsideC)];
        double[] depths = [-air, .. faces, total + air];
        IReadOnlyList<VapourSample> vapour = VapourLine.Of(cut);
        double[] dewPoints = [.. vapour.Select(sample => Degrees(DewPoint.OfPressureC(sample.PressurePa)))];
        double roomDewPoint = Degrees(cut.ReachingDewPointsC[0]!.Value);
        double[] all = [.. temperatures, .. dewPoints, roomDewPoint];
        AxisScale across = AxisScale.Exact($"depth from the room, {figures.Unit(Shown.Thickness)}", -air, total + air);
        across = across with { Ticks = [.. across.Ticks.Where(tick => tick.At >= 0 && tick.At <= total)] };
        AxisScale up = AxisScale.Rounded($"temperature, {figures.Unit(Shown.Temperature)}", all.Min(), all.Max());

        using var frame = new Frame(sheet, area, across, up, new PixelPadding(56, AxesPx + 34, 46, 84));
        for (int i = 0; i < cut.Layers.Count; i++)
            sheet.Area(new SKRect(frame.AcrossPx(faces[i]), frame.Data.Top, frame.AcrossPx(faces[i + 1]), frame.Data.Bottom), Texture.Ground(sheet.Palette, cut.Layers[i].Group), 0.45f);
        double[] reached = [.. faces.Take(cut.LastReachedFace + 1)];
        (double[] wetDepths, double[] wetTemperatures) = BelowDewPoint(reached, [.. temperatures.Skip(1).Take(reached.Length)], roomDewPoint);
        if (wetDepths.Length > 1)
            frame.Band(wetDepths, wetTemperatures, [.. wetDepths.Select(_ => roomDewPoint)], sheet.Palette.Water[2]);
        frame.Line(depths, temperatures, sheet.Palette.Ink, 2.6f);
        frame.Render($"{Grammar.Capital(cut.Name)}: temperature and dew point");

        foreach (double face in faces)
            sheet.Line(frame.AcrossPx(face), frame.Data.Top, frame.AcrossPx(face), frame.Data.Bottom, sheet.Palette.Ink, 1, 0.25f);
        SKPoint roomEnd = frame.At(reached.Length > 1 ? reached[^1] : air / 2, roomDewPoint);
        sheet.DashedLine([frame.At(-air, roomDewPoint), roomEnd], sheet.Palette.Ink, 1.6f, 9, 4);
        SKPoint[] diffusion = [.. vapour.Select((sample, i) => frame.At(faces[sample.Layer] + sample.Part * (faces[sample.Layer + 1] - faces[sample.Layer]), dewPoints[i]))];
        sheet.DashedLine(diffusion, sheet.Palette.Ink, 1.6f, 2, 3);
        LayerList.DrawNumbers(sheet, frame.Data, [.. faces.Select(frame.AcrossPx)]);
        LineLabel.Draw(sheet, frame.Data,
        [
            new LineLabel("temperature", frame.At(total + air, temperatures[^1])),
            new LineLabel("dew point\nby diffusion", diffusion[^1]),
            new LineLabel("dew point\nof room air", roomEnd),
        ]);
    }

    // The places where the temperature lies below the room's dew point, the crossings put in.
    private static (double[] Depths, double[] Temperatures) BelowDewPoint(double[] depths, double[] temperatures, double dewPoint)
    {
        List<double> xs = [], ys = [];
        for (int i = 0; i < depths.Length; i++)
        {
            if (i > 0 && (temperatures[i] - dewPoint) * (temperatures[i - 1] - dewPoint) < 0)
            {
                double part = (dewPoint - temperatures[i - 1]) / (temperatures[i] - temperatures[i - 1]);
                xs.Add(depths[i - 1] + part * (depths[i] - depths[i - 1]));
                ys.Add(dewPoint);
            }
            if (temperatures[i] <= dewPoint)
            {
                xs.Add(depths[i]);
                ys.Add(temperatures[i]);
            }
        }
        return ([.. xs], [.. ys]);
    }

    private static string Caption(BuildUpCut cut, Figures figures)
    {
        int face = cut.WorstFace;
        string found = cut.SpareAtFaceK(face) >= 0 ? "above" : "below";
        return $"Room air has its dew point at {figures.Temperature(cut.ReachingDewPointsC[0]!.Value)} and gets as far as {CutWords.FaceName(cut, cut.LastReachedFace)}; "
            + $"{CutWords.FaceName(cut, face)} is at {figures.Temperature(cut.TemperaturesAtFacesC[face])}, {found} it.";
    }

    private static string AltText(BuildUpCut cut, Figures figures) => string.Concat(
        $"{Grammar.Capital(cut.Name)}: temperature over depth falls from {figures.Temperature(cut.InsideC)} in the {cut.InsideName} to {figures.Temperature(cut.OutsideC)} outside; ",
        $"at the faces from the room outwards it is {string.Join(", ", cut.TemperaturesAtFacesC.Select(figures.Temperature))}. ",
        Caption(cut, figures));
}
