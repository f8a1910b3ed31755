using Thermal.Numerics;

namespace Thermal.Climates;

/// <summary>Sun of a generated year.</summary>
internal sealed class YearSun
{
    /// <summary>Share of a day's departure that the next keeps, for the order of clear and dull days. Source: RICHARDSON-1981, solved for the sun.</summary>
    private const double DayToDayFactor = 0.25;
    /// <summary>Less than this above the air in a day counts as polar night, Wh/m². Source: OURS.</summary>
    private const double PolarNightWhPerM2 = 500;

    internal double[] GlobalWPerM2 { get; } = new double[YearPlan.HourCount];
    internal double[] BeamNormalWPerM2 { get; } = new double[YearPlan.HourCount];
    internal double[] DiffuseWPerM2 { get; } = new double[YearPlan.HourCount];
    internal double[] DayCloudFraction { get; } = new double[YearPlan.DayCount];

    /// <summary>Clearness of each day: quantiles of the month's spread in an order that keeps a little from day to day, scaled to the month's sum.</summary>
    internal static double[] DayRatios(YearPlan plan, RandomStream random)
    {
        double[] ratios = new double[YearPlan.DayCount], chain = new double[YearPlan.DayCount];
        random.FillChain(chain, DayToDayFactor);
        for (int m = 0; m < Place.MonthCount; m++)
        {
            int first = plan.FirstDay(m), count = YearPlan.DaysIn(m);
            double above = 0, given = 0;
            for (int day = first; day < first + count; day++) above += AboveAirWhPerM2(plan, day);
            if (above <= 0) continue;
            double month = plan.SunWhPerM2[m] * count / above;
            int[] order = [.. Enumerable.Range(first, count).OrderBy(day => chain[day])];
            for (int rank = 0; rank < count; rank++)
            {
                // Outside the range the spread was found for (a month of a few minutes' sun, snow light from all sides) every day is alike.
                ratios[order[rank]] = month is >= DayClearness.LowestMeanRatio and <= DayClearness.HighestMeanRatio
                    ? DayClearness.QuantileRatio(month, (rank + 0.5) / count) : month;
                given += ratios[order[rank]] * AboveAirWhPerM2(plan, order[rank]);
            }
            if (given > 0)
                for (int day = first; day < first + count; day++) ratios[day] *= plan.SunWhPerM2[m] * count / given;
        }
        return ratios;
    }

    /// <summary>Hours from the clearness of their days.</summary>
    internal static YearSun Of(YearPlan plan, double[] dayRatios)
    {
        YearSun sun = new();
        for (int day = 0; day < YearPlan.DayCount; day++)
        {
            double above = AboveAirWhPerM2(plan, day);
            sun.DayCloudFraction[day] = above < PolarNightWhPerM2 ? GeneratedWeather.PolarNightCloudFraction
                : SkyTemperature.CloudFraction(dayRatios[day] * above, above, plan.Place.AltitudeM);
            if (above > 0) sun.Day(plan, day, dayRatios[day] * above, above);
        }
        return sun;
    }

    /// <summary>Splits a day's sum over its hours, and each hour into beam and sky light.</summary>
    private void Day(YearPlan plan, int day, double globalWhPerM2, double aboveAirWhPerM2)
    {
        double sunset = SunAboveAir.SunsetDeg(plan.Place.LatitudeDeg, day + 1), solarAheadH = plan.Place.LongitudeDeg / 15 - plan.UtcOffsetH;
        Span<double> global = stackalloc double[24], above = stackalloc double[24];
        double globals = 0, aboves = 0;
        for (int h = 0; h < 24; h++)
        {
            double angle = 15 * (h + 0.5 + solarAheadH - 12);
            angle -= 360 * Math.Round(angle / 360);
            globals += global[h] = HourShare.OfGlobalFraction(angle, sunset);
            aboves += above[h] = HourShare.OfDiffuseFraction(angle, sunset);
        }
        if (!(globals > 0 && aboves > 0)) return;
        double normal = SunAboveAir.NormalWPerM2(day + 1);
        for (int h = 0; h < 24; h++)
        {
            double onFlat = global[h] / globals * globalWhPerM2, withoutAir = above[h] / aboves * aboveAirWhPerM2;
            if (!(onFlat > 0)) continue;
            int hour = 24 * day + h;
            double height = withoutAir / normal, diffuse = onFlat * DiffuseShare.OfHourFraction(Math.Min(1.2, onFlat / withoutAir));
            // No beam is stronger than under a clear sky: with the sun at the horizon the air takes most of it, and the rest is sky light.
            double clear = ClearSky.BeamNormalWPerM2(Math.Asin(Math.Min(1, height)) * 180 / Math.PI, day + 1);
            double beam = Math.Min((onFlat - diffuse) / height, clear);
            (GlobalWPerM2[hour], BeamNormalWPerM2[hour], DiffuseWPerM2[hour]) = (onFlat, beam, onFlat - beam * height);
        }
    }

    private static double AboveAirWhPerM2(YearPlan plan, int day) => SunAboveAir.DayWhPerM2(plan.Place.LatitudeDeg, day + 1);
}
