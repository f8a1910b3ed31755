using Thermal.Choices;
using Thermal.Trips;

namespace Thermal.Cli;

/// <summary>A trip as it was asked for: what came out, what changes would do, and the files that were written.</summary>
/// <param name="Found">What came out.</param>
/// <param name="Advice">What trying changes found; null where they were not asked for.</param>
/// <param name="Csv">The table of hours that was written; null for none.</param>
/// <param name="Pictures">The pictures that were written.</param>
internal sealed record TripAnswer(TripResult Found, TripAdvice? Advice, string? Csv, IReadOnlyList<string> Pictures);
