namespace Thermal.Reports;

/// <summary>Text that is HTML already: our own, never a person's.</summary>
internal readonly record struct Markup(string Html);
