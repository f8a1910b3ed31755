namespace Thermal.Climates;

/// <summary>Winter design conditions computed from hours.</summary>
public sealed record DesignConditions
{
    /// <summary>Temperature that 99.6 % of the hours exceed, °C.</summary>
    public required double HoursAt996C { get; init; }
    /// <summary>Temperature that 99 % of the hours exceed, °C.</summary>
    public required double HoursAt99C { get; init; }
    /// <summary>Coldest mean of 24 h, °C.</summary>
    public required double ColdestDayC { get; init; }
    /// <summary>Coldest mean of 48 h, °C.</summary>
    public required double ColdestTwoDaysC { get; init; }
    /// <summary>Coldest mean of 72 h, °C.</summary>
    public required double ColdestThreeDaysC { get; init; }
    /// <summary>Coldest hour, °C.</summary>
    public required double ColdestHourC { get; init; }
    /// <summary>Index of the step at which the coldest 72 h begin.</summary>
    public required int ColdestThreeDaysFrom { get; init; }
    /// <summary>Share of a year that the hours cover, fraction: percentiles of less than a winter say nothing.</summary>
    public required double YearsRatio { get; init; }

    /// <summary>Finds them.</summary>
    /// <param name="weather">At least three days.</param>
    public static DesignConditions Of(Weather weather) => throw new NotImplementedException();
}
