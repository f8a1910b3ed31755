using Thermal.Climates;
using Thermal.Files.Weathers;

namespace Thermal.Files.Tests.Weathers;

/// <summary>The four real years come out as an independent count found them.</summary>
public sealed class RealFileTests
{
    // Means and extremes are printed to 0.1 °C. Sand Point is moved by half an hour, which takes the points off the peaks, and its readings are whole
    // degrees: an hour of exactly 0 beside one of frost becomes frost, 3 % more.
    [Theory]
    [InlineData(RealYears.SandPoint, 4.4, -10.6, 19.4, 1640, 0.6, 50), InlineData(RealYears.Colorado, 7.7, -16.3, 36.2, 3016, 0.06, 0)]
    [InlineData(RealYears.Italy, 13.6, -2.3, 34.3, 164, 0.06, 0), InlineData(RealYears.Sodankyla, 1.9, -31.7, 28.7, 3849, 0.11, 0)]
    public void Mean_extremes_and_hours_of_frost_are_those_counted_outside(string name, double meanC, double lowestC, double highestC, int frostCount, double offK, int hours)
    {
        Weather year = RealYears.Of(name).Weather;
        Assert.Equal(8760, year.Count);
        Assert.Equal(3600, year.StepS);
        Assert.Equal(meanC, year.AirC.Average(), 0.06);
        Assert.Equal(lowestC, year.AirC.Min(), offK);
        Assert.Equal(highestC, year.AirC.Max(), offK);
        Assert.InRange(year.AirC.Count(airC => airC < 0), frostCount - hours, frostCount + hours);
    }

    // Row e of an independent average, printed to 1 Pa. It took dew points where the file has them; these are rounded on their own: 0.3 % in Colorado, 2.4 % at Sand Point,
    // whose dew points are whole degrees; 0.1 %: months of universal time there, of the middles of hours and local time here.
    [Theory]
    [InlineData(RealYears.SandPoint, 0.025, 552, 487, 549, 534, 585, 826, 943, 1110, 798, 637, 461, 460), InlineData(RealYears.Colorado, 0.003, 311, 280, 412, 425, 640, 813, 882, 865, 730, 484, 327, 320)]
    [InlineData(RealYears.Italy, 0.001, 754, 797, 791, 1146, 1405, 1443, 1769, 1874, 1698, 1385, 730, 741), InlineData(RealYears.Sodankyla, 0.001, 237, 457, 402, 419, 628, 873, 1371, 1261, 881, 595, 412, 388)]
    public void Monthly_vapour_pressure_is_that_averaged_outside(string name, double offFraction, params int[] vapourPa)
    {
        IReadOnlyList<MonthNormals> months = PlaceNormals.Of(RealYears.Of(name).Weather);
        for (int m = 0; m < 12; m++) Assert.Equal(vapourPa[m], months[m].VapourPressurePa, 1 + offFraction * vapourPa[m]);
    }

    // Rows t and h of the same average, printed to 0.1 °C and 1 Wh/m² a day. Days of Italy are those of local standard time here, of universal time there:
    // an hour at each end of a month, as at Sodankylä, whose stamps are the ends of hours: 30 K in 700 hours.
    [Theory]
    [InlineData(RealYears.SandPoint, 0.6, 1.2, 1.7, 2.1, 3.2, 8.1, 11.8, 11.9, 7.9, 4.5, 0.4, -0.6), InlineData(RealYears.Colorado, -5.5, -4.0, 0.2, 6.0, 10.4, 20.1, 24.4, 21.1, 17.2, 8.1, -1.6, -4.8)]
    [InlineData(RealYears.Italy, 5.2, 7.0, 8.7, 12.4, 17.0, 22.5, 21.9, 22.1, 20.2, 15.0, 6.3, 4.1), InlineData(RealYears.Sodankyla, -14.0, -4.0, -3.2, 0.1, 5.5, 10.3, 18.1, 13.7, 7.7, 0.5, -5.4, -7.1)]
    public void Monthly_temperature_is_that_averaged_outside(string name, params double[] meanC)
    {
        IReadOnlyList<MonthNormals> months = PlaceNormals.Of(RealYears.Of(name).Weather);
        for (int m = 0; m < 12; m++) Assert.Equal(meanC[m], months[m].MeanC, 0.10);
    }

    [Theory]
    [InlineData(RealYears.SandPoint, 583, 3806, 462), InlineData(RealYears.Colorado, 2388, 8113, 2110), InlineData(RealYears.Italy, 1543, 7205, 1491), InlineData(RealYears.Sodankyla, 43, 3858, 5)]
    public void Sun_of_January_June_and_December_is_that_averaged_outside(string name, double januaryWhPerM2, double juneWhPerM2, double decemberWhPerM2)
    {
        IReadOnlyList<MonthNormals> months = PlaceNormals.Of(RealYears.Of(name).Weather);
        Assert.Equal(januaryWhPerM2, months[0].GlobalIrradianceWPerM2!.Value * 24, 1.0);
        // Two hours of a June night's dusk at Sodankylä fall into another month.
        Assert.Equal(juneWhPerM2, months[5].GlobalIrradianceWPerM2!.Value * 24, 2.0);
        Assert.Equal(decemberWhPerM2, months[11].GlobalIrradianceWPerM2!.Value * 24, 1.0);
    }

    [Theory]
    [InlineData(RealYears.SandPoint, WeatherLayout.Tmy3, "MovedToMiddle YearsJoined SkyComputed"), InlineData(RealYears.Colorado, WeatherLayout.OwnColumns, "SkyComputed")]
    [InlineData(RealYears.Italy, WeatherLayout.EuropeanService, "OffsetFromLongitude SunIsLater YearsJoined"), InlineData(RealYears.Sodankyla, WeatherLayout.OwnColumns, "HumidityCapped SunSplit")]
    public void Layout_and_remarks_tell_what_was_done(string name, WeatherLayout layout, string remarks)
    {
        WeatherReading year = RealYears.Of(name);
        Assert.Equal(layout, year.Layout);
        Assert.Equal(remarks, string.Join(' ', year.Remarks.Select(remark => remark.Kind)));
    }

    [Theory]
    [InlineData(RealYears.SandPoint), InlineData(RealYears.Colorado), InlineData(RealYears.Italy), InlineData(RealYears.Sodankyla)]
    public void A_real_year_written_and_read_again_is_the_same_text_again(string name)
    {
        string written = WeatherFile.Write(RealYears.Of(name).Weather);
        Reading<WeatherReading> again = WeatherFile.Read(written, "again.csv");
        Assert.Empty(again.Problems);
        Assert.Equal(written, WeatherFile.Write(again.Value!.Weather));
    }
}
