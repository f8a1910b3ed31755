using Thermal.Air;
using Thermal.Climates;

namespace Thermal.Files.Weathers;

/// <summary>Vapour pressure by the step, from whichever humidity the file has.</summary>
internal static class VapourOfSteps
{
    // Sensors in fog read a little above 100 %; more than this is another unit or another column. Source: OURS.
    private const double MostAboveSaturationRatio = 1.05;

    // The driest air of a desert year stays above a tenth of saturation on average. Source: OURS.
    private const double LeastMeanRatio = 0.05;

    /// <summary>Pa, at most saturation over water, which is remarked; null, with the problems named, where it cannot belong to the air.</summary>
    internal static double[]? Pa(FilledSteps filled, WeatherRows rows, List<WeatherRemark> remarks, ProblemList problems)
    {
        Quantity given = filled[Quantity.HumidityPercent] is not null ? Quantity.HumidityPercent : filled[Quantity.Vapour] is not null ? Quantity.Vapour : Quantity.DewPoint;
        double[] air = filled[Quantity.Air]!, humidity = filled[given]!, vapour = new double[air.Length];
        double sum = 0, saturatedSum = 0;
        int capped = 0;
        bool isRight = true;
        for (int i = 0; i < air.Length; i++)
        {
            double saturated = SaturationPressure.OverWaterPa(air[i]);
            vapour[i] = given switch
            {
                Quantity.HumidityPercent => humidity[i] / 100 * saturated,
                Quantity.DewPoint => SaturationPressure.OverWaterPa(humidity[i]),
                _ => humidity[i],
            };
            sum += vapour[i];
            saturatedSum += saturated;
            if (!(vapour[i] > saturated)) continue;
            if (vapour[i] > MostAboveSaturationRatio * saturated)
            {
                isRight = false;
                int row = Math.Max(0, Array.BinarySearch(filled.Steps.Positions, i));
                problems.Add(rows.Lines[row], 1, rows.NameOf(given), $"makes {vapour[i]:0} Pa of vapour in air of {air[i]:0.0} °C, which holds {saturated:0} Pa at most; check the units of both.");
            }
            // Equal to the digits is no excess: a dew point at air temperature.
            if (vapour[i] > saturated * (1 + 1e-9)) capped++;
            vapour[i] = saturated;
        }
        if (isRight && sum < LeastMeanRatio * saturatedSum)
        {
            isRight = false;
            problems.Add(rows.HeadingLine, 1, rows.NameOf(given), $"makes {100 * sum / saturatedSum:0.0} % of saturation on average, less than any air; {(given == Quantity.HumidityPercent ? "write 76 for three quarters, not 0.76" : "one hectopascal is 100 Pa")}.");
        }
        if (capped > 0) remarks.Add(new(WeatherRemarkKind.HumidityCapped) { StepCount = capped });
        return isRight ? vapour : null;
    }
}
