using Thermal.Air;

namespace Thermal.Climates;

/// <summary>Vapour pressures of a generated year: constant within a day, following saturation from day to day, never above saturation.</summary>
internal static class YearVapour
{
    private const int Rounds = 40;

    internal static double[] HoursPa(YearPlan plan, double[] airC)
    {
        double[] saturated = new double[airC.Length], ofDays = new double[YearPlan.DayCount], hours = new double[airC.Length];
        for (int hour = 0; hour < airC.Length; hour++) saturated[hour] = SaturationPressure.OverWaterPa(airC[hour]);
        for (int day = 0; day < ofDays.Length; day++)
        {
            double mean = 0;
            for (int h = 0; h < 24; h++) mean += airC[24 * day + h] / 24;
            ofDays[day] = SaturationPressure.OverWaterPa(mean);
        }
        for (int m = 0; m < Place.MonthCount; m++) Month(plan, m, saturated, ofDays, hours);
        return hours;
    }

    /// <summary>Finds the one factor on saturation at the day mean that gives the month its mean; the largest where saturation holds it below.</summary>
    private static void Month(YearPlan plan, int month, double[] saturated, double[] ofDays, double[] hours)
    {
        int first = plan.FirstDay(month), end = first + YearPlan.DaysIn(month);
        double wanted = plan.Place.Months[month].VapourPressurePa, low = 0, high = 1;
        while (MeanPa(high) < wanted && high < 16) high *= 2;
        for (int round = 0; round < Rounds; round++)
        {
            double middle = (low + high) / 2;
            if (MeanPa(middle) < wanted) low = middle;
            else high = middle;
        }
        MeanPa(high);

        double MeanPa(double factor)
        {
            double sum = 0;
            for (int day = first; day < end; day++)
                for (int hour = 24 * day; hour < 24 * day + 24; hour++)
                    sum += hours[hour] = Math.Min(factor * ofDays[day], saturated[hour]);
            return sum / (24 * (end - first));
        }
    }
}
