using Thermal.Climates;

namespace Thermal.Files.Tests.Consistency;

/// <summary>Which design temperature of a file a heater is sized for, and what is kept of the others.</summary>
public sealed class PlaceDesignTests
{
    private const string Used = "# design_temperature_c: -12\n# design_kind: stated\n# design_note: given by hand";

    [Fact]
    public void A_file_of_before_the_measures_still_means_what_it_meant()
    {
        Place place = Of(Used + "\n# design_plus_minus_k: 2");
        Assert.Equal(new DesignTemperature { Measure = DesignMeasure.AsNoted, TemperatureC = -12, Kind = DesignKind.Stated, PlusMinusK = 2, Note = "given by hand" }, place.Design);
        Assert.Equal([DesignMeasure.AsNoted, DesignMeasure.HoursAt996], place.Designs.Select(design => design.Measure));
        Assert.Equal(DesignKind.Estimated, place.OtherDesigns[0].Kind);
    }

    [Fact]
    public void The_99_6_percent_line_is_used_where_no_other_is_named()
    {
        Place place = Of("# design_yearly_lowest_c: -14.5, computed, , daily series 1991-2020\n# design_99_6_c: -11, published, 1.5, a table, page 3");
        Assert.Equal(new DesignTemperature { Measure = DesignMeasure.HoursAt996, TemperatureC = -11, Kind = DesignKind.Published, PlusMinusK = 1.5, Note = "a table, page 3" }, place.Design);
        Assert.Equal(new DesignTemperature { Measure = DesignMeasure.YearlyLowest, TemperatureC = -14.5, Kind = DesignKind.Computed, PlusMinusK = 0, Note = "daily series 1991-2020" }, Assert.Single(place.OtherDesigns));
    }

    [Fact]
    public void A_named_measure_goes_before_the_99_6_percent_line()
    {
        Place place = Of(Used + "\n# design_measure: two_day\n# design_99_6_c: -13, published, , t\n# design_99_c: -10, published, , t\n# design_yearly_lowest_c: -15, published, , t");
        Assert.Equal([(DesignMeasure.TwoDayMean, -12.0), (DesignMeasure.HoursAt996, -13.0), (DesignMeasure.HoursAt99, -10.0), (DesignMeasure.YearlyLowest, -15.0)],
            place.Designs.Select(design => (design.Measure, design.TemperatureC)));
    }

    // The other measures are milder or colder than what a heater is sized for, so none of them stands in unasked.
    [Theory]
    [InlineData("design_99_c"), InlineData("design_two_day_c"), InlineData("design_yearly_lowest_c")]
    public void Another_measure_alone_does_not_size_the_heater(string key)
    {
        Place place = Of($"# {key}: -9, published, , t");
        Assert.Equal((DesignMeasure.HoursAt996, DesignKind.Estimated), (place.Design.Measure, place.Design.Kind));
        Assert.Equal(-9, Assert.Single(place.OtherDesigns).TemperatureC);
    }

    [Theory]
    [InlineData("4.9", 1), InlineData("", 3)]
    public void The_estimate_is_closer_where_every_month_has_its_own_spread(string july, double plusMinusK)
    {
        Place place = Of("", july);
        Assert.Equal((DesignKind.Estimated, plusMinusK), (place.Design.Kind, place.Design.PlusMinusK));
        Assert.Equal(july.Length > 0 ? DesignEstimate.FromSpreadC(place.Months) : DesignEstimate.FromMonthsC(place.Months), place.Design.TemperatureC);
    }

    [Fact]
    public void What_cannot_be_estimated_is_no_fault_where_the_used_one_is_given()
    {
        Place place = Of(Used, "4.9", minC: "");
        Assert.Equal([place.Design], place.Designs);
    }

    private static Place Of(string designLines, string julySpread = "", string minC = "-9")
    {
        Reading<Place> reading = PlaceFile.Read(string.Join('\n', [
            "# name: A", "# country: B", "# latitude_deg: 46", "# longitude_deg: 8", "# altitude_m: 3", "# source: s", "# period: p", "# licence: l", designLines,
            "month,mean_c,min_c,max_c,relative_humidity_percent,day_mean_sd_k",
            .. Enumerable.Range(1, 12).Select(month => $"{month},{(month == 1 ? -5 : 4)},{minC},5,80,{(month == 7 ? julySpread : "4.9")}")]), "place.csv");
        Assert.Empty(reading.Problems);
        return reading.Value!;
    }
}
