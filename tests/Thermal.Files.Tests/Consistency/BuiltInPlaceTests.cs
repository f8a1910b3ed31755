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
    public void There_are_fifteen_built_in_places_each_with_its_own_name() =>
        Assert.Equal(15, PlaceLibrary.BuiltIn.All.Select(place => place.Name).Distinct().Count());

    [Fact]
    public void Every_built_in_place_names_years_and_on_whose_word_it_may_be_passed_on() => Assert.Empty(
        from place in PlaceLibrary.BuiltIn.All
        where !place.Period.Any(char.IsDigit) || !(place.Licence.Contains("as stated by", StringComparison.Ordinal)
            || place.Licence.Contains("from memory", StringComparison.Ordinal) || place.Licence.Contains("was not found", StringComparison.Ordinal)
            || place.Licence.Contains("was seen", StringComparison.Ordinal))
        select $"{place.Name}: {place.Period}; {place.Licence}");

    // Found in a table of design conditions or computed from readings outside this project.
    [Theory]
    [InlineData("Zürich", -10.4, DesignKind.Published), InlineData("Geneva", -8.0, DesignKind.Published), InlineData("Sion", -8.0, DesignKind.Computed)]
    [InlineData("Sand Point", -8.9, DesignKind.Computed), InlineData("North-west Colorado", -14.7, DesignKind.Computed)]
    [InlineData("North-west Italy", -1.3, DesignKind.Computed), InlineData("Sodankylä", -28.9, DesignKind.Computed)]
    public void A_known_design_temperature_keeps_its_value_and_kind(string name, double temperatureC, DesignKind kind)
    {
        DesignTemperature design = PlaceLibrary.BuiltIn.Find(name)!.Design;
        Assert.Equal((temperatureC, kind), (design.TemperatureC, design.Kind));
    }

    [Theory]
    [InlineData("Nairn"), InlineData("Braemar"), InlineData("Manchester"), InlineData("Davos"), InlineData("Samedan"), InlineData("Denver"), InlineData("Seattle"), InlineData("New York")]
    public void An_unknown_design_temperature_is_marked_as_estimated_with_its_span(string name)
    {
        DesignTemperature design = PlaceLibrary.BuiltIn.Find(name)!.Design;
        Assert.Equal((DesignKind.Estimated, 3.0), (design.Kind, design.PlusMinusK));
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

    internal static string TextOf(string resource)
    {
        using var reader = new StreamReader(typeof(PlaceFile).Assembly.GetManifestResourceStream(resource)!);
        return reader.ReadToEnd();
    }
}
