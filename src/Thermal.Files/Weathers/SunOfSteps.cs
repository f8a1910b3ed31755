using Thermal.Climates;

namespace Thermal.Files.Weathers;

/// <summary>Flat, beam and sky light by the step; what is missing of the three is completed or split.</summary>
internal sealed class SunOfSteps
{
    // Places of the sun averaged within a step where its height divides light. Source: OURS.
    private const int PartCount = 4;

    private SunOfSteps(double[] global, double[] beam, double[] diffuse) => (GlobalWPerM2, BeamNormalWPerM2, DiffuseWPerM2) = (global, beam, diffuse);

    internal double[] GlobalWPerM2 { get; }
    internal double[] BeamNormalWPerM2 { get; }
    internal double[] DiffuseWPerM2 { get; }

    /// <summary>Null where the file has no sun.</summary>
    internal static SunOfSteps? Of(FilledSteps filled, Weather frame, List<WeatherRemark> remarks)
    {
        double[]? global = filled[Quantity.Global], beam = filled[Quantity.BeamNormal], diffuse = filled[Quantity.Diffuse];
        if (global is null && (beam is null || diffuse is null))
        {
            remarks.Add(new(WeatherRemarkKind.SunMissing));
            return null;
        }
        int below = NotBelowZero(global) + NotBelowZero(beam) + NotBelowZero(diffuse);
        if (below > 0) remarks.Add(new(WeatherRemarkKind.SunBelowZero) { StepCount = below });
        if (global is not null && beam is not null && diffuse is not null) return new(global, beam, diffuse);
        remarks.Add(new(beam is null && diffuse is null ? WeatherRemarkKind.SunSplit : WeatherRemarkKind.SunCompleted));
        return Completed(global, beam, diffuse, frame);
    }

    private static SunOfSteps Completed(double[]? global, double[]? beam, double[]? diffuse, Weather frame)
    {
        int count = frame.Count;
        double[] flat = new double[count], straight = new double[count], sky = new double[count];
        for (int i = 0; i < count; i++)
        {
            double heightFactor = Height(frame, i), normal = SunAboveAir.NormalWPerM2(frame.MiddleUtc(i).DayOfYear);
            if (global is null) (straight[i], sky[i], flat[i]) = (beam![i], diffuse![i], beam[i] * heightFactor + diffuse[i]);
            else if (beam is not null) (flat[i], straight[i], sky[i]) = (global[i], beam[i], Math.Max(0, global[i] - beam[i] * heightFactor));
            else
            {
                flat[i] = global[i];
                double share = heightFactor > 0 ? DiffuseShare.OfHourFraction(Math.Min(1.2, global[i] / (normal * heightFactor))) : 1;
                double fromSky = Math.Min(global[i], diffuse?[i] ?? global[i] * share);
                // A beam stronger than above the air cannot be: in the steps of sunrise and sunset the rest is sky light.
                straight[i] = heightFactor > 0 ? Math.Min((global[i] - fromSky) / heightFactor, normal) : 0;
                sky[i] = global[i] - straight[i] * heightFactor;
            }
        }
        return new(flat, straight, sky);
    }

    /// <summary>Sine of the sun's height, mean over a step, 0 below the horizon.</summary>
    private static double Height(Weather frame, int step)
    {
        double sum = 0;
        for (int part = 0; part < PartCount; part++)
        {
            DateTime at = frame.StartUtc.AddSeconds((step + (part + 0.5) / PartCount) * frame.StepS);
            sum += Math.Max(0, Math.Sin(SunPosition.At(frame.LatitudeDeg, frame.LongitudeDeg, at).ElevationDeg * Math.PI / 180));
        }
        return sum / PartCount;
    }

    private static int NotBelowZero(double[]? series)
    {
        int count = 0;
        for (int i = 0; i < series?.Length; i++)
        {
            if (series[i] < 0) count++;
            if (!(series[i] > 0)) series[i] = 0;
        }
        return count;
    }
}
