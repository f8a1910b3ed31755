using Thermal.Materials;

namespace Thermal.Charts;

/// <summary>A described rib that repeats along a build-up, as its cut shows it: its width against its spacing, its depth with the layers.</summary>
/// <param name="Name">What the builder calls it.</param>
/// <param name="SpacingM">From one to the next, m.</param>
/// <param name="Parts">Its parts in the order they are drawn.</param>
public sealed record CutRib(string Name, double SpacingM, IReadOnlyList<CutPart> Parts)
{
    /// <summary>Width over all, m.</summary>
    public double WidthM => Parts.Max(part => part.ToM) - Parts.Min(part => part.FromM);
}

/// <summary>One part of a rib.</summary>
/// <param name="FromM">Where it begins along the panel, m.</param>
/// <param name="ToM">Where it ends, m.</param>
/// <param name="InnerM">Depth of its face towards the room below the innermost face of the build-up, m.</param>
/// <param name="OuterM">Depth of its face towards the outside, m.</param>
/// <param name="Group">Kind of material.</param>
public sealed record CutPart(double FromM, double ToM, double InnerM, double OuterM, MaterialGroup Group);
