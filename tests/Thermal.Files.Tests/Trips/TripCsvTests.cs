using Microsoft.VisualBasic.FileIO;
using Thermal.Trips;

namespace Thermal.Files.Tests.Trips;

/// <summary>The table of hours is read back by another reader as what was put in.</summary>
public sealed class TripCsvTests
{
    private static readonly TripRequest Asked = TripLibrary.Find("cold-chamber")!;

    private static readonly TripCase Case = new(VehicleLibrary.Find("library-van")!, Asked.Trip with { Legs = [.. Asked.Trip.Legs.Select(leg => leg with { Name = $"{leg.Name}, \"{leg.Name}\"" })] });

    private static readonly TripHours Hours = new()
    {
        StartLocal = new(2026, 1, 10, 20, 0, 0),
        Legs = [0, 0, 1],
        Rooms = [new("living", [1.234, -2.5, 3], [0.5, 0.6, 1], [600.04, 700, 800], [10, 20, 30.25], [-1, -2, -3])],
        OutsideC = [-15, -15, -15.125],
        SkyC = [-15, -15, -15],
        AirPastMPerS = [0, 0, 0.5],
        SunOnFlatWPerM2 = [0, 0, 12.34],
        WantedC = [double.NaN, double.NaN, 20],
        OperativeC = [1, 2, 3],
        CarbonDioxidePpm = [420, 421.4, 1234.5],
        HeaterW = [0, 0, 4000],
        StartsCount = [0, 0, 1.25],
        FuelAmount = [0, 0, 0.48765],
        DrawnA = [1, 2, 3.4567],
        ChargedA = [0, 0, -0.0],
        ChargeFraction = [],
        BatteryC = [],
        OnGlassG = [1, 2, 3],
        FrostOnGlassG = [1, 2, 3],
        OnLiningsG = [0, 0, 0],
        InBuildUpsG = [0, 0, 0],
        Panels = [new("roof, front", [1, 2, 3], [4, 5, 6])],
        Tanks = [new("fresh water", [1, 0, 0], [0, 0, 0.12345], [60, 60, 60])],
    };

    private static readonly string Text = TripCsv.Text(Case, Hours);

    [Fact]
    public void Every_row_has_a_cell_for_every_column_and_numbers_have_points()
    {
        List<string[]> rows = Rows();
        Assert.Equal(4, rows.Count);
        Assert.All(rows, row => Assert.Equal(rows[0].Length, row.Length));
        Assert.Equal(rows[0].Length, rows[0].Distinct().Count());
        Assert.DoesNotContain("charge_fraction", rows[0]); // without a battery there is no column
    }

    [Theory]
    [InlineData("time", "2026-01-10T20:00", "2026-01-10T22:00")]
    [InlineData("leg", "1: cold soak, \"cold soak\"", "2: heating up, \"heating up\"")]
    [InlineData("outside_c", "-15", "-15.12")]
    [InlineData("wanted_c", "", "20")]
    [InlineData("fuel_l", "0", "0.4876")]
    [InlineData("charged_a", "0", "0")]
    [InlineData("carbon_dioxide_ppm", "420", "1234")]
    [InlineData("air_c: living", "1.23", "3")]
    [InlineData("humidity_fraction: living", "0.5", "1")]
    [InlineData("outer_face_c: roof, front", "4", "6")]
    [InlineData("ice_fraction: fresh water", "0", "0.1234")]
    public void A_cell_holds_its_hour_to_the_digits_written(string column, string first, string last)
    {
        List<string[]> rows = Rows();
        int at = Array.IndexOf(rows[0], column);
        Assert.True(at >= 0, column);
        Assert.Equal((first, last), (rows[1][at], rows[3][at]));
    }

    private static List<string[]> Rows()
    {
        using var parser = new TextFieldParser(new StringReader(Text)) { TextFieldType = FieldType.Delimited, Delimiters = [","], HasFieldsEnclosedInQuotes = true };
        List<string[]> rows = [];
        while (!parser.EndOfData)
            rows.Add(parser.ReadFields()!);
        return rows;
    }
}
