using ScottPlot;
using SkiaSharp;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Charts;

/// <summary>Vapour pressure and its saturation over the diffusion thickness s_d of a build-up: where the two meet, vapour settles.</summary>
/// <remarks>Both are straight or smooth over s_d, so the picture shows the method itself. Tight skins are drawn shortened, with a break.</remarks>
public static class VapourPressureOverDiffusion
{
    private const float Edge = 16;

    // Less would be written as 0.0, which is not what is meant.
    private const double LeastWrittenGPerM2 = 0.1;

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
        double Shown(double pressurePa) => figures.Convert(Words.Shown.VapourPressure, pressurePa);
        double[] faces = DiffusionScale.Faces(cut.Layers);
        IReadOnlyList<VapourSample> samples = VapourLine.Of(cut);
        double[] places = [.. samples.Select(sample => faces[sample.Layer] + sample.Part * (faces[sample.Layer + 1] - faces[sample.Layer]))];
        AxisScale up = AxisScale.Rounded($"vapour pressure, {figures.Unit(Words.Shown.VapourPressure)}", 0, samples.Max(sample => Shown(Math.Max(sample.PressurePa, sample.SaturationPa))));
        AxisScale across = AxisScale.Bare($"from the room outwards: s_d of each layer, {figures.Unit(Words.Shown.DiffusionThickness)} of still air", 0, 1);

        using var frame = new Frame(sheet, area, across, up, new PixelPadding(60, 142, 46, 84));
        for (int i = 0; i < cut.Layers.Count; i++)
            sheet.Area(new SKRect(frame.AcrossPx(faces[i]), frame.Data.Top, frame.AcrossPx(faces[i + 1]), frame.Data.Bottom), Texture.Ground(sheet.Palette, cut.Layers[i].Group), 0.45f);
        frame.Line(places, samples.Select(sample => Shown(sample.PressurePa)), sheet.Palette.Ink, 2.6f);
        frame.Render($"{Grammar.Capital(cut.Name)}: vapour pressure by diffusion");

        foreach (double face in faces)
            sheet.Line(frame.AcrossPx(face), frame.Data.Top, frame.AcrossPx(face), frame.Data.Bottom, sheet.Palette.Ink, 1, 0.25f);
        DrawThicknesses(sheet, frame, cut, faces, figures);
        SKPoint[] saturation = [.. samples.Select((sample, i) => frame.At(places[i], Shown(sample.SaturationPa)))];
        sheet.DashedLine(saturation, sheet.Palette.Ink, 1.6f, 9, 4);
        DrawWet(sheet, frame, samples, saturation);
        string settles = samples.Any(sample => sample.IsWet) ? $"{Settles(cut, figures)} a night settles where marked" : "nothing settles by diffusion";
        sheet.TextWithin(frame.Data, settles, frame.Data.MidX, frame.Data.Top + 16, Lettering.Value, sheet.Palette.Ink);
        LayerList.DrawNumbers(sheet, frame.Data, [.. faces.Select(frame.AcrossPx)]);
        LineLabel.Draw(sheet, frame.Data, [new LineLabel("saturation", saturation[^1]), new LineLabel("vapour", frame.At(1, Shown(samples[^1].PressurePa)))]);
    }

    // Below each layer its own s_d; shortened layers carry the sign of the break.
    private static void DrawThicknesses(Sheet sheet, Frame frame, BuildUpCut cut, double[] faces, Figures figures)
    {
        IReadOnlyList<bool> isShortened = DiffusionScale.IsShortened(cut.Layers);
        string[] texts = [.. cut.Layers.Select(layer => figures.Number(Words.Shown.DiffusionThickness, layer.DiffusionThicknessM))];
        float[] wanted = [.. texts.Select((_, i) => frame.AcrossPx((faces[i] + faces[i + 1]) / 2))];
        float[] middles = Spread.Apart(wanted, [.. texts.Select(text => Lettering.Small.WidthOf(text) + 8)], frame.Data.Left - 12, frame.Data.Right + 12);
        for (int i = 0; i < texts.Length; i++)
        {
            sheet.Line(wanted[i], frame.Data.Bottom, middles[i], frame.Data.Bottom + 8, sheet.Palette.Muted);
            sheet.Text(texts[i], middles[i], frame.Data.Bottom + 20, Lettering.Small, sheet.Palette.Muted, SKTextAlign.Center);
            if (isShortened[i])
                CutWords.DrawBreak(sheet, wanted[i], frame.Data.Bottom, isLyingFlat: false);
        }
    }

    // A wet face is a dot with a line down to the axis, a wet zone a thick stroke along the curve.
    private static void DrawWet(Sheet sheet, Frame frame, IReadOnlyList<VapourSample> samples, SKPoint[] places)
    {
        for (int i = 0; i < places.Length; i++)
        {
            if (!samples[i].IsWet)
                continue;
            bool wasWet = i > 0 && samples[i - 1].IsWet, staysWet = i + 1 < places.Length && samples[i + 1].IsWet;
            if (staysWet)
                sheet.Line(places[i].X, places[i].Y, places[i + 1].X, places[i + 1].Y, sheet.Palette.Water[3], 6);
            if (wasWet && staysWet)
                continue;
            sheet.Line(places[i].X, places[i].Y, places[i].X, frame.Data.Bottom, sheet.Palette.Water[3], 2);
            sheet.Dot(places[i].X, places[i].Y, 4.5f, sheet.Palette.Water[3]);
        }
    }

    private static string Caption(BuildUpCut cut, Figures figures)
    {
        IReadOnlyList<string> places = VapourLine.WetPlaces(cut, VapourLine.Of(cut));
        return places.Count == 0
            ? "By diffusion alone the vapour stays below saturation: nothing settles inside. Air through gaps is counted apart."
            : $"By diffusion alone {Settles(cut, figures)} settles in the night {Listed(places)}. Air through gaps is counted apart.";
    }

    private static string Settles(BuildUpCut cut, Figures figures) => cut.SettlesByDiffusionGPerM2 < LeastWrittenGPerM2
        ? $"less than {figures.GramsPerArea(LeastWrittenGPerM2)}"
        : figures.GramsPerArea(cut.SettlesByDiffusionGPerM2);

    private static string Listed(IReadOnlyList<string> places) => places.Count <= 2
        ? Grammar.List(places)
        : $"{places.Count} places, the first of them {places[0]}";

    private static string AltText(BuildUpCut cut, Figures figures) => string.Concat(
        $"{Grammar.Capital(cut.Name)}: vapour pressure falls from {figures.Write(Words.Shown.VapourPressure, cut.VapourPressuresAtFacesPa[0])} at the room to ",
        $"{figures.Write(Words.Shown.VapourPressure, cut.VapourPressuresAtFacesPa[^1])} outside over a diffusion thickness of ",
        $"{figures.Write(Words.Shown.DiffusionThickness, cut.Layers.Sum(layer => layer.DiffusionThicknessM))}. {Caption(cut, figures)}");
}
