using CsCheck;
using Thermal.Climates;
using Thermal.Files.Tests.Consistency;

namespace Thermal.Files.Tests.Property;

/// <summary>Whatever happens to a place file, it is a place or it is problems.</summary>
public sealed class PlaceFileLaws
{
    private static readonly string[] Texts = [.. typeof(PlaceFile).Assembly.GetManifestResourceNames()
        .Where(name => name.StartsWith("climate:", StringComparison.Ordinal)).Select(BuiltInPlaceTests.TextOf)];

    private static readonly Gen<string> Splinter = OneOf(
        "", ",", "\n", "#", ":", "\0", "-", "−5", "1,5", "NaN", "∞", "-Infinity", "1e9", "1_000", "1000000", "-60", "50", "\uFFFD", "\uD800", "\r", ";", "# name: x\n", "13", "0", "  ", "\t", "min_c", "'", "\"");

    /// <summary>One to eight places of a built-in file cut out or overwritten, by letters or by whole lines.</summary>
    private static readonly Gen<string> Damaged =
        from text in OneOf(Texts)
        from cuts in Gen.Select(Gen.Int[0, 2000], Gen.Int[0, 40], Splinter).Array[1, 8]
        select cuts.Aggregate(text, Cut);

    private static Gen<string> OneOf(params string[] texts) => Gen.Int[0, texts.Length - 1].Select(i => texts[i]);

    private static string Cut(string text, (int At, int Length, string Splinter) cut)
    {
        int at = text.Length == 0 ? 0 : cut.At % text.Length;
        return text[..at] + cut.Splinter + text[Math.Min(text.Length, at + cut.Length)..];
    }

    [Fact]
    public void A_damaged_file_is_a_place_or_problems_and_never_an_exception() => Damaged.Sample(text =>
    {
        Reading<Place> reading = PlaceFile.Read(text, "damaged.csv");
        return reading.Value is null != (reading.Problems.Count == 0) && Lie(reading, text);
    }, iter: 5000);

    [Fact]
    public void Any_letters_at_all_are_never_an_exception() =>
        Gen.String.Sample(text => PlaceFile.Read(text, "any.csv").Problems.Count > 0, iter: 2000);

    [Fact]
    public void Any_number_in_a_cell_is_taken_within_its_range_and_refused_outside() =>
        Gen.Double[-200, 200].Sample(meanC =>
        {
            string cell = meanC.ToString("F3", System.Globalization.CultureInfo.InvariantCulture);
            bool isTaken = double.Parse(cell, System.Globalization.CultureInfo.InvariantCulture) is >= -60 and <= 50;
            Reading<Place> reading = PlaceFile.Read(OfMeans(cell), "mean.csv");
            return reading.Value is not null == isTaken && (isTaken || reading.Problems.Any(problem => problem.Line == 10 && problem.Where == "month 1 / mean_c"));
        });

    [Fact]
    public void The_nearest_name_of_a_known_name_is_itself() =>
        OneOf([.. PlaceLibrary.BuiltIn.All.Select(place => place.Name)]).Sample(name => PlaceLibrary.BuiltIn.NearestName(name) == name);

    private static bool Lie(Reading<Place> reading, string text)
    {
        int lines = text.ReplaceLineEndings("\n").Split('\n').Length;
        return reading.Problems.All(problem => problem.Line >= 1 && problem.Line <= lines && problem.Column >= 1 && problem.What.Length > 0 && problem.File == "damaged.csv");
    }

    private static string OfMeans(string first) => string.Join('\n', [
        "# name: A", "# country: B", "# latitude_deg: 1", "# longitude_deg: 2", "# altitude_m: 3", "# source: s\n# period: p\n# licence: l",
        "month,mean_c,relative_humidity_percent", $"1,{first},80", .. Enumerable.Range(2, 11).Select(month => $"{month},5,80"),
        "# design_temperature_c: -5", "# design_kind: stated", "# design_note: n"]);
}
