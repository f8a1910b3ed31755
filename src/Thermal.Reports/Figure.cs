namespace Thermal.Reports;

/// <summary>One picture of a report with the name of its file.</summary>
/// <param name="Name">Name without folder or ending, such as loss-by-part; letters, digits and hyphens only.</param>
/// <param name="Picture">The picture in the colours of the light page.</param>
public sealed record Figure(string Name, Charts.Picture Picture);
