namespace Thermal.Moisture;

/// <summary>A build-up with its thick layers divided, so that water which settles within a layer is found. Lists run inside to outside.</summary>
/// <param name="ResistancesM2KPerW">Thermal resistances of the divided layers, m²·K/W.</param>
/// <param name="DiffusionThicknessesM">s_d of the divided layers, m.</param>
/// <param name="LayerOfPart">The layer, counted from 0, that each part belongs to.</param>
public sealed record FineLayers(double[] ResistancesM2KPerW, double[] DiffusionThicknessesM, IReadOnlyList<int> LayerOfPart)
{
    /// <summary>Largest thermal resistance of one part, m²·K/W. Source: ISO-13788, clause 6.4, from memory.</summary>
    public const double LargestPartM2KPerW = 0.25;

    /// <summary>Divides every layer of more than 0.25 m²·K/W into equal parts; surface films (first and last) stay whole.</summary>
    /// <param name="resistancesM2KPerW">Thermal resistances, films included, m²·K/W, 0 to 100 each.</param>
    /// <param name="diffusionThicknessesM">s_d of the same layers, m, 0 to 1e6 each.</param>
    /// <returns>The divided build-up; sums are unchanged.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the ranges, NaN, or more than 200 parts.</exception>
    /// <exception cref="ArgumentException">The two lists differ in length.</exception>
    /// <remarks>Source: ISO-13788, clause 6.4, from memory.</remarks>
    public static FineLayers Of(ReadOnlySpan<double> resistancesM2KPerW, ReadOnlySpan<double> diffusionThicknessesM)
    {
        StackChecks.Layers(resistancesM2KPerW, diffusionThicknessesM);
        List<double> resistances = [], diffusionThicknesses = [];
        List<int> layers = [];
        for (int layer = 0; layer < resistancesM2KPerW.Length; layer++)
        {
            bool isFilm = layer == 0 || layer == resistancesM2KPerW.Length - 1;
            int parts = isFilm ? 1 : Math.Max(1, (int)Math.Ceiling(resistancesM2KPerW[layer] / LargestPartM2KPerW - 1e-9));
            for (int part = 0; part < parts; part++)
            {
                resistances.Add(resistancesM2KPerW[layer] / parts);
                diffusionThicknesses.Add(diffusionThicknessesM[layer] / parts);
                layers.Add(layer);
            }
        }
        Guard.InRange(layers.Count, 1, VapourNodes.MostLayers, "parts", "part count");
        return new([.. resistances], [.. diffusionThicknesses], layers);
    }
}
