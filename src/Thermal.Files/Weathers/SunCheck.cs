using Thermal.Climates;

namespace Thermal.Files.Weathers;

/// <summary>Whether the sun of a file shines when and as strongly as it can: finds wrong zones, wrong stamps and wrong units.</summary>
internal static class SunCheck
{
    // Chosen by us. Light after dusk is below a hundredth of a year; clouds of morning or afternoon move the middle of the light by less than an hour;
    // below a fiftieth of the light above the air no month is, polar night left out.
    private const double DuskDeg = 8, MostAtNightFraction = 0.05, MostOffDeg = 25, MostRatio = 1.1, LeastRatio = 0.02, LeastAboveAirWPerM2 = 20;
    private const int LeastDayCount = 10;

    /// <summary>Light on the flat above the air in the middle of each step, W/m²; problems are named.</summary>
    internal static double[] AboveAirWPerM2(Weather frame, double[]? global, int line, string column, ProblemList problems)
    {
        double[] above = new double[frame.Count];
        double aboves = 0, globals = 0, atNight = 0, sine = 0, cosine = 0, nightDeg = -DuskDeg - frame.StepS / 3600 * 7.5;
        for (int i = 0; i < above.Length; i++)
        {
            DateTime middle = frame.MiddleUtc(i);
            SunPosition sun = SunPosition.At(frame.LatitudeDeg, frame.LongitudeDeg, middle);
            double light = global?[i] ?? 0;
            aboves += above[i] = SunAboveAir.NormalWPerM2(middle.DayOfYear) * Math.Max(0, Math.Sin(sun.ElevationDeg * Math.PI / 180));
            globals += light;
            if (sun.ElevationDeg < nightDeg) atNight += light;
            if (!(light > 0)) continue;
            (double s, double c) = Math.SinCos(sun.HourAngleDeg * Math.PI / 180);
            (sine, cosine) = (sine + light * s, cosine + light * c);
        }
        if (global is null || !(frame.Count * frame.StepS >= LeastDayCount * 86_400)) return above;
        double offDeg = Math.Atan2(sine, cosine) * 180 / Math.PI, mean = aboves / above.Length;
        if (mean > LeastAboveAirWPerM2 && globals > MostRatio * aboves)
            problems.Add(line, 1, column, $"adds up to {globals / aboves:0.0} times the sun above the air; give watts a square metre.");
        else if (mean > LeastAboveAirWPerM2 && globals < LeastRatio * aboves)
            problems.Add(line, 1, column, $"adds up to {100 * globals / aboves:0.00} % of the sun above the air; give watts a square metre, not kilowatts.");
        else if (mean > LeastAboveAirWPerM2 && (atNight > MostAtNightFraction * globals || Math.Abs(offDeg) > MostOffDeg))
            problems.Add(line, 1, column, $"has its middle {Math.Abs(offDeg) / 15:0.0} h {(offDeg < 0 ? "before" : "after")} noon; check the zone, the longitude and where in their steps the times stand.");
        return above;
    }
}
