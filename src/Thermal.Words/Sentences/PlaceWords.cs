using System.Globalization;
using Thermal.Climates;

namespace Thermal.Words.Sentences;

/// <summary>What a place is like, in the words of someone who has wintered there.</summary>
public static class PlaceWords
{
    private static readonly string[] Winds = ["north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"];

    /// <summary>An ordinary day of the coldest month, and the cold night a heater is sized for.</summary>
    /// <param name="place">The place.</param>
    /// <param name="figures">Metric or US.</param>
    public static string Verdict(Place place, Figures figures)
    {
        int coldest = Coldest(place);
        MonthNormals month = place.Months[coldest];
        string day = month is { MinC: { } lowC, MaxC: { } highC }
            ? $"A typical {Grammar.Month(coldest + 1)} day in {place.Name} runs from {figures.Temperature(lowC)} to {figures.Temperature(highC)}"
            : $"{Grammar.Month(coldest + 1)} in {place.Name} is {figures.Temperature(month.MeanC)} on average";
        return $"{day}; the cold night a heater is sized for is {WithSpan(place.Design, figures)}, {Names.Of(place.Design.Kind)}.";
    }

    /// <summary>A design temperature with half its span, where one is known: "−21.0 °C ±3.0 K".</summary>
    /// <param name="design">The design temperature.</param>
    /// <param name="figures">Metric or US.</param>
    public static string WithSpan(DesignTemperature design, Figures figures) =>
        design.PlusMinusK > 0 ? $"{figures.Temperature(design.TemperatureC)} ±{figures.Difference(design.PlusMinusK)}" : figures.Temperature(design.TemperatureC);

    /// <summary>Where it lies: "Switzerland, 1594 m, 46.81° N 9.84° E".</summary>
    /// <param name="place">The place.</param>
    /// <param name="figures">Metric or US.</param>
    public static string Where(Place place, Figures figures) => $"{place.Country}, {figures.Altitude(place.AltitudeM)}, {Position(place.LatitudeDeg, place.LongitudeDeg)}";

    /// <summary>Latitude and longitude with their halves: "46.81° N 9.84° E".</summary>
    /// <param name="latitudeDeg">Latitude, degrees, north positive.</param>
    /// <param name="longitudeDeg">Longitude, degrees, east positive.</param>
    public static string Position(double latitudeDeg, double longitudeDeg) =>
        string.Create(CultureInfo.InvariantCulture, $"{Math.Abs(latitudeDeg):F2}° {(latitudeDeg < 0 ? 'S' : 'N')} {Math.Abs(longitudeDeg):F2}° {(longitudeDeg < 0 ? 'W' : 'E')}");

    /// <summary>The nearest of eight directions: "south-east" for 130°.</summary>
    /// <param name="azimuthDeg">Direction, degrees clockwise from north, 0 to 360.</param>
    public static string Direction(double azimuthDeg) => Winds[(int)Math.Round(azimuthDeg / 45, MidpointRounding.AwayFromZero) % Winds.Length];

    /// <summary>The month with the lowest mean, from 0.</summary>
    /// <param name="place">The place.</param>
    public static int Coldest(Place place) => Enumerable.Range(0, Place.MonthCount).MinBy(month => place.Months[month].MeanC);

    /// <summary>Why no hours can be made of a place; null where they can.</summary>
    /// <param name="place">The place.</param>
    public static string? NoHours(Place place)
    {
        string[] lacking = [.. Enumerable.Range(0, Place.MonthCount).Where(month => place.Months[month].MinC is null || place.Months[month].MaxC is null).Select(month => Grammar.Month(month + 1))];
        return lacking.Length == 0 ? null
            : $"No hours can be made, because the mean daily lowest or highest temperature is missing for {(lacking.Length == Place.MonthCount ? "every month" : Grammar.List(lacking))}.";
    }

    /// <summary>What the mark of an estimated figure means.</summary>
    public const string EstimateMark = "≈";

    /// <summary>What the marked figures of a table are estimated from; null where none is marked.</summary>
    /// <param name="months">The months.</param>
    public static string? Estimates(IReadOnlyList<FilledMonth> months)
    {
        (bool IsUsed, string What)[] all =
        [
            (months.Any(month => month.Normals.MeanIsEstimated), "the mean from lowest and highest"),
            (months.Any(month => month.DayMeanSdIsEstimated && month.DayMeanSdK is not null), "the spread of day means from the monthly means"),
            (months.Any(month => month.Normals.HumidityIsEstimated), "humidity from the daily lowest"),
            (months.Any(month => month.VapourPressureIsEstimated), "vapour pressure from humidity"),
            (months.Any(month => month.WindIsAssumed), "wind as assumed"),
            (months.Any(month => month.SunIsEstimated && month.GlobalIrradianceWPerM2 is not null), "sun from the daily range of temperature"),
        ];
        string[] used = [.. all.Where(estimate => estimate.IsUsed).Select(estimate => estimate.What)];
        return used.Length == 0 ? null : $"{EstimateMark} is an estimate of ours, not a figure of the source: {Grammar.List(used)}.";
    }

    /// <summary>A design temperature's measure in as few words as a picture has room for.</summary>
    /// <param name="measure">What it measures.</param>
    public static string Short(DesignMeasure measure) => measure switch
    {
        DesignMeasure.AsNoted => "cold night",
        DesignMeasure.HoursAt996 => "99.6 % of hours",
        DesignMeasure.HoursAt99 => "99 % of hours",
        DesignMeasure.TwoDayMean => "coldest two days",
        DesignMeasure.YearlyLowest => "yearly lowest",
        _ => throw new ArgumentOutOfRangeException(nameof(measure), measure, "There is no word for this value."),
    };

    /// <summary>How the vehicle stands: "nose to the south (180°)", or that nobody knows.</summary>
    /// <param name="headingDeg">Heading, degrees clockwise from north; null where it is not known.</param>
    /// <param name="horizonDeg">Height of the horizon, degrees.</param>
    /// <param name="groundFractions">Share of sun thrown back by the ground, month by month.</param>
    /// <param name="figures">Metric or US.</param>
    public static string Stand(double? headingDeg, double horizonDeg, IReadOnlyList<double> groundFractions, Figures figures)
    {
        string heading = headingDeg is { } known ? $"Nose to the {Direction(known)} ({figures.Write(Shown.Angle, known)})" : "Heading not known, so the upright side with least and with most sun";
        string horizon = horizonDeg > 0 ? $"a horizon {figures.Write(Shown.Angle, horizonDeg)} high all round" : "a flat horizon";
        return $"{heading}; {horizon}; {Ground(groundFractions, figures)}.";
    }

    private static string Ground(IReadOnlyList<double> fractions, Figures figures)
    {
        if (fractions.All(fraction => fraction == fractions[0]))
            return $"the ground throws back {figures.Percent(fractions[0])} of the sun";
        string[] snowy = [.. Enumerable.Range(0, fractions.Count).Where(month => fractions[month] == fractions.Max()).Select(month => Grammar.ShortMonth(month + 1))];
        return $"the ground throws back {figures.Percent(fractions.Max())} of the sun under snow ({string.Join(", ", snowy)}), else {figures.Percent(fractions.Min())}";
    }
}
