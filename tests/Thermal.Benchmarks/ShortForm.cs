using System.Globalization;
using Thermal.Assessments;
using Thermal.Bridges;
using Thermal.Files;

namespace Thermal.Benchmarks;

/// <summary>Every figure that has a guide, beside the yardsticks of the same run.</summary>
internal static class ShortForm
{
    private const int StartCount = 15, ReportCount = 3;

    /// <summary>Measures and prints. The guides are for a quiet machine of two cores: compare the last column, and judge nothing by one run.</summary>
    internal static void Print(TextWriter to)
    {
        double exponentialsS = Batches.Middle(() => Yardstick.MillionExponentials()).Seconds;
        SixLayerNight night = new();
        (double nightS, long nightBytes) = Batches.Middle(night.Solve);
        Case van = VehicleLibrary.Find(VehicleLibrary.UsualName)!;
        (double assessS, long assessBytes) = Batches.Middle(() => Assess.Of(van));
        (double ribS, long ribBytes) = Batches.Middle(() => Conduction.Solve(BridgeSections.Rib));
        (double case2S, long case2Bytes) = Batches.Middle(() => Conduction.Solve(BridgeSections.Case2, BridgeSections.OfCase2));
        (double case4S, long case4Bytes) = Batches.Middle(() => Conduction.Solve(BridgeSections.Case4, BridgeSections.OfCase4));

        HourlyYear year = new();
        (double generateS, long generateBytes) = Batches.Middle(() => year.Generate());
        (double readS, long readBytes) = Batches.Middle(year.Read);

        HeatingSeason season = new();
        (double seasonS, long seasonBytes) = Batches.Middle(() => season.Run());

        PublishedProgram empty = new("tests/Thermal.Benchmarks/Empty"), program = new("src/Thermal.Cli");
        string folder = Directory.CreateTempSubdirectory("thermal-").FullName;
        double[] emptyS = new double[StartCount], startS = new double[StartCount], reportS = new double[ReportCount];
        for (int i = 0; i < StartCount; i++) (emptyS[i], startS[i]) = (empty.Seconds(), program.Seconds("assess"));
        for (int i = 0; i < ReportCount; i++) reportS[i] = program.Seconds("report", "--out", folder);
        Directory.Delete(folder, recursive: true);

        to.WriteLine($"{"",-52} {"measured",12} {"guide",8}   beside the yardstick");
        Row("yardstick: a million exponentials", Time(exponentialsS), "", "");
        Row("yardstick: start and end of an empty program", Time(Middle(emptyS)), "", "");
        Row("one night inside six layers", Time(nightS), "0.3 µs", Of(nightS / exponentialsS * 1e6, "exponentials"));
        Row("  bytes allocated", Count(nightBytes), "0", "");
        Row("assessing the library van, nothing solved before", Time(assessS), "15 ms", Of(assessS / exponentialsS, "of a million exponentials"));
        Row("  bytes allocated", Count(assessBytes), "", "");
        Row("a rib to 1 % with its error", Time(ribS), "2 ms", Of(ribS / exponentialsS, "of a million exponentials"));
        Row("  bytes allocated", Count(ribBytes), "", "");
        Row("ISO 10211 case 2 to 0.01 W/m", Time(case2S), "0.1 s", Of(case2S / exponentialsS, "of a million exponentials"));
        Row("  bytes allocated", Count(case2Bytes), "", "");
        Row("ISO 10211 case 4 to 0.005 K", Time(case4S), "3 s", Of(case4S / exponentialsS, "million exponentials"));
        Row("  bytes allocated", Count(case4Bytes), "3E+08", "");
        Row("a year of hours generated, with sun on six surfaces", Time(generateS), "10 ms", Of(generateS / exponentialsS, "of a million exponentials"));
        Row("  bytes allocated", Count(generateBytes), "", "");
        Row($"reading a typical year of {year.Text.Length / 1e6:0.0} MB", Time(readS), "60 ms", Of(readS / exponentialsS, "of a million exponentials"));
        Row("  bytes allocated", Count(readBytes), "4E+07", "");
        Row("a heating season of the library van, steps of 10 min", Time(seasonS), "1 s", Of(seasonS / exponentialsS, "million exponentials"));
        Row("  bytes allocated", Count(seasonBytes), "1E+08", "");
        Row("`assess`, published ready to run", Time(Middle(startS)), "4 ×", Of(Middle(startS) / Middle(emptyS), "× the empty program"));
        Row("`report` with all charts, published ready to run", Time(Middle(reportS)), "3 s", Of(Middle(reportS) / Middle(emptyS), "× the empty program"));

        void Row(string what, string measured, string guide, string beside) => to.WriteLine($"{what,-52} {measured,12} {guide,8}   {beside}");
    }

    private static double Middle(double[] values)
    {
        Array.Sort(values);
        return values[values.Length / 2];
    }

    internal static string Time(double seconds) => seconds switch
    {
        < 1e-3 => string.Create(CultureInfo.InvariantCulture, $"{seconds * 1e6:0.000} µs"),
        < 1 => string.Create(CultureInfo.InvariantCulture, $"{seconds * 1e3:0.000} ms"),
        _ => string.Create(CultureInfo.InvariantCulture, $"{seconds:0.000} s"),
    };

    internal static string Count(long count) => count.ToString(CultureInfo.InvariantCulture);

    internal static string Of(double ratio, string what) => string.Create(CultureInfo.InvariantCulture, $"{ratio:0.00} {what}");
}
