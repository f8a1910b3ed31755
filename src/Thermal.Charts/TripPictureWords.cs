using Thermal.Trips;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Charts;

/// <summary>Words and numbers that the pictures of a trip share.</summary>
internal static class TripPictureWords
{
    internal static string Title(TripResult found, string what) => $"{Grammar.Capital(found.Asked.Trip.Name)}: {what}";

    /// <summary>The legs with their begins, for someone who cannot see the strip above the plot.</summary>
    internal static string Legs(TripResult found) =>
        Grammar.Capital(string.Join("; ", found.Asked.Trip.Legs.Take(12).Select(leg => $"{leg.Name} from {TripTables.Moment(leg.StartLocal)}"))) + ".";

    /// <summary>Values in the unit shown; NaN stays.</summary>
    internal static IReadOnlyList<double> Converted(IReadOnlyList<double> si, Shown shown, Figures figures) =>
        [.. si.Select(value => double.IsNaN(value) ? double.NaN : figures.Convert(shown, value))];
}
