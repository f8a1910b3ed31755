namespace Thermal.Charts;

/// <summary>A build-up on one night, as its pictures show it. Layers and faces run inside to outside; n layers have n + 1 faces.</summary>
public sealed record BuildUpCut
{
    /// <summary>Name of the surface, such as Roof.</summary>
    public required string Name { get; init; }
    /// <summary>How it stands in the vehicle.</summary>
    public required Attitude Attitude { get; init; }
    /// <summary>The layers, inside to outside; at least one.</summary>
    public required IReadOnlyList<CutLayer> Layers { get; init; }
    /// <summary>Temperatures at the faces, °C.</summary>
    public required IReadOnlyList<double> TemperaturesAtFacesC { get; init; }
    /// <summary>Vapour pressures at the faces by diffusion alone, after what settles has settled, Pa.</summary>
    public required IReadOnlyList<double> VapourPressuresAtFacesPa { get; init; }
    /// <summary>Dew point of the air that can get to each face, °C; null at faces it cannot get to. The first has a value.</summary>
    public required IReadOnlyList<double?> ReachingDewPointsC { get; init; }
    /// <summary>What settles by diffusion in the night, g/m².</summary>
    public required double SettlesByDiffusionGPerM2 { get; init; }
    /// <summary>Temperature of the room, °C.</summary>
    public required double InsideC { get; init; }
    /// <summary>Relative humidity of the room, fraction.</summary>
    public required double InsideHumidityFraction { get; init; }
    /// <summary>Temperature outside, °C.</summary>
    public required double OutsideC { get; init; }
    /// <summary>What stands outside, such as sky and air, road or outside air.</summary>
    public required string OutsideName { get; init; }
    /// <summary>What stands inside, such as room or hold.</summary>
    public required string InsideName { get; init; }
    /// <summary>The rib drawn in it; null where it has none that can be.</summary>
    public CutRib? Rib { get; init; }
    /// <summary>Ribs and bolts that cross it but are not drawn, such as roof bow; empty where none.</summary>
    public string RibsNotDrawn { get; init; } = "";

    /// <summary>Degrees to spare before it drips at a face, K: temperature minus the dew point of the air that gets there; null where none does.</summary>
    /// <param name="face">Index of the face, 0 (inside) to the number of layers (outside).</param>
    public double? SpareAtFaceK(int face) => TemperaturesAtFacesC[face] - ReachingDewPointsC[face];

    /// <summary>The face with the least to spare among those that room air gets to.</summary>
    public int WorstFace => Enumerable.Range(0, Layers.Count + 1).Where(f => SpareAtFaceK(f) is not null).MinBy(f => SpareAtFaceK(f));

    /// <summary>The outermost face that room air gets to.</summary>
    public int LastReachedFace => Enumerable.Range(0, Layers.Count + 1).Last(f => ReachingDewPointsC[f] is not null);
}
