using Thermal.Files.Keys;
using Thermal.Materials;
using Thermal.Words.Units;

namespace Thermal.Files.VehicleKeys;

/// <summary>A material added in the file.</summary>
internal static class MaterialKeys
{
    private static readonly Bounded UsualEmissivity = new(0.85, 0.9, 0.95, "OURS", "usual for all but bare metal");

    private static readonly Field<Material, string> Key = new("key", "Name in layers, small letters with underscores.", new MaterialKeyNode(), material => material.Key) { IsRequired = true };
    private static readonly Field<Material, string> Name = new("name", "Name in sentences.", Kinds.Name, material => material.Name) { IsRequired = true };
    private static readonly Field<Material, Enum> Group = new("group", "What kind of thing it is.", Kinds.Words(typeof(MaterialGroup)), material => material.Group) { IsRequired = true };
    private static readonly Field<Material, Bounded> Conductivity = new("conductivity", "Thermal conductivity, dry.", Span(Dimensions.Conductivity, "W/(m·K)", 0.001, 500), material => material.ConductivityWPerMK) { IsRequired = true };
    private static readonly Field<Material, Bounded> Wet = new("wet_conductivity", "Thermal conductivity when wet.", Span(Dimensions.Conductivity, "W/(m·K)", 0.001, 500), material => material.WetConductivityWPerMK);
    private static readonly Field<Material, Bounded> Density = new("density", "Density.", Span(Dimensions.Density, "kg/m³", 1, 9000), material => material.DensityKgPerM3) { IsRequired = true };
    private static readonly Field<Material, Bounded> SpecificHeat = new("specific_heat", "Specific heat.", Span(Dimensions.SpecificHeat, "J/(kg·K)", 100, 5000), material => material.SpecificHeatJPerKgK) { IsRequired = true };
    private static readonly Field<Material, Bounded> Vapour = new("vapour_factor", "Water vapour resistance factor μ; or give s_d.", Span(Dimensions.Number, "", 1, 1e7), material => material.VapourResistanceFactor);
    private static readonly Field<Material, Bounded> FilmThickness = new("s_d", "Diffusion-equivalent air layer thickness of a film; or give vapour_factor.", Span(Dimensions.Length, "m", 0.001, 100_000), material => material.FilmDiffusionThicknessM);
    private static readonly Field<Material, Bounded> Emissivity = new("emissivity", "Longwave emissivity of its surface.", Kinds.Span(Kinds.Emissivity), material => material.EmissivityFraction) { Default = UsualEmissivity };
    private static readonly Field<Material, Bounded> Sorption = new("water_at_80_percent", "Water taken up from air of 80 % humidity, share of its dry mass.", Kinds.Span(new QuantityNode(Dimensions.Fraction, "", 0, 0.6, "%")), material => material.SorptionAt80Fraction);
    private static readonly Field<Material, Enum> Mould = new("mould_class", "How readily mould grows on it; left out where nothing organic can grow.", Kinds.Words(typeof(MouldClass)), material => material.MouldClass);
    private static readonly Field<Material, IReadOnlyList<double>> Sold = new("thicknesses_sold", "Thicknesses it is sold in.", new ListOf<double>("thickness", Kinds.Thickness, 0, 40), material => Kinds.UnlessEmpty(material.ThicknessesSoldM)) { Default = [] };
    private static readonly Field<Material, string> Fire = new("fire_note", "What to ask about fire.", Kinds.Sentence, material => material.FireNote.Length == 0 ? null : material.FireNote) { Default = "" };
    private static readonly Field<Material, Bounded> Price = new("price_per_m2_mm", "Price per square metre and millimetre, a number in price_currency.", Span(Dimensions.Number, "", 0, 1000), material => material.PricePerM2Mm);
    private static readonly Field<Material, string> Currency = new("price_currency", "Currency of the price, such as EUR.", new TextNode(8), material => material.PriceCurrency.Length == 0 ? null : material.PriceCurrency) { Default = "" };

    internal static Map<Material> Map { get; } = new("a material",
        [Key, Name, Group, Conductivity, Wet, Density, SpecificHeat, Vapour, FilmThickness, Emissivity, Sorption, Mould, Sold, Fire, Price, Currency], Build);

    private static Material? Build(Values<Material> values)
    {
        if (values.Has(Vapour) == values.Has(FilmThickness))
        {
            values.Spot.Problem("a material needs either vapour_factor or, for a film, s_d; write one of them");
            return null;
        }
        if (!values.Of(Sold).SequenceEqual(values.Of(Sold).Order()))
        {
            values.Problem(Sold, "thicknesses_sold must rise from thin to thick");
            return null;
        }
        var material = new Material
        {
            Key = values.Of(Key),
            Name = values.Of(Name),
            Group = (MaterialGroup)values.Of(Group)!,
            ConductivityWPerMK = values.Of(Conductivity),
            WetConductivityWPerMK = values.Of(Wet),
            DensityKgPerM3 = values.Of(Density),
            SpecificHeatJPerKgK = values.Of(SpecificHeat),
            VapourResistanceFactor = values.Of(Vapour),
            FilmDiffusionThicknessM = values.Of(FilmThickness),
            EmissivityFraction = values.Of(Emissivity),
            SorptionAt80Fraction = values.Of(Sorption),
            MouldClass = values.Has(Mould) ? (MouldClass)values.Of(Mould)! : null,
            ThicknessesSoldM = values.Of(Sold),
            FireNote = values.Of(Fire),
            PricePerM2Mm = values.Of(Price),
            PriceCurrency = values.Of(Currency),
        };
        values.Spot.Scope.OwnMaterials[material.Key] = material;
        return material;
    }

    private static SpanNode Span(Dimension dimension, string unit, double lowest, double highest) => new(new QuantityNode(dimension, unit, lowest, highest));
}
