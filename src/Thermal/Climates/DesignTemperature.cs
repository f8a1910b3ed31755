namespace Thermal.Climates;

/// <summary>A cold outside temperature of one place that a heater may be sized for: what it measures and how well it is known. Immutable.</summary>
public sealed record DesignTemperature
{
    /// <summary>Lowest design temperature taken, °C: the end of the saturation curve over water. Limit chosen by us.</summary>
    public const double LowestC = -60;

    /// <summary>Highest design temperature taken, °C. Limit chosen by us.</summary>
    public const double HighestC = 30;

    /// <summary>Largest uncertainty taken, K. Limit chosen by us.</summary>
    public const double HighestPlusMinusK = 15;

    /// <summary>Outside air temperature, °C, −60 to 30.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    public required double TemperatureC { get; init => field = Guard.InRange(value, LowestC, HighestC, "°C", nameof(TemperatureC)); }

    /// <summary>What it measures.</summary>
    public DesignMeasure Measure { get; init; }

    /// <summary>How it came about.</summary>
    public required DesignKind Kind { get; init; }

    /// <summary>Half the width of the span it may lie in, K, 0 to 15; 0 where its source states none, which does not mean exact.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    public required double PlusMinusK { get; init => field = Guard.InRange(value, 0, HighestPlusMinusK, "K", nameof(PlusMinusK)); }

    /// <summary>Source in words, and the definition where <see cref="Measure"/> leaves it open.</summary>
    public required string Note { get; init; }
}
