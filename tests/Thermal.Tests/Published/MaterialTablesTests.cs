using Thermal.Materials;

namespace Thermal.Tests.Published;

/// <summary>The built-in materials are checked against the tables they were taken from, copied a second time.</summary>
public sealed class MaterialTablesTests
{
    public static IEnumerable<object[]> Iso10456 =>
        [.. PublishedTable.Rows("iso-10456-conductivity-and-density.csv"), .. PublishedTable.Rows("iso-10456-heat-and-vapour.csv")];

    public static IEnumerable<object[]> CibseGuideA => PublishedTable.Rows("cibse-a-materials.csv");

    public static IEnumerable<object[]> Byg601G => PublishedTable.Rows("byg601g-vapour-and-emissivity.csv");

    public static IEnumerable<object[]> Trade => PublishedTable.Rows("trade-materials.csv");

    public static IEnumerable<object[]> FoilBubbleWrap => PublishedTable.Rows("foil-bubble-wrap.csv");

    [Theory, MemberData(nameof(Iso10456))]
    public void Materials_carry_the_design_values_of_ISO_10456(string key, string quantity, double value, string rule) =>
        AssertCarries(key, quantity, value, rule);

    [Theory, MemberData(nameof(CibseGuideA))]
    public void Materials_carry_or_span_the_values_of_CIBSE_Guide_A(string key, string quantity, double value, string rule) =>
        AssertCarries(key, quantity, value, rule);

    [Theory, MemberData(nameof(Byg601G))]
    public void Materials_carry_or_span_the_values_of_the_course_book(string key, string quantity, double value, string rule) =>
        AssertCarries(key, quantity, value, rule);

    [Theory, MemberData(nameof(Trade))]
    public void Conductivities_lie_inside_the_ranges_of_the_trade(string key, double lowWPerMK, double highWPerMK) =>
        Assert.InRange(MaterialLibrary.Find(key)!.ConductivityWPerMK.Value, lowWPerMK, highWPerMK);

    [Theory, MemberData(nameof(FoilBubbleWrap))]
    public void Foil_bubble_wrap_in_contact_resists_as_measured(double thicknessMm, double lowestM2KPerW, double highestM2KPerW) => Assert.InRange(
        thicknessMm / 1000 / MaterialLibrary.Find("foil_bubble_wrap_in_contact")!.ConductivityWPerMK.Value, lowestM2KPerW, highestM2KPerW);

    private static void AssertCarries(string key, string quantity, double value, string rule)
    {
        Bounded figure = FigureOf(MaterialLibrary.Find(key)!, quantity)!;
        switch (rule)
        {
            case "equal": Assert.Equal(value, figure.Value); break;
            case "within": Assert.InRange(value, figure.Low, figure.High); break;
            default: Assert.Fail($"The rule '{rule}' is not known."); break;
        }
    }

    private static Bounded? FigureOf(Material material, string quantity) => quantity switch
    {
        "conductivity" => material.ConductivityWPerMK,
        "density" => material.DensityKgPerM3,
        "specific_heat" => material.SpecificHeatJPerKgK,
        "vapour_factor" => material.VapourResistanceFactor,
        "film_thickness" => material.FilmDiffusionThicknessM,
        "emissivity" => material.EmissivityFraction,
        _ => throw new ArgumentException($"The quantity '{quantity}' is not known."),
    };
}
