namespace Thermal.Moisture;

/// <summary>Water at the planes of a build-up while it settles and dries at steady rates.</summary>
internal static class HeldWater
{
    /// <summary>Moves the water on to the end of a time or to the moment the first plane runs dry; returns the time taken, s.</summary>
    /// <param name="leftS">Time left, s.</param>
    /// <param name="heldKgPerM2">Water at the nodes; ends are not read. Moved on.</param>
    /// <param name="ratesKgPerM2S">What settles (positive) or leaves (negative) at them.</param>
    internal static double Advance(double leftS, Span<double> heldKgPerM2, ReadOnlySpan<double> ratesKgPerM2S)
    {
        double stepS = leftS;
        int dries = -1;
        for (int node = 1; node < heldKgPerM2.Length - 1; node++)
        {
            if (ratesKgPerM2S[node] >= 0 || heldKgPerM2[node] + ratesKgPerM2S[node] * stepS > 0) continue;
            stepS = heldKgPerM2[node] / -ratesKgPerM2S[node];
            dries = node;
        }
        for (int node = 1; node < heldKgPerM2.Length - 1; node++)
        {
            double endKgPerM2 = heldKgPerM2[node] + ratesKgPerM2S[node] * stepS;
            heldKgPerM2[node] = node == dries || endKgPerM2 < 0 ? 0 : endKgPerM2; // below zero by rounding only: a tie with the plane that dries
        }
        return stepS;
    }
}
