namespace Thermal.Files;

/// <summary>A value, or every problem found: never both, never just the first problem.</summary>
/// <typeparam name="T">What the file describes.</typeparam>
/// <param name="Value">The value; null when there are problems.</param>
/// <param name="Problems">All problems, in the order of their lines; empty when there is a value.</param>
public sealed record Reading<T>(T? Value, IReadOnlyList<Problem> Problems) where T : class;
