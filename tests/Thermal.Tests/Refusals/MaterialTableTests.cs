using System.Text;
using Thermal.Materials;

namespace Thermal.Tests.Refusals;

/// <summary>A damaged table of materials is refused with the row and the column of the damage.</summary>
public sealed class MaterialTableTests
{
    private const string Span = "0.03,0.035,0.04,OURS,from memory,,,,,,20,30,40,OURS,from memory,1300,1400,1500,OURS,from memory,";
    private const string Good = "some_foam,some foam,foam," + Span
        + "40,60,100,OURS,from memory,,,,,,0.85,0.9,0.95,OURS,from memory,,,,,,medium_resistant,10;20,0.5,Ask.,0.1,0.2,0.3,EUR,OURS,from memory";

    private static IReadOnlyList<Material> Read(params string[] rows)
    {
        string text = string.Join('\n', ["# a comment, with \"quotes\"", string.Join(',', MaterialTable.Columns), .. rows]);
        using var stream = new MemoryStream(Encoding.UTF8.GetBytes(text));
        return MaterialTable.Read(stream, "table.csv");
    }

    [Fact]
    public void A_good_row_is_read_cell_by_cell()
    {
        Material material = Assert.Single(Read(Good));
        Assert.Equal(new Bounded(0.03, 0.035, 0.04, "OURS", "from memory"), material.ConductivityWPerMK);
        Assert.Null(material.WetConductivityWPerMK);
        Assert.Equal(30, material.DensityKgPerM3.Value);
        Assert.Equal(1400, material.SpecificHeatJPerKgK.Value);
        Assert.Equal(60, material.VapourResistanceFactor!.Value);
        Assert.Equal(0.9, material.EmissivityFraction.Value);
        Assert.Equal(MouldClass.MediumResistant, material.MouldClass);
        Assert.Equal([0.010, 0.020], material.ThicknessesSoldM);
        Assert.Equal([0.0127], material.InchThicknessesSoldM);
        Assert.Equal(0.3, material.PricePerM2Mm!.High);
        Assert.Equal("EUR", material.PriceCurrency);
    }

    [Theory]
    [InlineData("0.03,0.035,0.04", "0.03,35,0.04", "conductivity_w_per_mk_high")] // a thousand too large: value above high
    [InlineData("0.03,0.035,0.04", "30,35,40000", "conductivity_w_per_mk_high")]
    [InlineData("0.03,0.035,0.04", "0.04,0.035,0.04", "conductivity_w_per_mk is")]
    [InlineData("0.03,0.035,0.04", "0.03,\"0,035\",0.04", "conductivity_w_per_mk is")]
    [InlineData("0.03,0.035,0.04", "0.03,NaN,0.04", "conductivity_w_per_mk is")]
    [InlineData("0.03,0.035,0.04", "0.03,,0.04", "conductivity_w_per_mk is")]
    [InlineData("0.03,0.035,0.04,OURS,from memory", ",,,,", "conductivity_w_per_mk must not be empty")]
    [InlineData("20,30,40,OURS", "20,30,40,NOBODY", "density_kg_per_m3_source")]
    [InlineData("20,30,40,OURS,from memory", "20,30,40,OURS,", "density_kg_per_m3_place")]
    [InlineData("20,30,40", "-20,30,40", "density_kg_per_m3_low")]
    [InlineData("40,60,100,OURS,from memory", ",,,,", "vapour_resistance_factor or film_diffusion_thickness_m")]
    [InlineData("40,60,100,OURS,from memory,,,,,", "40,60,100,OURS,from memory,1,2,3,OURS,from memory", "vapour_resistance_factor or film_diffusion_thickness_m")]
    [InlineData(",foam,", ",foams,", "group")]
    [InlineData("medium_resistant", "medium", "mould_class")]
    [InlineData("10;20", "20;10", "thicknesses_sold_mm")]
    [InlineData("10;20", "10;2000", "thicknesses_sold_mm")]
    public void A_damaged_row_is_refused_by_line_and_column(string sound, string damaged, string column)
    {
        Assert.Contains(sound, Good, StringComparison.Ordinal);
        string row = Good.Replace(sound, damaged, StringComparison.Ordinal);
        string message = Assert.Throws<InvalidDataException>(() => Read(Good.Replace("some_foam", "other_foam", StringComparison.Ordinal), row)).Message;
        Assert.StartsWith("table.csv:4: some_foam: ", message, StringComparison.Ordinal);
        Assert.Contains(column, message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_key_that_stands_twice_is_refused() =>
        Assert.Contains("some_foam: key is there twice", Assert.Throws<InvalidDataException>(() => Read(Good, Good)).Message, StringComparison.Ordinal);

    [Fact]
    public void A_row_with_a_cell_too_few_is_refused_by_line() => Assert.StartsWith("table.csv:4: ",
        Assert.Throws<InvalidDataException>(() => Read(Good, Good[..Good.LastIndexOf(',')])).Message, StringComparison.Ordinal);

    [Fact]
    public void Other_columns_than_ours_are_refused()
    {
        using var stream = new MemoryStream(Encoding.UTF8.GetBytes("key,name\nfoam,foam"));
        Assert.StartsWith("table.csv: the columns must be key,name,group", Assert.Throws<InvalidDataException>(() => MaterialTable.Read(stream, "table.csv")).Message, StringComparison.Ordinal);
    }
}
