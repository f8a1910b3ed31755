namespace Thermal.Bridges;

/// <summary>A section and what must be taken off its coupling to leave the detail alone.</summary>
/// <param name="Section">The section.</param>
/// <param name="WholeFactor">2 where only half is drawn, up to the line of symmetry; else 1.</param>
/// <param name="PlainWPerK">What the undisturbed parts of the whole let through, U·l or U·A, W/K, per metre in a plane section.</param>
/// <param name="PlainUWPerM2K">U of the build-up beside it, W/(m²·K).</param>
/// <param name="RepeatM">Length along the panel after which it repeats, m; null for one alone, for edges and for points.</param>
internal sealed record DrawnDetail(Section Section, double WholeFactor, double PlainWPerK, double PlainUWPerM2K, double? RepeatM = null);
