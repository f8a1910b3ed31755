namespace Thermal.Reports;

/// <summary>A finished report.</summary>
/// <param name="Html">One self-contained page.</param>
/// <param name="Figures">The pictures in it, in the order of the page.</param>
public sealed record Report(string Html, IReadOnlyList<Figure> Figures);
