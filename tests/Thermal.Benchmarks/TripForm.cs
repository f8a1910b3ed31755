using System.Globalization;

namespace Thermal.Benchmarks;

/// <summary>A heating season hour by hour, and its heat model beside a general integrator of stiff equations in the same run.</summary>
internal static class TripForm
{
    // What both are asked for: 0.01 K each, the larger part of it by the step of ten minutes.
    private const double SameK = 0.1;

    /// <summary>Measures and prints processor times, which a busy machine changes little.</summary>
    internal static void Print(TextWriter to)
    {
        double exponentialsS = Batches.Middle(() => Yardstick.MillionExponentials()).Seconds;
        HeatingSeason whole = new();
        (double wholeS, long wholeBytes) = Batches.Middle(() => whole.Run());
        SteppedSeason heat = new();
        (double heatS, _) = Batches.Middle(() => heat.Run());
        to.WriteLine($"{"",-52} {"measured",12} {"guide",8}   beside the yardstick");
        Row("yardstick: a million exponentials", ShortForm.Time(exponentialsS), "", "");
        Row("a heating season of the library van, steps of 10 min", ShortForm.Time(wholeS), "1 s", ShortForm.Of(wholeS / exponentialsS, "million exponentials"));
        Row("  bytes allocated", ShortForm.Count(wholeBytes), "1E+08", "");
        Row("its heat alone, air and walls, lumped films", ShortForm.Time(heatS), "", ShortForm.Of(heatS / exponentialsS, "million exponentials"));
        Row("  bytes allocated by all steps", ShortForm.Count(heat.Run()), "0", "");
        Compare(heat, heatS);

        void Row(string what, string measured, string guide, string beside) => to.WriteLine($"{what,-52} {measured,12} {guide,8}   {beside}");

        void Compare(SteppedSeason ours, double oursS)
        {
            string network = Path.GetTempFileName(), hourly = Path.GetTempFileName();
            try
            {
                ours.Write(network);
                (string[]? lines, string why) = SystemPython.Run("season.py", network, hourly);
                if (lines is null)
                {
                    to.WriteLine($"No general integrator to compare with: {why}.");
                    return;
                }
                string[] found = lines[0].Split(' ');
                double seconds = Number(found[0]), apartK = Apart(ours.HourlyC, hourly);
                if (!(apartK < SameK)) throw new InvalidOperationException($"The two differ by {apartK:R} K.");
                Row($"  the same by scipy {found[3]}, BDF", ShortForm.Time(seconds), "10 ×", ShortForm.Of(seconds / oursS, $"× ours, {ours.UnknownCount} unknowns, {found[1]} evaluations"));
                Row("  largest difference of the air in any hour", Kelvin(apartK), "0.1 K", "");
                Row("  its own error in the first week", Kelvin(Number(found[2])), "0.01 K", "");
            }
            finally
            {
                File.Delete(network);
                File.Delete(hourly);
            }
        }
    }

    private static double Apart(double[] oursC, string file)
    {
        using BinaryReader reader = new(File.OpenRead(file));
        double apartK = 0;
        foreach (double ourC in oursC) apartK = Math.Max(apartK, Math.Abs(reader.ReadDouble() - ourC));
        return apartK;
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static string Kelvin(double differenceK) => string.Create(CultureInfo.InvariantCulture, $"{differenceK:0.0000} K");
}
