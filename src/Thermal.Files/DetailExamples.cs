namespace Thermal.Files;

/// <summary>One usual example of every kind of detail that can be described, to start from.</summary>
public static class DetailExamples
{
    /// <summary>All of them, in the order of the kinds.</summary>
    public static IReadOnlyList<DetailExample> All { get; } =
    [
        new("hat rib", DetailList.Ribs, "{shape: hat, sheet: 1.2 mm, depth: 30 mm, crown: 40 mm, foot: 20 mm}"),
        new("Z rib", DetailList.Ribs, "{shape: zed, sheet: 1.2 mm, depth: 30 mm, flange: 30 mm, foot: 20 mm}"),
        new("C rib", DetailList.Ribs, "{shape: channel, sheet: 1.2 mm, depth: 30 mm, flange: 30 mm, foot: 20 mm}"),
        new("tube or profile", DetailList.Ribs, "{shape: box, sheet: 2 mm, depth: 30 mm, width: 40 mm, material: aluminium}"),
        new("web on edge", DetailList.Ribs, "{shape: plate, sheet: 2 mm, depth: 30 mm}"),
        new("batten", DetailList.Ribs, "{shape: batten, material: softwood, width: 45 mm, depth: 30 mm}"),
        new("grooves of a floor pan", DetailList.Ribs, "{shape: corrugation, depth: 8 mm, groove: 40 mm}"),
        new("corner of two panels", DetailList.Ribs, "{shape: corner, with: floor, sheet: 1.5 mm, leg: 30 mm}"),
        new("bolt, rivet, screw", DetailList.Bolts, "{diameter: 8 mm, head: 20 mm, head_thickness: 6 mm}"),
        new("frame of a window or hatch", DetailList.Edge, "{shape: frame, depth: 30 mm, width: 40 mm, lip: 10 mm}"),
        new("edge of a door", DetailList.Edge, "{shape: door, sheet: 1 mm, post: 50 mm, depth: 40 mm, seal: 12 mm}"),
    ];
}

/// <summary>An example of one kind.</summary>
/// <param name="Kind">What it is in a builder's words.</param>
/// <param name="List">Where in a vehicle file it stands.</param>
/// <param name="Text">Its keys on one line.</param>
public sealed record DetailExample(string Kind, DetailList List, string Text);

/// <summary>Where in a vehicle file a detail is described.</summary>
public enum DetailList
{
    /// <summary>Under ribs of a panel.</summary>
    Ribs,
    /// <summary>Under bolts of a panel.</summary>
    Bolts,
    /// <summary>As edge of an opening.</summary>
    Edge,
}
