namespace Thermal.Climates;

/// <summary>A month's figures with the gaps filled as a generated year fills them, and which of them are estimates. Immutable.</summary>
public sealed record FilledMonth
{
    /// <summary>The figures of the source.</summary>
    public required MonthNormals Normals { get; init; }
    /// <summary>Standard deviation of the day means, K; null where it cannot be estimated.</summary>
    public required double? DayMeanSdK { get; init; }
    /// <summary>Sun and sky light on the flat, mean over day and night, W/m²; null where it cannot be estimated.</summary>
    public required double? GlobalIrradianceWPerM2 { get; init; }
    /// <summary>Mean wind at 10 m in the open, m/s.</summary>
    public double WindMPerS => Normals.WindMPerS ?? GeneratedWeather.WindWithoutNormalMPerS;
    /// <summary>True where the vapour pressure follows from humidity and mean temperature.</summary>
    public bool VapourPressureIsEstimated => Normals.MeasuredVapourPressurePa is null;
    /// <summary>True where the spread of day means is an estimate.</summary>
    public bool DayMeanSdIsEstimated => Normals.DayMeanSdK is null;
    /// <summary>True where the sun is an estimate.</summary>
    public bool SunIsEstimated => Normals.GlobalIrradianceWPerM2 is null;
    /// <summary>True where the wind is assumed.</summary>
    public bool WindIsAssumed => Normals.WindMPerS is null;

    /// <summary>The twelve months of a place.</summary>
    /// <param name="place">The place; spread and sun are estimated where every month has its daily lowest and highest.</param>
    public static IReadOnlyList<FilledMonth> Of(Place place)
    {
        YearPlan? plan = place.Months.All(month => month.MinC is not null && month.MaxC is not null) ? YearPlan.Of(place, 2025) : null;
        return [.. place.Months.Select((month, m) => new FilledMonth
        {
            Normals = month,
            DayMeanSdK = month.DayMeanSdK ?? plan?.SpreadK[m],
            GlobalIrradianceWPerM2 = month.GlobalIrradianceWPerM2 ?? plan?.SunWhPerM2[m] / 24,
        })];
    }
}
