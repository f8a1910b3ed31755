using Thermal.Climates;

namespace Thermal.Files.Weathers;

/// <summary>Sky temperature by the step: measured, or computed with the clouds that the sun of each day tells.</summary>
internal static class SkyOfSteps
{
    // Less than this above the air in a day counts as polar night, Wh/m². Source: OURS, as in generated years.
    private const double PolarNightWhPerM2 = 500;

    /// <summary>°C; null, remarked, where there is neither.</summary>
    internal static double[]? C(FilledSteps filled, Weather frame, double[]? global, double[] aboveAirWPerM2, List<WeatherRemark> remarks)
    {
        if (filled[Quantity.Sky] is { } measured) return measured;
        if (filled[Quantity.Longwave] is { } longwave) return [.. longwave.Select(SkyTemperature.OfLongwaveC)];
        int ofDay = Math.Min(frame.Count, (int)Math.Round(86_400 / frame.StepS));
        bool isDay = ofDay * frame.StepS > 86_000;
        if (global is null || !isDay)
        {
            remarks.Add(new(WeatherRemarkKind.SkyMissing));
            return null;
        }
        remarks.Add(new(WeatherRemarkKind.SkyComputed));
        double[] sky = new double[frame.Count];
        // Days of 24 h from the first step on; the last is the last 24 h, so that each has its whole light.
        for (int from = 0; from < frame.Count; from += ofDay)
        {
            int window = Math.Min(from, frame.Count - ofDay);
            double given = 0, above = 0;
            for (int i = window; i < window + ofDay; i++) (given, above) = (given + global[i] * frame.StepS / 3600, above + aboveAirWPerM2[i] * frame.StepS / 3600);
            double clouds = above < PolarNightWhPerM2 ? GeneratedWeather.PolarNightCloudFraction : SkyTemperature.CloudFraction(given, above, frame.AltitudeM);
            for (int i = from; i < Math.Min(from + ofDay, frame.Count); i++) sky[i] = SkyTemperature.OfC(frame.AirC[i], frame.VapourPa[i], clouds);
        }
        return sky;
    }
}
