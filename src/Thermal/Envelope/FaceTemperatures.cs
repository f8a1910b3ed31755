namespace Thermal.Envelope;

/// <summary>Temperatures at the faces of a build-up in steady state.</summary>
public static class FaceTemperatures
{
    /// <summary>Temperatures at the faces between battens, inside to outside.</summary>
    /// <param name="found">Transmittance with its layer resistances.</param>
    /// <param name="insideC">Inside, °C.</param>
    /// <param name="outsideC">Outside as it acts on the outer film, °C.</param>
    /// <returns>n + 1 temperatures for n layers, °C.</returns>
    /// <remarks>Linear in resistance along the section between battens. Source: ISO-13788, 6.3.</remarks>
    public static double[] AtFacesC(StackTransmittance found, double insideC, double outsideC)
    {
        IReadOnlyList<double> layers = found.LayersM2KPerW;
        double sum = found.InsideFilmM2KPerW + found.OutsideFilmM2KPerW;
        for (int i = 0; i < layers.Count; i++) sum += layers[i];
        double flow = (insideC - outsideC) / sum, r = found.InsideFilmM2KPerW;
        double[] faces = new double[layers.Count + 1];
        faces[0] = insideC - flow * r;
        for (int i = 0; i < layers.Count; i++) faces[i + 1] = insideC - flow * (r += layers[i]);
        return faces;
    }
}
