using SkiaSharp;
using Thermal.Words;

namespace Thermal.Charts;

/// <summary>The words and small signs that both attitudes of a cut share.</summary>
internal static class CutWords
{
    internal static string Outside(BuildUpCut cut, Figures figures) => $"{cut.OutsideName}, {figures.Temperature(cut.OutsideC)}";

    internal static string Inside(BuildUpCut cut, Figures figures) => $"{InsideAir(cut, figures)}: {InsideDewPoint(cut, figures)}";

    internal static string InsideAir(BuildUpCut cut, Figures figures) =>
        $"{cut.InsideName}, {figures.Temperature(cut.InsideC)}, {figures.Percent(cut.InsideHumidityFraction)}";

    internal static string InsideDewPoint(BuildUpCut cut, Figures figures) => $"dew point {figures.Temperature(cut.ReachingDewPointsC[0]!.Value)}";

    internal const string LaneTitleStart = "degrees to spare";

    internal static string LaneTitleEnd(Figures figures) => $"before it drips, {figures.Unit(Shown.Difference)}";

    /// <summary>What happens at a face: how much is to spare, or that it drips or freezes.</summary>
    internal static string Verdict(BuildUpCut cut, Figures figures, int face)
    {
        double spareK = cut.SpareAtFaceK(face)!.Value;
        string figure = figures.Signed(Shown.Difference, spareK);
        return spareK >= 0 ? $"{figure} to spare" : $"{figure}: {Wetting(cut, face)}";
    }

    internal static string Wetting(BuildUpCut cut, int face) => cut.TemperaturesAtFacesC[face] < 0 ? "freezes" : "drips";

    /// <summary>Where the room's air ends, seen from the room.</summary>
    internal static string AirStops(BuildUpCut cut) => cut.LastReachedFace == cut.Layers.Count
        ? "room air gets right through"
        : $"room air stops at {Lowered(cut.Layers[cut.LastReachedFace].Name)}";

    /// <summary>A face by the layers it lies between, seen from the room.</summary>
    internal static string FaceName(BuildUpCut cut, int face) => face == 0
        ? "the face towards the room"
        : face == cut.Layers.Count
            ? "the outer face"
            : $"the face between {Lowered(cut.Layers[face - 1].Name)} and {Lowered(cut.Layers[face].Name)}";

    /// <summary>A name inside a sentence: its capital comes down unless the word is an abbreviation.</summary>
    internal static string Lowered(string name) =>
        name.Length > 1 && char.IsUpper(name[0]) && char.IsLower(name[1]) ? char.ToLowerInvariant(name[0]) + name[1..] : name;

    /// <summary>Two slanted strokes over the edge of a layer that is drawn thicker than to scale.</summary>
    internal static void DrawBreak(Sheet sheet, float x, float y, bool isLyingFlat)
    {
        foreach (float shift in (ReadOnlySpan<float>)[-2.5f, 2.5f])
        {
            float cx = isLyingFlat ? x : x + shift, cy = isLyingFlat ? y + shift : y;
            sheet.Line(cx - 5, cy + 3.5f, cx + 5, cy - 3.5f, sheet.Palette.Card, 4);
            sheet.Line(cx - 5, cy + 3.5f, cx + 5, cy - 3.5f, sheet.Palette.Ink, 1.4f);
        }
    }

    /// <summary>What a row of words below the cut takes, px.</summary>
    internal const float RowPx = 17;

    /// <summary>The scale of the layers and the remarks below a cut; of a drawn rib in a row above it.</summary>
    internal static void DrawFootnote(Sheet sheet, BuildUpCut cut, Figures figures, DepthScale depths, float left, float right, float baseline)
    {
        float x = left;
        double shownPerM = figures.Convert(Shown.Thickness, 1);
        double lengthM = NiceNumbers.AtMost(90 / depths.PxPerM * shownPerM) / shownPerM;
        float bar = (float)(lengthM * depths.PxPerM), y = baseline - 4;
        sheet.Line(x, y, x + bar, y, sheet.Palette.Ink, 1.4f);
        sheet.Line(x, y - 4, x, y + 4, sheet.Palette.Ink, 1.4f);
        sheet.Line(x + bar, y - 4, x + bar, y + 4, sheet.Palette.Ink, 1.4f);
        x += bar + 8;
        string text = figures.Thickness(lengthM);
        sheet.Text(text, x, baseline, Lettering.Small, sheet.Palette.Muted);
        x += Lettering.Small.WidthOf(text) + 14;
        if (depths.IsStretched.Contains(true))
        {
            DrawBreak(sheet, x + 5, y, isLyingFlat: false);
            sheet.Text("drawn thicker than it is", x + 18, baseline, Lettering.Small, sheet.Palette.Muted);
            x += 18 + Lettering.Small.WidthOf("drawn thicker than it is") + 14;
        }
        if (cut.RibsNotDrawn.Length > 0)
            sheet.Text(Lettering.Small.Fitting($"not drawn: {cut.RibsNotDrawn}", right - x), x, baseline, Lettering.Small, sheet.Palette.Muted);
        if (cut.Rib is { } rib)
            sheet.Text(Lettering.Small.Fitting(RibInCut.Words(rib, figures), right - left), left, baseline - RowPx, Lettering.Small, sheet.Palette.Muted);
    }
}
