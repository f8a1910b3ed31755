using Thermal.Air;
using Thermal.Climates;
using Thermal.Files;

namespace Thermal.Tests.Property;

/// <summary>What every generated year must keep, whatever its place and seed.</summary>
public sealed class GeneratedWeatherLaws
{
    private static readonly int[] Days = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

    public static TheoryData<string, int> PlacesAndSeeds
    {
        get
        {
            TheoryData<string, int> rows = [];
            foreach (Place place in PlaceLibrary.BuiltIn.All)
                foreach (int seed in new[] { 1, 7 }) rows.Add(place.Name, seed);
            return rows;
        }
    }

    private static IEnumerable<(MonthNormals Month, Range Hours)> Months(Place place)
    {
        for (int m = 0, from = 0; m < 12; from += 24 * Days[m++]) yield return (place.Months[m], from..(from + 24 * Days[m]));
    }

    private static double Mean(IReadOnlyList<double> values, Range hours) => values.Take(hours).Average();

    // 1e-9: rounding of sums of 744 figures. Vapour: 1e-6 of itself is the width left by 40 halvings; a month that saturation holds below is in the next test.
    [Theory, MemberData(nameof(PlacesAndSeeds))]
    public void Monthly_means_come_back(string name, int seed)
    {
        Place place = PlaceLibrary.BuiltIn.Find(name)!;
        Weather year = GeneratedWeather.Typical(place, seed);
        Assert.Equal(8760, year.Count);
        foreach ((MonthNormals month, Range hours) in Months(place))
        {
            Assert.Equal(month.MeanC, Mean(year.AirC, hours), 1e-9);
            Assert.InRange(Mean(year.VapourPa, hours), 0.85 * month.VapourPressurePa, month.VapourPressurePa * (1 + 1e-6));
            Assert.Equal(month.WindMPerS ?? GeneratedWeather.WindWithoutNormalMPerS, Mean(year.WindMPerS, hours), 1e-9);
            if (month.GlobalIrradianceWPerM2 is { } sun && (place.LatitudeDeg < 66 || sun > 10)) Assert.Equal(sun, Mean(year.GlobalWPerM2!, hours), sun * 1e-9);
        }
    }

    [Theory, MemberData(nameof(PlacesAndSeeds))]
    public void No_hour_holds_what_it_cannot(string name, int seed)
    {
        Place place = PlaceLibrary.BuiltIn.Find(name)!;
        Weather year = GeneratedWeather.Typical(place, seed);
        for (int i = 0; i < year.Count; i++)
        {
            Assert.InRange(year.VapourPa[i], 1, SaturationPressure.OverWaterPa(year.AirC[i]) * (1 + 1e-12));
            Assert.InRange(year.SkyC![i], year.AirC[i] - 45, year.AirC[i] + 1e-9);
            Assert.InRange(year.BeamNormalWPerM2![i], 0, 1420);
            Assert.InRange(year.DiffuseWPerM2![i], 0, year.GlobalWPerM2![i] + 1e-9);
            Assert.InRange(year.WindMPerS[i], 0, 60);
        }
    }

    [Fact]
    public void Equal_seeds_give_equal_bits_and_others_another_year()
    {
        Place davos = PlaceLibrary.BuiltIn.Find("Davos")!;
        Weather one = GeneratedWeather.Typical(davos, 3), again = GeneratedWeather.Typical(davos, 3), other = GeneratedWeather.Typical(davos, 4);
        Assert.Equal(one.AirC, again.AirC);
        Assert.Equal(one.WindMPerS, again.WindMPerS);
        Assert.Equal(one.GlobalWPerM2, again.GlobalWPerM2);
        Assert.NotEqual(one.AirC, other.AirC);
    }

