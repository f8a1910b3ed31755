using Thermal.Bridges;

namespace Thermal.Benchmarks;

/// <summary>Sections with a guide for their time: a rib of a van, and two of the standard's cases.</summary>
/// <remarks>Geometry of the cases: ISO 10211, validation cases 2 and 4.</remarks>
internal static class BridgeSections
{
    private const double Far = double.PositiveInfinity;

    /// <summary>0.01 W/m of the 9.5 W/m of case 2.</summary>
    internal static Accuracy OfCase2 { get; } = new(FlowFraction: 0.001);
    /// <summary>0.005 K for 1 K between the environments of case 4.</summary>
    internal static Accuracy OfCase4 { get; } = new(TemperatureK: 0.005);

    /// <summary>Half a hat rib of 1.2 mm sheet, 25 mm deep, hollow, in half of 500 mm of wall: sheet 1 mm, foam 40 mm, plywood 6 mm.</summary>
    internal static Section Rib { get; } = new("rib", SectionShape.Plane,
        [
            new("skin", Mm(0, 250, 0, 1), 50), new("foam", Mm(0, 250, 1, 41), 0.036), new("plywood", Mm(0, 250, 41, 47), 0.13),
            new("air", Mm(0, 20, 1, 26), 0.15) { IsInset = true }, new("crown", Mm(0, 20, 24.8, 26), 50) { IsInset = true },
            new("web", Mm(18.8, 20, 1, 26), 50) { IsInset = true }, new("foot", Mm(20, 40, 1, 2.2), 50) { IsInset = true },
        ],
        [new("outside", new(-Far, Far, -Far, 0), 0.04), new("room", new(-Far, Far, 0.047, Far), 0.13)]);

    /// <summary>Concrete, wood, insulation and aluminium sheet.</summary>
    internal static Section Case2 { get; } = new("case 2", SectionShape.Plane,
        [
            new("concrete", Mm(0, 500, 41.5, 47.5), 1.15), new("insulation", Mm(0, 500, 1.5, 41.5), 0.029), new("wood", Mm(0, 15, 36.5, 41.5), 0.12) { IsInset = true },
            new("sheet", Mm(0, 500, 0, 1.5), 230), new("web", Mm(0, 1.5, 1.5, 36.5), 230) { IsInset = true }, new("flange", Mm(0, 15, 35, 36.5), 230) { IsInset = true },
        ],
        [new("outside", new(-Far, Far, 0.0475, Far), 0.06), new("inside", new(-Far, Far, -Far, 0), 0.11)]);

    /// <summary>An iron bar through insulation, whole.</summary>
    internal static Section Case4 { get; } = new("case 4", SectionShape.Solid,
        [new("insulation", Mm(0, 1000, 0, 1000, 0, 200), 0.1), new("bar", Mm(450, 550, 475, 525, 0, 600), 50) { IsInset = true }],
        [new("inside", Mm(0, 1000, 0, 1000, 200, 700), 0.1), new("outside", new(0, 1, 0, 1, -Far, 0), 0.1)]);

    private static Box Mm(double x0, double x1, double y0, double y1, double z0 = 0, double z1 = 1000) =>
        new(x0 / 1000, x1 / 1000, y0 / 1000, y1 / 1000, z0 / 1000, z1 / 1000);
}
