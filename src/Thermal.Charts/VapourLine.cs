using Thermal.Air;

namespace Thermal.Charts;

/// <summary>The line of vapour pressure between the faces, fine enough to draw.</summary>
/// <remarks>
/// The pressures at the faces are given. Between them the line is that of the method: a string from face to face over s_d, pulled
/// tight below the curve of saturation. Where it lies against the curve, vapour settles within the layer.
/// </remarks>
internal static class VapourLine
{
    private const int PartsPerLayer = 24;

    // Pressures at wet faces were set equal to saturation; this only allows for rounding.
    private const double SaturatedWithin = 1e-6;

    internal static IReadOnlyList<VapourSample> Of(BuildUpCut cut)
    {
        List<VapourSample> samples = [];
        // Where dew or frost lies on the outer face under a clear sky, the skin below is saturated from outside; no water of the room settles there.
        bool isOutermostFrosted = cut.VapourPressuresAtFacesPa[^1] >= SaturationPressure.PairPa(cut.TemperaturesAtFacesC[^1]);
        for (int layer = 0; layer < cut.Layers.Count; layer++)
        {
            double[] saturations = [.. Enumerable.Range(0, PartsPerLayer + 1).Select(k => SaturationPressure.PairPa(Between(
                cut.TemperaturesAtFacesC[layer], cut.TemperaturesAtFacesC[layer + 1], (double)k / PartsPerLayer)))];
            double[] pressures = Tight(cut.VapourPressuresAtFacesPa[layer], cut.VapourPressuresAtFacesPa[layer + 1], saturations);
            for (int k = layer == 0 ? 0 : 1; k <= PartsPerLayer; k++)
            {
                bool isInside = (layer > 0 || k > 0) && !(isOutermostFrosted && layer == cut.Layers.Count - 1 && k > 0) && !(layer == cut.Layers.Count - 1 && k == PartsPerLayer);
                bool isWet = isInside && cut.SettlesByDiffusionGPerM2 > 0 && pressures[k] >= saturations[k] * (1 - SaturatedWithin);
                samples.Add(new VapourSample(layer, (double)k / PartsPerLayer, pressures[k], saturations[k], isWet));
            }
        }
        return samples;
    }

    /// <summary>The wet places in words, seen from the room: a face, a zone within a layer, or from a face outwards.</summary>
    internal static IReadOnlyList<string> WetPlaces(BuildUpCut cut, IReadOnlyList<VapourSample> samples)
    {
        List<string> places = [];
        for (int i = 0; i < samples.Count; i++)
        {
            if (!samples[i].IsWet || (i > 0 && samples[i - 1].IsWet))
                continue;
            VapourSample first = samples[i];
            bool isAlone = i + 1 == samples.Count || !samples[i + 1].IsWet;
            places.Add(first.Part < 1
                ? $"within {CutWords.Lowered(cut.Layers[first.Layer].Name)}"
                : $"{(isAlone ? "at" : "from")} {CutWords.FaceName(cut, first.Layer + 1)}{(isAlone ? "" : " outwards")}");
        }
        return places;
    }

    // The lower hull of both ends and the saturation between them is the string pulled tight.
    private static double[] Tight(double innerPa, double outerPa, double[] saturations)
    {
        int last = saturations.Length - 1;
        double[] heights = [.. saturations];
        (heights[0], heights[last]) = (innerPa, outerPa);
        List<int> hull = [];
        for (int i = 0; i <= last; i++)
        {
            while (hull.Count > 1 && IsAbove(heights, hull[^2], hull[^1], i))
                hull.RemoveAt(hull.Count - 1);
            hull.Add(i);
        }
        double[] pressures = new double[last + 1];
        for (int h = 0; h + 1 < hull.Count; h++)
            for (int i = hull[h]; i <= hull[h + 1]; i++)
                pressures[i] = Between(heights[hull[h]], heights[hull[h + 1]], (double)(i - hull[h]) / (hull[h + 1] - hull[h]));
        return pressures;
    }

    private static bool IsAbove(double[] heights, int left, int middle, int right) =>
        heights[middle] >= Between(heights[left], heights[right], (double)(middle - left) / (right - left));

    private static double Between(double from, double to, double part) => from + part * (to - from);
}
