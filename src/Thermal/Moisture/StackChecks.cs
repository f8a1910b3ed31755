namespace Thermal.Moisture;

/// <summary>The range checks that the moisture methods share; every limit is chosen by us.</summary>
internal static class StackChecks
{
    internal static void Layers(ReadOnlySpan<double> resistancesM2KPerW, ReadOnlySpan<double> diffusionThicknessesM)
    {
        if (resistancesM2KPerW.Length != diffusionThicknessesM.Length)
            throw new ArgumentException("Each layer needs one thermal resistance and one s_d: the two lists differ in length.", nameof(diffusionThicknessesM));
        Guard.InRange(resistancesM2KPerW.Length, 1, VapourNodes.MostLayers, "layers", "layer count");
        double resistanceM2KPerW = 0, diffusionThicknessM = 0;
        foreach (double resistance in resistancesM2KPerW)
            resistanceM2KPerW += Guard.InRange(resistance, 0, 100, "m²·K/W", nameof(resistancesM2KPerW));
        foreach (double diffusionThickness in diffusionThicknessesM)
            diffusionThicknessM += Guard.InRange(diffusionThickness, 0, 1e6, "m", nameof(diffusionThicknessesM));
        Guard.InRange(resistanceM2KPerW, 1e-6, 1e3, "m²·K/W in all", nameof(resistancesM2KPerW));
        Guard.InRange(diffusionThicknessM, 1e-6, 1e9, "m in all", nameof(diffusionThicknessesM));
    }

    internal static void Air(double insideC, double outsideC, double insidePa, double outsidePa, double permeabilityKgPerMSPa)
    {
        Guard.InRange(insideC, -60, 60, "°C");
        Guard.InRange(outsideC, -60, 60, "°C");
        Guard.InRange(insidePa, 0, 20_000, "Pa");
        Guard.InRange(outsidePa, 0, 20_000, "Pa");
        Guard.InRange(permeabilityKgPerMSPa, 1e-10, 1e-9, "kg/(m·s·Pa)");
    }
}
