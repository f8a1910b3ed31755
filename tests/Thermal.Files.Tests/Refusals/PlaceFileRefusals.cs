using Thermal.Climates;

namespace Thermal.Files.Tests.Refusals;

/// <summary>Every fault of a place file is named with its line, its column and what to write instead.</summary>
public sealed class PlaceFileRefusals
{
    private static readonly string[] Good =
    [
        "# name: Upper Pass", "# country: Nowhere", "# latitude_deg: 46.5", "# longitude_deg: 8.1", "# altitude_m: 1200", "# source: invented", "# period: 1991-2020", "# licence: none",
        "month,mean_c,min_c,max_c,relative_humidity_percent",
        "1,-5.0,-9.0,-1.0,80", "2,-4.0,-8.0,0.0,78", "3,-1,-5,3,75", "4,3,-1,7,70", "5,8,4,12,70", "6,11,7,15,70",
        "7,13,9,17,70", "8,13,9,17,72", "9,10,6,14,75", "10,6,2,10,78", "11,0,-4,4,80", "12,-4,-8,0,82",
    ];

    [Fact]
    public void The_text_that_the_faults_below_are_put_into_is_right() => Assert.Empty(PlaceFile.Read(string.Join('\n', Good), "good.csv").Problems);

    [Theory]
    [InlineData(3, "# latitude_deg: 460", 3, 17, "latitude_deg", "-90 to 90")]
    [InlineData(3, "# lattitude_deg: 46", 3, 3, "header", "did you mean 'latitude_deg'?")]
    [InlineData(5, "# altitude_m: 1200 m", 5, 15, "altitude_m", "is not a number")]
    [InlineData(5, "# altitude_m: 1,2", 5, 15, "altitude_m", "decimal point")]
    [InlineData(5, "# altitude_m: 1_200", 5, 15, "altitude_m", "is not a number")]
    [InlineData(5, "# altitude_m: NaN", 5, 15, "altitude_m", "is not a number")]
    [InlineData(5, "# altitude_m: 1200000", 5, 15, "altitude_m", "metres")]
    [InlineData(6, "# source:", 6, 10, "source", "is empty")]
    [InlineData(6, "# sauce", 6, 1, "header", "has no colon")]
    [InlineData(6, "# name: Other", 6, 3, "name", "first in line 1")]
    [InlineData(9, "month;mean_c;min_c", 9, 1, "table", "save it with commas")]
    [InlineData(9, "month,mean_c,minc,max_c,relative_humidity_percent", 9, 14, "column", "did you mean 'min_c'?")]
    [InlineData(9, "month,mean_c,mean_c,max_c,relative_humidity_percent", 9, 14, "column", "stands twice")]
    [InlineData(10, "1,-5,0,-9.0,-1.0,80", 10, 1, "row", "6 cells")]
    [InlineData(10, "1,−5,-9,-1,80", 10, 3, "month 1 / mean_c", "plain minus")]
    [InlineData(10, "1,-5,-9,-1,0.80", 10, 12, "month 1 / relative_humidity_percent", "76")]
    [InlineData(10, "1,-5, -3,-1,80", 10, 7, "month 1 / min_c", "min_c ≤ mean_c ≤ max_c")]
    [InlineData(10, "1,-5,-9,-7,80", 10, 9, "month 1 / max_c", "min_c ≤ mean_c ≤ max_c")]
    [InlineData(10, "1,,-9,,80", 10, 1, "month 1 / mean_c", "both min_c and max_c")]
    [InlineData(10, "1,-5,,-1,", 10, 1, "month 1 / relative_humidity_percent", "or min_c")]
    [InlineData(10, "1,50,-60,50,", 10, 6, "month 1 / min_c", "no humidity")]
    [InlineData(10, "January,-5,-9,-1,80", 10, 1, "month", "1 for January")]
    [InlineData(11, "1,-5,-9,-1,80", 11, 1, "month", "first in line 10")]
    [InlineData(10, "1,-8.0,,-1,80", 1, 1, "design_temperature_c", "cannot be estimated")]
    [InlineData(10, "1,-59,-60,-1,80", 1, 1, "design_temperature_c", "check mean_c and min_c")]
    [InlineData(8, "# licence: none\n# design_kind: computed", 9, 16, "design_kind", "stands without")]
    [InlineData(8, "# licence: none\n# design_temperature_c: -12\n# design_note: n", 9, 25, "design_temperature_c", "published' or 'computed' or 'stated'")]
    [InlineData(8, "# licence: none\n# design_temperature_c: -12\n# design_note: n\n# design_kind: estimated", 11, 16, "design_kind", "leave the design lines out")]
    [InlineData(8, "# licence: none\n# design_temperature_c: -12\n# design_kind: stated", 9, 25, "design_temperature_c", "design_note")]
    [InlineData(8, "# licence: \uFFFD", 8, 12, "licence", "UTF-8")]
    [InlineData(8, "# licence: none\n# design_99_6_c: -12", 9, 18, "design_99_6_c", "four parts")]
    [InlineData(8, "# licence: none\n# design_99_6_c: -12, published, ,", 9, 18, "design_99_6_c", "four parts")]
    [InlineData(8, "# licence: none\n# design_99_6_c: -120, published, , t", 9, 18, "design_99_6_c", "-60 to 30")]
    [InlineData(8, "# licence: none\n# design_99_6_c: -12, estimated, 3, t", 9, 23, "design_99_6_c", "is not a kind")]
    [InlineData(8, "# licence: none\n# design_99_6_c: -12, computed, wide, t", 9, 33, "design_99_6_c", "is not a number")]
    [InlineData(8, "# licence: none\n# design_99_c: -12, computed, 16, t", 9, 31, "design_99_c", "half the width")]
    [InlineData(8, "# licence: none\n# design_99_6_c: -12, published, , t\n# design_99_c: -13, published, , t", 10, 16, "design_99_c", "check both")]
    [InlineData(8, "# licence: none\n# design_two_day_c: -12, published, , t\n# design_two_day_c: -13, published, , t", 10, 3, "design_two_day_c", "first in line 9")]
    [InlineData(8, "# licence: none\n# design_twoday_c: -12, published, , t", 9, 3, "header", "did you mean 'design_two_day_c'?")]
    [InlineData(8, "# licence: none\n# design_measure: 99", 9, 19, "design_measure", "stands without")]
    [InlineData(8, "# licence: none\n# design_temperature_c: -12\n# design_kind: stated\n# design_note: n\n# design_measure: 98", 12, 19, "design_measure", "99_6, 99, two_day, yearly_lowest")]
    [InlineData(8, "# licence: none\n# design_temperature_c: -12\n# design_kind: stated\n# design_note: n\n# design_measure: 99\n# design_99_c: -12, stated, , n", 13, 16, "design_99_c", "keep one of them")]
    public void A_fault_is_named_where_it_stands(int line, string written, int faultLine, int column, string where, string says)
    {
        Reading<Place> reading = PlaceFile.Read(string.Join('\n', Good.Select((text, i) => i + 1 == line ? written : text)), "bad.csv");
        Assert.Null(reading.Value);
        Assert.Contains(reading.Problems, problem => (problem.File, problem.Line, problem.Column, problem.Where) == ("bad.csv", faultLine, column, where) && problem.What.Contains(says, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("340", true), InlineData("3.4", false), InlineData("1500", false)]
    public void A_vapour_pressure_in_hectopascals_or_of_another_month_is_refused(string vapour, bool isTaken)
    {
        string[] lines = [.. Good.Select((text, i) => i == 8 ? text + ",vapour_pressure_pa" : i == 9 ? $"{text},{vapour}" : i > 9 ? text + "," : text)];
        Reading<Place> reading = PlaceFile.Read(string.Join('\n', lines), "vapour.csv");
        Assert.Equal(isTaken ? 0 : 1, reading.Problems.Count);
        Assert.All(reading.Problems, problem => Assert.Equal((10, 21, "month 1 / vapour_pressure_pa"), (problem.Line, problem.Column, problem.Where)));
    }

    [Theory]
    [InlineData("10", true), InlineData("10.001", false)]
    public void The_limit_of_sun_is_the_same_in_the_file_and_in_the_physics(string sun, bool isTaken)
    {
        string[] lines = [.. Good.Select((text, i) => i == 8 ? text + ",global_kwh_m2_day" : i > 8 ? $"{text},{sun}" : text)];
        Reading<Place> reading = PlaceFile.Read(string.Join('\n', lines), "sun.csv");
        Assert.Equal(isTaken ? 0 : 12, reading.Problems.Count);
        Assert.Equal(isTaken ? MonthNormals.HighestGlobalIrradianceWPerM2 : null, reading.Value?.Months[0].GlobalIrradianceWPerM2);
    }

    [Fact]
    public void A_missing_month_is_named() =>
        Assert.Contains("month 7", Assert.Single(PlaceFile.Read(string.Join('\n', Good.Where(line => !line.StartsWith("7,", StringComparison.Ordinal))), "gap.csv").Problems).What, StringComparison.Ordinal);

    [Fact]
    public void All_faults_are_named_at_once_in_the_order_of_their_lines()
    {
        string text = string.Join('\n', Good).Replace("46.5", "north", StringComparison.Ordinal).Replace("# period: 1991-2020\n", "", StringComparison.Ordinal).Replace("3,-1,-5", "3,x,y", StringComparison.Ordinal);
        Assert.Equal([(1, "period"), (3, "latitude_deg"), (11, "month 3 / mean_c"), (11, "month 3 / min_c")], PlaceFile.Read(text, "many.csv").Problems.Select(problem => (problem.Line, problem.Where)));
    }

    [Theory]
    [InlineData("", "is empty"), InlineData(" \n\n", "is empty"), InlineData("PK\0\0", "not a text file")]
    public void What_is_no_text_at_all_is_one_problem(string text, string says) =>
        Assert.Contains(says, Assert.Single(PlaceFile.Read(text, "blank.csv").Problems).What, StringComparison.Ordinal);

    [Fact]
    public void Ten_megabytes_are_one_problem() =>
        Assert.Contains("50000 characters", Assert.Single(PlaceFile.Read(new string('#', 10_000_000), "long.csv").Problems).What, StringComparison.Ordinal);
}