    // The spread of day means about the smooth course of the year, which a place without any spread shows alone, is put in exactly but for the first and last day of a month,
    // whose neighbours spread otherwise: 6 % where a month of 8 K meets one of 5 K.
    [Theory, InlineData(1), InlineData(2), InlineData(3)]
    public void Day_means_spread_as_the_place_says(int seed)
    {
        Place place = PlaceLibrary.BuiltIn.Find("Sodankylä")!;
        Weather year = GeneratedWeather.Typical(place, seed), smooth = GeneratedWeather.Typical(place with { Months = [.. place.Months.Select(month => month with { DayMeanSdK = 0 })] }, seed);
        foreach ((MonthNormals month, Range hours) in Months(place))
        {
            double[] departures = [.. DayMeans(year, hours).Zip(DayMeans(smooth, hours), (day, course) => day - course)];
            Assert.Equal(month.DayMeanSdK!.Value, Math.Sqrt(Variance(departures)), 0.06 * month.DayMeanSdK.Value);
        }
    }

    private static double[] DayMeans(Weather year, Range hours) => [.. year.AirC.Take(hours).Chunk(24).Select(day => day.Average())];

    private static double Variance(double[] values)
    {
        double mean = values.Average();
        return values.Sum(value => (value - mean) * (value - mean)) / (values.Length - 1);
    }

    /// <summary>Weibull with k = 1.8: standard deviation over mean √(Γ(1 + 2/k)/Γ(1 + 1/k)² − 1) = 0.575; hours that keep 0.9 of the one before.</summary>
    [Fact]
    public void Wind_is_spread_and_lasts_as_measured_winds_do()
    {
        IReadOnlyList<double> january = [.. GeneratedWeather.Typical(PlaceLibrary.BuiltIn.Find("Davos")!).WindMPerS.Take(744)];
        double mean = january.Average(), variance = january.Average(speed => (speed - mean) * (speed - mean));
        // 744 hours that hang together are some 40 free ones: a fifth for the spread; 0.05 for what stays, besides what the skew takes from it.
        Assert.InRange(Math.Sqrt(variance) / mean, 0.46, 0.69);
        Assert.InRange(january.Zip(january.Skip(1), (one, next) => (one - mean) * (next - mean)).Average() / variance, 0.83, 0.95);
    }

    [Theory, MemberData(nameof(PlacesAndSeeds))]
    public void A_cold_spell_reaches_the_design_temperature_and_no_less(string name, int days)
    {
        Place place = PlaceLibrary.BuiltIn.Find(name)!;
        Weather spell = GeneratedWeather.ColdSpell(place, days);
        Assert.Equal(24 * days, spell.Count);
        // The coldest half hour need not fall on a step's middle: half an hour of the flat bottom of the cycle is 2 % of the range, at most 0.4 K.
        Assert.InRange(spell.AirC.Min(), place.Design.TemperatureC - 1e-4, place.Design.TemperatureC + 0.4);
        Assert.All(spell.SkyC!, (sky, i) => Assert.InRange(spell.AirC[i] - sky, 12, 35));
        // Clear days: the sun above the air would bring more, dull ones less than half of it.
        if (Math.Abs(place.LatitudeDeg) < 60) Assert.InRange(spell.GlobalWPerM2!.Take(24).Sum() / SunAboveAir.DayWhPerM2(place.LatitudeDeg, spell.MiddleLocal(12).DayOfYear), 0.4, 0.85);
    }

    [Fact]
    public void What_the_normals_lack_is_said()
    {
        Place nairn = PlaceLibrary.BuiltIn.Find("Nairn")!;
        Assert.Equal([WeatherGap.SpreadEstimated, WeatherGap.SunEstimated, WeatherGap.WindAssumed, WeatherGap.HumidityEstimated, WeatherGap.SkyComputed], GeneratedWeather.Typical(nairn).Gaps);
        Assert.Equal([WeatherGap.SkyComputed], GeneratedWeather.Typical(PlaceLibrary.BuiltIn.Find("Sodankylä")!).Gaps);
    }

    [Fact]
    public void A_month_without_its_daily_range_is_refused_by_name()
    {
        Place davos = PlaceLibrary.BuiltIn.Find("Davos")!;
        Place without = davos with { Months = [.. davos.Months.Select((month, i) => i == 4 ? month with { MinC = null } : month)] };
        Assert.Contains("month 5", Assert.Throws<ArgumentException>(() => GeneratedWeather.Typical(without)).Message, StringComparison.Ordinal);
    }
}
