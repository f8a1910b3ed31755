namespace Thermal.Moisture;

/// <summary>One night inside a build-up, at rest. All lists run inside to outside and hold one entry a face: the inside air, each face, the outside air.</summary>
/// <param name="TemperaturesAtFacesC">Temperatures, °C.</param>
/// <param name="SaturationsAtFacesPa">Saturation pressures, Pa; over ice below 0 °C.</param>
/// <param name="VapourPressuresAtFacesPa">Vapour pressures, Pa; nowhere above saturation. Lower at the first face than in the room, with a film of no s_d: the surface itself is wet.</param>
/// <param name="RatesAtFacesKgPerM2S">Water that settles, kg/(m²·s), zero or more; always zero at both ends.</param>
/// <param name="InKgPerM2S">Vapour that diffuses in from the inside, kg/(m²·s).</param>
/// <param name="OutKgPerM2S">Vapour that leaves to the outside, kg/(m²·s).</param>
public sealed record GlaserResult(
    IReadOnlyList<double> TemperaturesAtFacesC,
    IReadOnlyList<double> SaturationsAtFacesPa,
    IReadOnlyList<double> VapourPressuresAtFacesPa,
    IReadOnlyList<double> RatesAtFacesKgPerM2S,
    double InKgPerM2S,
    double OutKgPerM2S)
{
    /// <summary>All water that settles, kg/(m²·s).</summary>
    public double SettlesKgPerM2S => RatesAtFacesKgPerM2S.Sum();

    /// <summary>The face where most settles, counted from 0 at the inside air; null where nothing does.</summary>
    public int? WettestFace
    {
        get
        {
            int wettest = 0;
            for (int face = 1; face < RatesAtFacesKgPerM2S.Count; face++)
                if (RatesAtFacesKgPerM2S[face] > RatesAtFacesKgPerM2S[wettest]) wettest = face;
            return RatesAtFacesKgPerM2S[wettest] > 0 ? wettest : null;
        }
    }
}
