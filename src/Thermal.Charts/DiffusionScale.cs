namespace Thermal.Charts;

/// <summary>Where each face stands over s_d, from 0 at the room to 1: to scale, but tight layers shortened so that the open ones can be seen.</summary>
internal static class DiffusionScale
{
    /// <summary>Layers from this s_d, m, count as tight and are shortened where open ones stand beside them; limit chosen by us.</summary>
    internal const double TightFromM = 20;

    // Each tight layer takes this part of the width, all together not more than the other.
    private const double PartOfOne = 0.16, PartOfAll = 0.5;

    internal static double[] Faces(IReadOnlyList<CutLayer> layers)
    {
        IReadOnlyList<bool> isShortened = IsShortened(layers);
        int shortened = isShortened.Count(tight => tight);
        double openM = layers.Where((_, i) => !isShortened[i]).Sum(layer => layer.DiffusionThicknessM);
        double tightPart = shortened == 0 ? 0 : (openM > 0 ? Math.Min(PartOfOne * shortened, PartOfAll) : 1) / shortened;
        double openPart = 1 - tightPart * shortened;
        double[] faces = new double[layers.Count + 1];
        for (int i = 0; i < layers.Count; i++)
            faces[i + 1] = faces[i] + (isShortened[i] ? tightPart : openM > 0 ? layers[i].DiffusionThicknessM / openM * openPart : 0);
        return faces;
    }

    /// <summary>For each layer: true where it is shortened. Where all are tight, none is.</summary>
    internal static IReadOnlyList<bool> IsShortened(IReadOnlyList<CutLayer> layers) =>
        layers.All(layer => layer.DiffusionThicknessM >= TightFromM)
            ? [.. layers.Select(_ => false)]
            : [.. layers.Select(layer => layer.DiffusionThicknessM >= TightFromM)];
}
