using Thermal.Climates;

namespace Thermal.Files.Tests.Consistency;

/// <summary>The places that come with the program keep what climates/README.md promises.</summary>
public sealed class BuiltInPlaceTests
{
    public static TheoryData<string> Files => [.. typeof(PlaceFile).Assembly.GetManifestResourceNames().Where(name => name.StartsWith("climate:", StringComparison.Ordinal))];

    [Theory, MemberData(nameof(Files))]
    public void Every_built_in_place_reads_without_a_problem(string resource)
    {
        Reading<Place> reading = PlaceFile.Read(TextOf(resource), resource);
        Assert.Empty(reading.Problems);
        Assert.NotNull(reading.Value);
    }

    [Fact]
    public void There_are_at_least_twenty_built_in_places_each_with_its_own_name()
    {
        Assert.True(Files.Count >= 20);
        Assert.Equal(Files.Count, PlaceLibrary.BuiltIn.All.Select(place => place.Name).Distinct().Count());
    }

    [Fact]
    public void Every_built_in_place_names_its_source_its_years_and_on_whose_word_it_may_be_passed_on() => Assert.Empty(
        from place in PlaceLibrary.BuiltIn.All
        where place.Source.Length < 20 || !place.Period.Any(char.IsDigit) || !(place.Licence.Contains("as stated by", StringComparison.Ordinal)
            || place.Licence.Contains("from memory", StringComparison.Ordinal) || place.Licence.Contains("was not found", StringComparison.Ordinal)
            || place.Licence.Contains("was seen", StringComparison.Ordinal))
        select $"{place.Name}: {place.Period}; {place.Licence}");

    [Fact]
    public void Every_built_in_place_is_listed_with_what_was_left_out_in_the_readme_of_the_folder()
    {
        string readme = File.ReadAllText(Path.Combine(Root(), "climates", "README.md"));
        Assert.All(PlaceLibrary.BuiltIn.All, place => Assert.Contains($"| {place.Name} |", readme, StringComparison.Ordinal));
        Assert.Contains("## Left out", readme, StringComparison.Ordinal);
    }

    // Half a year lies between the extremes, by the sea with one typical year two months less; the spans are those of inhabited ground.
    [Fact]
    public void Every_built_in_place_has_a_plausible_year() => Assert.All(PlaceLibrary.BuiltIn.All, place =>
    {
        int coldest = Enumerable.Range(0, 12).MinBy(m => place.Months[m].MeanC), warmest = Enumerable.Range(0, 12).MaxBy(m => place.Months[m].MeanC);
        Assert.InRange(Math.Abs(coldest - warmest), 4, 7);
        Assert.Contains(coldest, place.LatitudeDeg > 0 ? [11, 0, 1] : new[] { 5, 6, 7 });
        Assert.InRange(place.Months[coldest].MeanC, -20, 10);
        Assert.InRange(place.Months[warmest].MeanC, 7, 30);
        Assert.All(place.Months, month => Assert.True(month.MinC < month.MaxC && month.MaxC - month.MinC < 20));
    });

    // Whatever it measures, a design temperature lies below the mean lowest of the coldest month, and hardly further than 20 K.
    [Fact]
    public void Every_design_temperature_of_a_built_in_place_is_a_cold_one_of_that_place() => Assert.All(PlaceLibrary.BuiltIn.All, place =>
        Assert.All(place.Designs, design => Assert.InRange(design.TemperatureC, place.Months.Min(month => month.MinC!.Value) - 20, place.Months.Min(month => month.MeanC) - 2)));

    [Fact]
    public void Every_built_in_place_has_a_99_6_percent_temperature_and_none_that_is_estimated_is_without_its_span() => Assert.All(PlaceLibrary.BuiltIn.All, place =>
    {
        Assert.NotNull(place.DesignOf(DesignMeasure.HoursAt996));
        Assert.All(place.Designs, design => Assert.True(design.Kind != DesignKind.Estimated || design.PlusMinusK >= 1));
    });

    // Copied from the table of design conditions, the daily series and the hourly series by hand.
    [Theory]
    [InlineData("Zürich", DesignMeasure.HoursAt99, -7.8), InlineData("Zürich", DesignMeasure.YearlyLowest, -11.5)]
    [InlineData("Geneva", DesignMeasure.HoursAt99, -5.2), InlineData("Geneva", DesignMeasure.YearlyLowest, -10.0)]
    [InlineData("Calgary", DesignMeasure.HoursAt99, -27.1), InlineData("Calgary", DesignMeasure.YearlyLowest, -33.2)]
    [InlineData("Sion", DesignMeasure.TwoDayMean, -8.0), InlineData("Sion", DesignMeasure.YearlyLowest, -10.5)]
    [InlineData("Sand Point", DesignMeasure.TwoDayMean, -8.1), InlineData("Sand Point", DesignMeasure.YearlyLowest, -10.6)]
    [InlineData("North-west Colorado", DesignMeasure.TwoDayMean, -11.3), InlineData("North-west Colorado", DesignMeasure.YearlyLowest, -16.3)]
    [InlineData("North-west Italy", DesignMeasure.TwoDayMean, 0.4), InlineData("North-west Italy", DesignMeasure.YearlyLowest, -2.3)]
    [InlineData("Sodankylä", DesignMeasure.TwoDayMean, -27.9), InlineData("Sodankylä", DesignMeasure.YearlyLowest, -31.7)]
    public void What_else_is_known_of_the_cold_keeps_its_value(string name, DesignMeasure measure, double temperatureC) =>
        Assert.Equal(temperatureC, PlaceLibrary.BuiltIn.Find(name)!.DesignOf(measure)!.TemperatureC);

