namespace Thermal.Charts;

/// <summary>Where each face of a build-up is drawn: to scale, thin layers at the least width that can be read.</summary>
internal sealed class DepthScale
{
    private readonly IReadOnlyList<CutLayer> layers;
    private readonly double[] facesPx;

    /// <param name="layers">Layers, inside to outside.</param>
    /// <param name="lengthPx">Length of the drawn depth, px.</param>
    /// <param name="leastPx">Least width of a layer, px; layers times this must not exceed the length.</param>
    internal DepthScale(IReadOnlyList<CutLayer> layers, double lengthPx, double leastPx)
    {
        this.layers = layers;
        PxPerM = ScaleOf(layers, lengthPx, leastPx);
        IsStretched = [.. layers.Select(layer => layer.ThicknessM * PxPerM < leastPx)];
        double[] widths = [.. layers.Select(layer => Math.Max(leastPx, layer.ThicknessM * PxPerM))];
        facesPx = new double[layers.Count + 1];
        for (int i = 0; i < widths.Length; i++)
            facesPx[i + 1] = facesPx[i] + widths[i];
    }

    /// <summary>Scale of the layers drawn true, px per metre.</summary>
    internal double PxPerM { get; }

    /// <summary>For each layer: true where it is drawn thicker than to scale.</summary>
    internal IReadOnlyList<bool> IsStretched { get; }

    internal double LengthPx => facesPx[^1];

    /// <summary>Distance of a face from the innermost, px.</summary>
    internal double FacePx(int face) => facesPx[face];

    /// <summary>Distance of a depth from the innermost face, px; within a stretched layer in proportion.</summary>
    /// <param name="depthM">Depth from the inside, m.</param>
    internal double DepthPx(double depthM)
    {
        double reached = 0;
        for (int i = 0; i < layers.Count; i++)
        {
            double thickness = layers[i].ThicknessM;
            if (depthM <= reached + thickness || i == layers.Count - 1)
                return facesPx[i] + (facesPx[i + 1] - facesPx[i]) * (depthM - reached) / thickness;
            reached += thickness;
        }
        return LengthPx;
    }

    // Thin layers take their least width; the rest share what is left, until no more become thin.
    private static double ScaleOf(IReadOnlyList<CutLayer> layers, double lengthPx, double leastPx)
    {
        List<double> toScale = [.. layers.Select(layer => layer.ThicknessM).Order()];
        double leftPx = lengthPx;
        while (toScale.Count > 1 && toScale[0] * leftPx / toScale.Sum() < leastPx)
        {
            toScale.RemoveAt(0);
            leftPx -= leastPx;
        }
        return leftPx / toScale.Sum();
    }
}
