namespace Thermal.Climates;

/// <summary>A place's months laid over the days and hours of a year, with what its normals lack filled in and said.</summary>
internal sealed class YearPlan
{
    internal const int DayCount = 365, HourCount = 24 * DayCount;
    private static readonly int[] DaysOf = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
    private readonly int[] monthOfDay = new int[DayCount];

    private YearPlan(Place place, int year)
    {
        Place = place;
        UtcOffsetH = Math.Round(place.LongitudeDeg / 15);
        StartUtc = new DateTime(year, 1, 1, 0, 0, 0, DateTimeKind.Utc).AddHours(-UtcOffsetH);
        double yearlySdK = DaySpread.YearlySdK(place.Months);
        List<WeatherGap> gaps = [];
        for (int m = 0, day = 0; m < Place.MonthCount; m++)
        {
            for (int i = 0; i < DaysOf[m]; i++) monthOfDay[day++] = m;
            MonthNormals month = place.Months[m];
            if (month.MinC is not { } lowest || month.MaxC is not { } highest)
                throw new ArgumentException($"{place.Name} has no mean daily lowest and highest temperature for month {m + 1}: hours cannot be made.", nameof(place));
            if (month.DayMeanSdK is null) Add(gaps, WeatherGap.SpreadEstimated);
            if (month.GlobalIrradianceWPerM2 is null) Add(gaps, WeatherGap.SunEstimated);
            if (month.WindMPerS is null) Add(gaps, WeatherGap.WindAssumed);
            if (month.HumidityIsEstimated) Add(gaps, WeatherGap.HumidityEstimated);
            SpreadK[m] = month.DayMeanSdK ?? DaySpread.EstimateK(month.MeanC, yearlySdK);
            RangeK[m] = DailyCycle.RangeK(lowest, highest, SpreadK[m]);
            double aboveAir = 0;
            for (int d = FirstDay(m); d < FirstDay(m) + DaysOf[m]; d++) aboveAir += SunAboveAir.DayWhPerM2(place.LatitudeDeg, d + 1);
            SunWhPerM2[m] = month.GlobalIrradianceWPerM2 * 24 ?? SunFromRangeRatio * Math.Sqrt(Math.Max(0, highest - lowest)) * aboveAir / DaysOf[m];
        }
        Gaps = [.. gaps, WeatherGap.SkyComputed];
    }

    /// <summary>Global light over that without air, per root of the daily range, 1/√K. Source: FAO-56, inland (from memory); 0.83 to 1.22 of the measured at five stations.</summary>
    private const double SunFromRangeRatio = 0.16;

    internal Place Place { get; }
    internal double UtcOffsetH { get; }
    internal DateTime StartUtc { get; }
    internal double[] SpreadK { get; } = new double[Place.MonthCount];
    internal double[] RangeK { get; } = new double[Place.MonthCount];
    internal double[] SunWhPerM2 { get; } = new double[Place.MonthCount];
    internal IReadOnlyList<WeatherGap> Gaps { get; }

    internal static YearPlan Of(Place place, int year) => new(place, year);

    internal static int DaysIn(int month) => DaysOf[month];

    internal int FirstDay(int month) => Array.IndexOf(monthOfDay, month);

    internal int MonthOfDay(int day) => monthOfDay[day];

    internal int MonthOf(int hour) => monthOfDay[hour / 24];

    internal Weather Framed(WeatherKind kind, double[] air, double[] vapour) => new()
    {
        Name = Place.Name,
        LatitudeDeg = Place.LatitudeDeg,
        LongitudeDeg = Place.LongitudeDeg,
        AltitudeM = Place.AltitudeM,
        UtcOffsetH = UtcOffsetH,
        Kind = kind,
        Source = $"made from the monthly normals of {Place.Source}; {Place.Period}; {Place.Licence}",
        StartUtc = StartUtc,
        StepS = 3600,
        AirC = air,
        VapourPa = vapour,
        WindMPerS = [],
        Gaps = Gaps,
    };

    private static void Add(List<WeatherGap> gaps, WeatherGap gap)
    {
        if (!gaps.Contains(gap)) gaps.Add(gap);
    }
}
