using Thermal.Assessments;
using Thermal.Envelope;

namespace Thermal.Choices;

/// <summary>Cases with one thing changed.</summary>
internal static class Changed
{
    internal static Case Panel(Case asked, string panel, Func<Surface, Surface> change) => asked with
    {
        Vehicle = asked.Vehicle with { Surfaces = [.. asked.Vehicle.Surfaces.Select(surface => surface.Name == panel ? change(surface) : surface)] },
    };

    internal static Case Openings(Case asked, Func<Opening, Opening> change) => asked with
    {
        Vehicle = asked.Vehicle with { Surfaces = [.. asked.Vehicle.Surfaces.Select(surface => surface with { Openings = [.. surface.Openings.Select(change)] })] },
    };
}