    // Found in a table of design conditions or computed from readings outside this project.
    [Theory]
    [InlineData("Zürich", -10.4, DesignKind.Published), InlineData("Geneva", -8.0, DesignKind.Published), InlineData("Sion", -8.0, DesignKind.Computed), InlineData("Calgary", -30.0, DesignKind.Published)]
    [InlineData("Sand Point", -8.9, DesignKind.Computed), InlineData("North-west Colorado", -14.7, DesignKind.Computed)]
    [InlineData("North-west Italy", -1.3, DesignKind.Computed), InlineData("Sodankylä", -28.9, DesignKind.Computed)]
    public void A_known_design_temperature_keeps_its_value_and_kind(string name, double temperatureC, DesignKind kind)
    {
        DesignTemperature design = PlaceLibrary.BuiltIn.Find(name)!.Design;
        Assert.Equal((temperatureC, kind), (design.TemperatureC, design.Kind));
    }

    [Theory]
    [InlineData("Nairn", 3), InlineData("Braemar", 3), InlineData("Manchester", 3), InlineData("Davos", 3), InlineData("Samedan", 3), InlineData("Denver", 3)]
    [InlineData("Tromsø", 3), InlineData("Östersund", 3), InlineData("Reykjavík", 3), InlineData("Patscherkofel", 3), InlineData("Lebanon New Hampshire", 3)]
    [InlineData("Seattle", 1), InlineData("New York", 1)]
    public void An_unknown_design_temperature_is_marked_as_estimated_with_its_span(string name, double plusMinusK)
    {
        DesignTemperature design = PlaceLibrary.BuiltIn.Find(name)!.Design;
        Assert.Equal((DesignMeasure.HoursAt996, DesignKind.Estimated, plusMinusK), (design.Measure, design.Kind, design.PlusMinusK));
    }

    [Fact]
    public void A_month_without_mean_or_humidity_is_marked()
    {
        MonthNormals january = PlaceLibrary.BuiltIn.Find("Nairn")!.Months[0];
        Assert.True(january.MeanIsEstimated && january.HumidityIsEstimated);
        // (1.0 + 6.9)/2, exact but for rounding of the sum.
        Assert.Equal(3.95, january.MeanC, 1e-12);
        MonthNormals measured = PlaceLibrary.BuiltIn.Find("Davos")!.Months[0];
        Assert.False(measured.MeanIsEstimated || measured.HumidityIsEstimated);
    }

    [Fact]
    public void Units_of_the_file_become_units_of_the_physics()
    {
        MonthNormals january = PlaceLibrary.BuiltIn.Find("Davos")!.Months[0];
        Assert.Equal(0.76, january.RelativeHumidityFraction);
        Assert.Equal(340, january.VapourPressurePa);
        // 1.63 kWh/m² a day; exact but for rounding.
        Assert.Equal(67.9167, january.GlobalIrradianceWPerM2!.Value, 1e-4);
    }

    // 0.06: the expected mean is rounded to 0.1 °C. Vapour pressure 0.975 to 1.015: the other average took dew points and another saturation formula,
    // which at Sand Point differ by 2 % from humidity times saturation over water.
    [Theory]
    [InlineData("Sand Point", -0.6, 460), InlineData("North-west Colorado", -4.8, 320), InlineData("North-west Italy", 4.1, 741), InlineData("Sodankylä", -7.1, 388)]
    public void The_December_of_an_hourly_series_agrees_with_an_independent_average(string name, double meanC, double vapourPressurePa)
    {
        MonthNormals december = PlaceLibrary.BuiltIn.Find(name)!.Months[11];
        Assert.Equal(meanC, december.MeanC, 0.06);
        Assert.InRange(december.VapourPressurePa / vapourPressurePa, 0.975, 1.015);
    }

    private static string Root()
    {
        string folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Thermal.sln"))) folder = Path.GetDirectoryName(folder)!;
        return folder;
    }

    internal static string TextOf(string resource)
    {
        using var reader = new StreamReader(typeof(PlaceFile).Assembly.GetManifestResourceStream(resource)!);
        return reader.ReadToEnd();
    }
}
