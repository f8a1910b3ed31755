using System.Text.RegularExpressions;
using Thermal.Materials;

namespace Thermal.Tests.Consistency;

/// <summary>The built-in materials keep the rules of the house: every figure has span, source and place, and none is out of its class.</summary>
public sealed partial class MaterialLibraryTests
{
    /// <summary>Keys that vehicle files may count on: they never change.</summary>
    private static readonly string[] Promised =
    [
        "steel_sheet", "stainless_steel", "aluminium", "grp", "birch_plywood", "poplar_plywood", "softwood", "hardwood", "chipboard", "osb",
        "hardboard", "vinyl_floor", "linoleum", "rubber_floor", "carpet", "laminate_floor", "wet_room_panel_pvc", "wet_room_panel_laminate",
        "underlay_felt", "wool_felt", "cork_lining", "pir_foil_faced", "pur_board", "xps", "eps", "phenolic", "elastomeric_foam",
        "cross_linked_pe_foam", "spray_foam_closed_cell", "spray_foam_open_cell", "can_foam", "pvc_foam", "cork_board", "aerogel_blanket",
        "vacuum_panel", "foam_glass", "sheep_wool", "mineral_wool", "glass_wool", "polyester_wool", "microfibre_batt", "recycled_cotton",
        "hemp", "flax", "wood_fibre_flexible", "wood_fibre_board", "cellulose", "foil_bubble_wrap_in_contact", "foil_bubble_wrap_facing_air",
        "pe_film_0_15", "pe_film_0_25", "vapour_retarder", "humidity_variable_retarder", "aluminium_foil", "aluminium_tape_foil",
        "breather_membrane", "bitumen_damping_sheet", "emulsion_paint", "gloss_paint", "epoxy_coat", "glass", "acrylic", "polycarbonate",
        "water", "ice", "still_air", "neoprene_tape", "epdm_seal",
    ];

    /// <summary>Words of the trade that are written with capitals although nobody owns them.</summary>
    private static readonly string[] Abbreviations = ["ABS", "EPDM", "EPS", "GRP", "HDPE", "PE", "PIR", "PMMA", "PUR", "PU", "PVC", "XPS", "°C"];

    private static IEnumerable<(string Where, Bounded Figure, double Min, double Max)> Figures =>
        from material in MaterialLibrary.All
        from figure in new (string Name, Bounded? Value, double Min, double Max)[]
        {
            // The limits are those of the documentation of Material.
            ("conductivity", material.ConductivityWPerMK, 0.001, 500),
            ("wet conductivity", material.WetConductivityWPerMK, 0.001, 500),
            ("density", material.DensityKgPerM3, 1, 9000),
            ("specific heat", material.SpecificHeatJPerKgK, 100, 5000),
            ("vapour resistance factor", material.VapourResistanceFactor, 1, 10_000_000),
            ("diffusion thickness", material.FilmDiffusionThicknessM, 0.001, 10_000),
            ("emissivity", material.EmissivityFraction, 0.01, 1),
            ("sorption", material.SorptionAt80Fraction, 0, 1),
            ("price", material.PricePerM2Mm, 0.01, 100),
        }
        where figure.Value is not null
        select ($"{material.Key}: {figure.Name}", figure.Value, figure.Min, figure.Max);

    [Fact]
    public void There_are_at_least_75_materials() => Assert.InRange(MaterialLibrary.All.Count, 75, 500);

    [Fact]
    public void Every_promised_key_is_there() => Assert.Empty(Promised.Except(MaterialLibrary.All.Select(material => material.Key)));

    [Fact]
    public void A_key_that_is_not_there_gives_nothing() => Assert.Null(MaterialLibrary.Find("Birch plywood"));

    [Fact]
    public void No_key_and_no_name_stands_twice() => Assert.Empty(
        MaterialLibrary.All.GroupBy(material => material.Key).Concat(MaterialLibrary.All.GroupBy(material => material.Name))
            .Where(same => same.Count() > 1).Select(same => same.Key));

    [Fact]
    public void Every_key_is_lower_case_with_underscores() =>
        Assert.Empty(MaterialLibrary.All.Where(material => !KeyForm().IsMatch(material.Key)).Select(material => material.Key));

    [Fact]
    public void Low_is_not_above_the_value_nor_the_value_above_high() =>
        Assert.Empty(Figures.Where(f => !(f.Figure.Low <= f.Figure.Value && f.Figure.Value <= f.Figure.High)).Select(f => f.Where));

    [Fact]
    public void Every_figure_lies_within_the_limits_that_Material_states() =>
        Assert.Empty(Figures.Where(f => !(f.Figure.Low >= f.Min && f.Figure.High <= f.Max)).Select(f => f.Where));

