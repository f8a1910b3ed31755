using Thermal.Bridges;

namespace Thermal.Assessments;

/// <summary>One rib, edge or kind of bolt on the cold night: what it costs, how cold it gets, whether it drips.</summary>
public sealed record BridgeAnswer
{
    /// <summary>What the builder calls it; for the edge of an opening the opening's name.</summary>
    public required string Name { get; init; }
    /// <summary>The panel it stands in.</summary>
    public required string Panel { get; init; }
    /// <summary>Its solution; null where ψ or χ was given.</summary>
    public SolvedDetail? Solved { get; init; }
    /// <summary>Length, m; null for points.</summary>
    public double? LengthM { get; init; }
    /// <summary>How many; null for lines.</summary>
    public int? Count { get; init; }
    /// <summary>Distance to the neighbour, m; null for one alone.</summary>
    public double? SpacingM { get; init; }
    /// <summary>Heat it adds per kelvin, W/K.</summary>
    public required double LossWPerK { get; init; }
    /// <summary>Heat it adds on the cold night, W.</summary>
    public required double LossW { get; init; }
    /// <summary>Its coldest inner point on the cold night with the loss films, °C; null where not known.</summary>
    public double? ColdestC { get; init; }
    /// <summary>Degrees to spare there before it gets wet: temperature minus the room's dew point, K; negative when wet.</summary>
    public double? ToSpareK { get; init; }
    /// <summary>True where what settles there is frost.</summary>
    public bool IsFrost { get; init; }
    /// <summary>Temperature of the room beside it and of the outside as it acts on the panel, °C.</summary>
    public required double InsideC { get; init; }
    /// <summary>Outside as it acts on the panel, °C.</summary>
    public required double OutsideC { get; init; }
    /// <summary>Dew point of the room's air, °C.</summary>
    public required double DewPointC { get; init; }
}
