using Thermal.Materials;

namespace Thermal.Envelope;

/// <summary>One panel of the vehicle: a roof, floor, side, end, cab or partition. Immutable.</summary>
public sealed record Surface
{
    /// <summary>What the builder calls it; unique in the vehicle.</summary>
    public required string Name { get; init; }
    /// <summary>Where it stands.</summary>
    public required SurfacePlace Place { get; init; }
    /// <summary>Angle between its outward side and straight up, degrees: roof 0, side 90, floor 180.</summary>
    public required double TiltDeg { get; init => field = Guard.InRange(value, 0, 180, "°", nameof(TiltDeg)); }
    /// <summary>Where its outward side faces, degrees clockwise from the vehicle's nose: right side 90, rear 180, left 270.</summary>
    public double FacingDeg { get; init => field = Guard.InRange(value, 0, 360, "°", nameof(FacingDeg)); }
    /// <summary>Width, bare shell, m; null where only the area is given.</summary>
    public double? WidthM { get; init; }
    /// <summary>Height or length across, bare shell, m; null where only the area is given.</summary>
    public double? HeightM { get; init; }
    /// <summary>Gross area, openings included, bare shell, m², 0.01 to 200.</summary>
    public required double AreaM2 { get; init => field = Guard.InRange(value, 0.01, 200, "m²", nameof(AreaM2)); }
    /// <summary>The zone on its inner side.</summary>
    public required string Zone { get; init; }
    /// <summary>What is on its outer side.</summary>
    public required OuterSide Outside { get; init; }
    /// <summary>The zone on its outer side; only for <see cref="OuterSide.OtherZone"/>.</summary>
    public string? OtherZone { get; init; }
    /// <summary>Its build-up between the ribs, inside to outside.</summary>
    public required Stack Stack { get; init; }
    /// <summary>Ribs, pillars and edges.</summary>
    public IReadOnlyList<LinearBridge> Ribs { get; init; } = [];
    /// <summary>Bolts and other points.</summary>
    public IReadOnlyList<PointBridge> Bolts { get; init; } = [];
    /// <summary>Windows, doors, hatches.</summary>
    public IReadOnlyList<Opening> Openings { get; init; } = [];
    /// <summary>What stands or lies against its inner side.</summary>
    public IReadOnlyList<Against> Against { get; init; } = [];
    /// <summary>Room air that gets behind the lining and meets the cold side of the insulation, m³ per m² and hour, 0 to 20.</summary>
    public required Bounded AirBehindLiningM3PerM2H { get; init => field = Guard.InRange(value, 0, 20, "m³/(m²·h)", nameof(AirBehindLiningM3PerM2H)); }
    /// <summary>How the lining is closed, in the file's word.</summary>
    public required LiningFit LiningFit { get; init; }

    /// <summary>Area without the openings, m².</summary>
    public double OpaqueAreaM2 => AreaM2 - Openings.Sum(opening => opening.AreaM2);

    /// <summary>Which way heat leaves.</summary>
    public FlowDirection Direction => SurfaceResistance.DirectionOf(TiltDeg);

    /// <summary>Outside film, m²·K/W: by wind, sheltered over the road, or the inside film where another zone lies beyond.</summary>
    /// <param name="windMPerS">Wind, m/s, 0 to 40.</param>
    public double OutsideFilmM2KPerW(double windMPerS) => Outside switch
    {
        OuterSide.Air => SurfaceResistance.OutsideM2KPerW(windMPerS),
        OuterSide.Road => SurfaceResistance.ShelteredRoadM2KPerW,
        _ => SurfaceResistance.InsideM2KPerW(Direction),
    };
}

/// <summary>Where a panel stands in the vehicle.</summary>
public enum SurfacePlace
{
    /// <summary>Over the living space.</summary>
    Roof,
    /// <summary>Under the living space.</summary>
    Floor,
    /// <summary>Left in driving direction.</summary>
    Left,
    /// <summary>Right in driving direction.</summary>
    Right,
    /// <summary>Front wall.</summary>
    Front,
    /// <summary>Rear wall or doors.</summary>
    Rear,
    /// <summary>Any panel of the cab.</summary>
    Cab,
    /// <summary>Between two zones.</summary>
    Partition,
}

/// <summary>What is on the outer side of a panel.</summary>
public enum OuterSide
{
    /// <summary>Open air, wind and sky.</summary>
    Air,
    /// <summary>The sheltered side towards the road.</summary>
    Road,
    /// <summary>Another zone of the vehicle.</summary>
    OtherZone,
}

/// <summary>How well a lining keeps room air from the cold side.</summary>
public enum LiningFit
{
    /// <summary>Bonded or sprayed foam: no air gets behind.</summary>
    Bonded,
    /// <summary>Boards cut and taped.</summary>
    Taped,
    /// <summary>Loose fill behind a close lining.</summary>
    Loose,
    /// <summary>Slats or gaps.</summary>
    Slatted,
    /// <summary>A figure of the file's own.</summary>
    Stated,
}

/// <summary>Something against the inner side that keeps the room's warmth from it.</summary>
public sealed record Against
{
    /// <summary>What the builder calls it, such as clothes locker.</summary>
    public required string Name { get; init; }
    /// <summary>What it adds inside, m²·K/W, 0 to 10.</summary>
    public required double AddedResistanceM2KPerW { get; init => field = Guard.InRange(value, 0, 10, "m²·K/W", nameof(AddedResistanceM2KPerW)); }
    /// <summary>Share of the opaque area it covers, fraction, 0 to 1.</summary>
    public required double AreaFraction { get; init => field = Guard.InRange(value, 0, 1, "(fraction)", nameof(AreaFraction)); }
}