    [Fact]
    public void Every_source_is_listed_and_every_place_is_named() =>
        Assert.Empty(Figures.Where(f => !Sources.Knows(f.Figure.Source) || f.Figure.Place.Length == 0).Select(f => f.Where));

    [Fact]
    public void Every_material_has_either_a_vapour_resistance_factor_or_a_diffusion_thickness() => Assert.Empty(
        MaterialLibrary.All.Where(m => m.VapourResistanceFactor is null == m.FilmDiffusionThicknessM is null).Select(m => m.Key));

    [Fact]
    public void Every_film_has_one_stand_in_thickness_and_a_diffusion_thickness() => Assert.Empty(
        MaterialLibrary.All.Where(m => m.Group == MaterialGroup.Film && (m.FilmDiffusionThicknessM is null || m.ThicknessesSoldM.Count != 1)).Select(m => m.Key));

    [Fact]
    public void A_wet_material_conducts_better_than_a_dry_one() => Assert.Empty(
        MaterialLibrary.All.Where(m => m.WetConductivityWPerMK is { } wet && wet.Low <= m.ConductivityWPerMK.Value).Select(m => m.Key));

    [Fact]
    public void Every_thickness_sold_is_between_10_micrometres_and_150_millimetres() => Assert.Empty(
        from material in MaterialLibrary.All
        from thicknessM in material.ThicknessesSoldM.Concat(material.InchThicknessesSoldM)
        where !(thicknessM >= 1e-5 && thicknessM <= 0.15)
        select $"{material.Key}: {thicknessM}");

    [Fact]
    public void A_price_has_a_currency_and_a_currency_a_price() => Assert.Empty(
        MaterialLibrary.All.Where(m => m.PricePerM2Mm is null ? m.PriceCurrency.Length > 0 : !CurrencyForm().IsMatch(m.PriceCurrency)).Select(m => m.Key));

    [Fact]
    public void All_that_can_burn_or_melt_says_what_to_ask_about_fire() =>
        Assert.Empty(MaterialLibrary.All.Where(m => m.Group != MaterialGroup.Fluid && !m.FireNote.EndsWith('.')).Select(m => m.Key));

    /// <summary>A maker's word is written with a capital, a mark or a number of a product; a generic name needs none of them.</summary>
    [Fact]
    public void No_name_looks_like_that_of_a_brand() => Assert.Empty(
        from material in MaterialLibrary.All
        from word in WordForm().Matches(material.Name).Select(match => match.Value)
        where word.Any(char.IsUpper) && !Abbreviations.Contains(word)
        select $"{material.Key}: {word}");

    [Theory] // Spans of the physical class, wide enough for every generic member: limits chosen by us.
    [InlineData(MaterialGroup.Metal, 10, 250)]
    [InlineData(MaterialGroup.Plastic, 0.05, 0.6)]
    [InlineData(MaterialGroup.Wood, 0.035, 0.3)]
    [InlineData(MaterialGroup.Foam, 0.003, 0.12)]
    [InlineData(MaterialGroup.Wool, 0.014, 0.1)]
    [InlineData(MaterialGroup.Covering, 0.03, 0.3)]
    [InlineData(MaterialGroup.Film, 0.1, 250)]
    [InlineData(MaterialGroup.Pane, 0.04, 1.2)]
    [InlineData(MaterialGroup.Fluid, 0.02, 2.5)]
    public void Conductivity_fits_the_group(MaterialGroup group, double lowWPerMK, double highWPerMK)
    {
        Material[] members = [.. MaterialLibrary.All.Where(material => material.Group == group)];
        Assert.NotEmpty(members);
        Assert.Empty(members.Where(m => !(m.ConductivityWPerMK.Low >= lowWPerMK && m.ConductivityWPerMK.High <= highWPerMK)).Select(m => m.Key));
    }

    [Fact]
    public void Only_metals_are_metals_and_wools_hold_water()
    {
        Assert.True(MaterialLibrary.Find("steel_sheet")!.IsMetal);
        Assert.False(MaterialLibrary.Find("aluminium_foil")!.IsMetal);
        Assert.True(MaterialLibrary.Find("glass_wool")!.HoldsWater);
        Assert.False(MaterialLibrary.Find("xps")!.HoldsWater);
    }

    [GeneratedRegex("^[a-z][a-z0-9]*(_[a-z0-9]+)*$")]
    private static partial Regex KeyForm();

    [GeneratedRegex("^[A-Z]{3}$")]
    private static partial Regex CurrencyForm();

    [GeneratedRegex(@"[^\s,()]+")]
    private static partial Regex WordForm();
}
