using Thermal.Climates;
using Thermal.Files.Tests.Weathers;

namespace Thermal.Files.Tests;

/// <summary>A real year, its normals, and twenty years generated from them: how far they may be trusted.</summary>
public sealed class RealYearTests
{
    private const int SeedCount = 20;

    public static TheoryData<string> Names => [RealYears.SandPoint, RealYears.Colorado, RealYears.Italy, RealYears.Sodankyla];

    private static Place PlaceOf(Weather year, bool isSpreadKnown) => new()
    {
        Name = year.Name,
        Country = "of the sample",
        LatitudeDeg = year.LatitudeDeg,
        LongitudeDeg = year.LongitudeDeg,
        AltitudeM = year.AltitudeM,
        Months = [.. PlaceNormals.Of(year).Select(month => isSpreadKnown ? month : month with { DayMeanSdK = null })],
        Design = new() { TemperatureC = DesignConditions.Of(year).HoursAt996C, Kind = DesignKind.Computed, PlusMinusK = 0, Note = "of one year" },
        Source = year.Source,
        Period = "one year",
        Licence = "see the samples",
    };

    private static IEnumerable<Weather> Years(Place place) => Enumerable.Range(1, SeedCount).Select(seed => GeneratedWeather.Typical(place, seed));

    private static double DegreeHours(Weather year) => year.AirC.Sum(airC => Math.Max(0, 18 - airC)) * year.StepS / 3600;

    [Theory, MemberData(nameof(Names))]
    public void Degree_hours_come_back_within_two_per_cent(string name)
    {
        Weather real = RealYears.Of(name).Weather;
        foreach (bool isSpreadKnown in new[] { true, false })
            Assert.InRange(Years(PlaceOf(real, isSpreadKnown)).Average(DegreeHours) / DegreeHours(real), 0.98, 1.02);
    }

    // Short of the normal only where a cold even month has no room for its vapour below saturation: Sodankylä's January with the usual spread.
    [Theory, MemberData(nameof(Names))]
    public void Monthly_vapour_pressure_comes_back(string name)
    {
        Weather real = RealYears.Of(name).Weather;
        foreach ((bool isSpreadKnown, double offFraction) in new[] { (true, 0.01), (false, 0.065) })
        {
            Place place = PlaceOf(real, isSpreadKnown);
            double[] sums = new double[12];
            foreach (Weather year in Years(place))
            {
                IReadOnlyList<MonthNormals> months = PlaceNormals.Of(year);
                for (int m = 0; m < 12; m++) sums[m] += months[m].VapourPressurePa / SeedCount;
            }
            for (int m = 0; m < 12; m++) Assert.InRange(sums[m] / place.Months[m].VapourPressurePa, 1 - offFraction, 1 + offFraction);
        }
    }

    [Theory, MemberData(nameof(Names))]
    public void The_temperature_of_996_in_a_thousand_hours_comes_back_within_two_and_a_half_kelvin_with_the_own_spread(string name)
    {
        Weather real = RealYears.Of(name).Weather;
        Assert.Equal(DesignConditions.Of(real).HoursAt996C, Years(PlaceOf(real, true)).Average(year => DesignConditions.Of(year).HoursAt996C), 2.5);
    }

    // An independent count of the same hours: -8.9, -14.7, -1.3, -28.9 °C, printed to 0.1. Sand Point is moved by half an hour: 0.2 K.
    [Theory, InlineData(RealYears.SandPoint, -8.9, 0.25), InlineData(RealYears.Colorado, -14.7, 0.06), InlineData(RealYears.Italy, -1.3, 0.06), InlineData(RealYears.Sodankyla, -28.9, 0.06)]
    public void The_temperature_of_996_in_a_thousand_hours_is_that_counted_outside(string name, double airC, double offK) =>
        Assert.Equal(airC, DesignConditions.Of(RealYears.Of(name).Weather).HoursAt996C, offK);

    // An independent computation with the same formulas found day means 0.6 K too warm on average, 4.0 K root mean square. 0.3 K: its days are those of universal time and
    // of whole hours, ours begin with the file.
    [Fact]
    public void The_computed_sky_of_an_arctic_year_is_six_tenths_of_a_kelvin_too_warm_by_day_means()
    {
        Weather measured = RealYears.Of(RealYears.Sodankyla).Weather, computed = RealYears.SodankylaWithComputedSky();
        double[] offK = [.. Enumerable.Range(0, measured.Count / 24).Select(day => Enumerable.Range(24 * day, 24).Average(hour => computed.SkyC![hour] - measured.SkyC![hour]))];
        Assert.Equal(0.6, offK.Average(), 0.3);
        Assert.Equal(4.0, Math.Sqrt(offK.Average(off => off * off)), 0.4);
    }
}
