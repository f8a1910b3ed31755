namespace Thermal.Charts;

/// <summary>Moves labels apart along a line, each as little as needed, in their order.</summary>
internal static class Spread
{
    /// <param name="wantedPx">Where the middle of each label should be, ascending, px.</param>
    /// <param name="sizesPx">Size of each label along the line, gap included, px.</param>
    /// <param name="lowPx">Where the first may begin.</param>
    /// <param name="highPx">Where the last must end; where the labels are longer together they run over it evenly on both sides.</param>
    /// <returns>Middles, px.</returns>
    internal static float[] Apart(IReadOnlyList<float> wantedPx, IReadOnlyList<float> sizesPx, float lowPx, float highPx)
    {
        float[] middles = [.. wantedPx];
        float over = Math.Max(0, sizesPx.Sum() - (highPx - lowPx)) / 2;
        (lowPx, highPx) = (lowPx - over, highPx + over);
        float end = lowPx;
        for (int i = 0; i < middles.Length; i++)
        {
            middles[i] = Math.Max(middles[i], end + sizesPx[i] / 2);
            end = middles[i] + sizesPx[i] / 2;
        }
        float start = highPx;
        for (int i = middles.Length - 1; i >= 0; i--)
        {
            middles[i] = Math.Min(middles[i], start - sizesPx[i] / 2);
            start = middles[i] - sizesPx[i] / 2;
        }
        return middles;
    }
}
