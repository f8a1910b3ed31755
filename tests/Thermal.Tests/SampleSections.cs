using Thermal.Bridges;

namespace Thermal.Tests;

/// <summary>Sections that several tests solve.</summary>
internal static class SampleSections
{
    internal const double Far = double.PositiveInfinity;

    /// <summary>A box of a plane section, mm.</summary>
    internal static Box Mm(double x0, double x1, double y0, double y1, double z0 = 0, double z1 = 1000) => new(x0 / 1000, x1 / 1000, y0 / 1000, y1 / 1000, z0 / 1000, z1 / 1000);

    /// <summary>Two layers with a film on each side: R = 0.04 + 0.04/0.036 + 0.01/0.13 + 0.13.</summary>
    internal static Section Layers(SectionShape shape) => new("layers", shape,
        [new("foam", new(0, 0.3, 0, 0.04, 0, 0.5), 0.036), new("wood", new(0, 0.3, 0.04, 0.05, 0, 0.5), 0.13)],
        [new("outside", new(-Far, Far, -Far, 0, -Far, Far), 0.04), new("room", new(-Far, Far, 0.05, Far, -Far, Far), 0.13)]);

    /// <summary>A steel web through foam between sheet and plywood.</summary>
    internal static Section Rib(SectionShape shape = SectionShape.Plane) => new("rib", shape,
        [
            new("skin", new(0, 0.2, 0, 0.0008, 0, 0.1), 50), new("foam", new(0, 0.2, 0.0008, 0.0408, 0, 0.1), 0.036),
            new("web", new(0, 0.00075, 0.0008, 0.0408, 0, 0.1), 50) { IsInset = true }, new("plywood", new(0, 0.2, 0.0408, 0.0468, 0, 0.1), 0.13),
        ],
        [new("outside", new(-Far, Far, -Far, 0, -Far, Far), 0.04), new("room", new(-Far, Far, 0.0468, Far, -Far, Far), 0.13)]);
}
