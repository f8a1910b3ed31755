namespace Thermal.Moisture;

/// <summary>The water account of one month, kg/m². Lists hold one entry a face, inside to outside: inside air, faces, outside air.</summary>
/// <param name="HeldAtFacesKgPerM2">Water held at the end of the month.</param>
/// <param name="GainAtFacesKgPerM2">Water gained (positive) or lost within the month; where faces share one vapour pressure, at the coldest of them.</param>
/// <param name="InKgPerM2">Vapour that came from the inside by diffusion; negative where the build-up dries inwards.</param>
/// <param name="OutKgPerM2">Vapour that left to the outside by diffusion; negative where damp outside air comes in.</param>
/// <param name="SourceKgPerM2">Water that air carried in, less what it carried away.</param>
public sealed record MonthWater(
    IReadOnlyList<double> HeldAtFacesKgPerM2,
    IReadOnlyList<double> GainAtFacesKgPerM2,
    double InKgPerM2,
    double OutKgPerM2,
    double SourceKgPerM2)
{
    /// <summary>All water held at the end of the month, kg/m².</summary>
    public double HeldKgPerM2 => HeldAtFacesKgPerM2.Sum();
}
