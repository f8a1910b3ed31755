using Thermal.Materials;

namespace Thermal.Cli.Json;

/// <summary>One material as JSON.</summary>
internal static class MaterialJson
{
    internal static void Write(JsonText json, Material material) => json
        .Text("key", material.Key)
        .Text("name", material.Name)
        .Choice<MaterialGroup>("group", material.Group)
        .Bounded("conductivity_w_per_mk", material.ConductivityWPerMK)
        .Bounded("wet_conductivity_w_per_mk", material.WetConductivityWPerMK)
        .Bounded("density_kg_per_m3", material.DensityKgPerM3)
        .Bounded("specific_heat_j_per_kgk", material.SpecificHeatJPerKgK)
        .Bounded("vapour_resistance_factor", material.VapourResistanceFactor)
        .Bounded("film_diffusion_thickness_m", material.FilmDiffusionThicknessM)
        .Bounded("emissivity_fraction", material.EmissivityFraction)
        .Bounded("sorption_at_80_fraction", material.SorptionAt80Fraction)
        .Choice("mould_class", material.MouldClass)
        .Numbers("thicknesses_sold_m", material.ThicknessesSoldM)
        .Text("fire_note", material.FireNote)
        .Bounded("price_per_m2_mm", material.PricePerM2Mm)
        .Text("price_currency", material.PriceCurrency);
}
