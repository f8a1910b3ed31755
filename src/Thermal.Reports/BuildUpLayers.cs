using Thermal.Assessments;
using Thermal.Envelope;

namespace Thermal.Reports;

/// <summary>Finds the layers that a damp answer speaks of.</summary>
internal static class BuildUpLayers
{
    /// <summary>The panel's build-up, or that of the door leaf the answer is named for.</summary>
    /// <exception cref="InvalidOperationException">No leaf of the panel fits: a fault in the assessment.</exception>
    internal static Stack StackOf(BuildUpDamp damp, Surface surface) => damp.Name == surface.Name
        ? surface.Stack
        : surface.Openings.FirstOrDefault(opening => opening.Leaf is not null && damp.Name.EndsWith(opening.Name, StringComparison.Ordinal))?.Leaf
            ?? throw new InvalidOperationException($"No build-up of {surface.Name} is called {damp.Name}.");
}
