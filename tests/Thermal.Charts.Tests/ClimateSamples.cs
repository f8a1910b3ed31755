using Thermal.Climates;

namespace Thermal.Charts.Tests;

/// <summary>Invented places and their weather.</summary>
internal static class ClimateSamples
{
    internal static Place Alpine { get; } = PlaceOf("Alpine valley", 46.8, -5, 18, 8,
        new DesignTemperature { TemperatureC = -17, Kind = DesignKind.Estimated, PlusMinusK = 3, Measure = DesignMeasure.HoursAt996, Note = "invented" });

    internal static Place Arctic { get; } = PlaceOf("Arctic", 67, -14, 32, 7,
        new DesignTemperature { TemperatureC = -29, Kind = DesignKind.Computed, PlusMinusK = 0, Measure = DesignMeasure.HoursAt996, Note = "invented" }) with
    {
        OtherDesigns =
        [
            new DesignTemperature { TemperatureC = -26, Kind = DesignKind.Published, PlusMinusK = 1, Measure = DesignMeasure.HoursAt99, Note = "invented" },
            new DesignTemperature { TemperatureC = -28, Kind = DesignKind.Computed, PlusMinusK = 2, Measure = DesignMeasure.TwoDayMean, Note = "invented" },
            new DesignTemperature { TemperatureC = -33, Kind = DesignKind.Computed, PlusMinusK = 2, Measure = DesignMeasure.YearlyLowest, Note = "invented" },
        ],
    };

    internal static Place MeansAlone { get; } = Alpine with
    {
        Name = "A place with a rather long name of which little is known",
        Months = [.. Alpine.Months.Select(month => new MonthNormals { MeanC = month.MeanC, RelativeHumidityFraction = 0.8, HumidityIsEstimated = true })],
    };

    internal static Weather AlpineYear { get; } = GeneratedWeather.Typical(Alpine);

    internal static Weather ArcticYear { get; } = GeneratedWeather.Typical(Arctic);

    internal static Weather MildYear { get; } = GeneratedWeather.Typical(PlaceOf("Mild coast", 37, 12, 12, 6, Alpine.Design));

    internal static SunGrid HeadingSouth { get; } = SunGrid.Of("Alpine valley", "Nose to the south.", SunOnVehicle.Months(AlpineYear, 180, 10, GroundCover.EvenFraction(0.2)));

    internal static SunGrid AnyHeading { get; } = SunGrid.Of("Alpine valley", "Heading not known.", SunOnVehicle.AnyHeading(AlpineYear, 0, GroundCover.EvenFraction(0.7)));

    internal static IReadOnlyList<SunPath> PathsAt(double latitudeDeg) => SunPath.ThreeDays(latitudeDeg, 10, 2025);

    private static Place PlaceOf(string name, double latitudeDeg, double januaryC, double swingK, double rangeK, DesignTemperature design) => new()
    {
        Name = name,
        Country = "Nowhere",
        LatitudeDeg = latitudeDeg,
        LongitudeDeg = 10,
        AltitudeM = 900,
        Design = design,
        Source = "invented",
        Period = "2000-2020",
        Licence = "none",
        Months = [.. Enumerable.Range(0, 12).Select(month =>
        {
            double meanC = januaryC + swingK * (1 - Math.Cos(2 * Math.PI * month / 12)) / 2;
            return new MonthNormals
            {
                MeanC = meanC, MinC = meanC - rangeK / 2, MaxC = meanC + rangeK / 2, RelativeHumidityFraction = 0.75, WindMPerS = 3,
                GlobalIrradianceWPerM2 = Math.Max(5, 0.45 * SunAboveAir.DayWhPerM2(latitudeDeg, 15 + 30 * month) / 24),
            };
        })],
    };
}
