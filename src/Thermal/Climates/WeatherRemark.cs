namespace Thermal.Climates;

/// <summary>One thing done to weather while it was read, that its reader should know. Immutable.</summary>
/// <param name="Kind">What was done.</param>
public sealed record WeatherRemark(WeatherRemarkKind Kind)
{
    /// <summary>Steps, or for months of different years the years, that it concerns; 0 where it concerns all.</summary>
    public int StepCount { get; init; }
    /// <summary>Columns it concerns, by the names in the file; empty where it concerns all or none.</summary>
    public IReadOnlyList<string> Columns { get; init; } = [];
    /// <summary>Start of the first step it concerns, local standard time; null where it concerns no single time.</summary>
    public DateTime? FromLocal { get; init; }
    /// <summary>End of the last step it concerns, local standard time; null where it concerns no single time.</summary>
    public DateTime? ToLocal { get; init; }
    /// <summary>Time by which something was moved or lies off, h; 0 for the other kinds.</summary>
    public double ShiftH { get; init; }
}

/// <summary>What was done to weather while it was read.</summary>
public enum WeatherRemarkKind
{
    /// <summary>A gap of at most six hours was filled by straight lines between its neighbours.</summary>
    GapFilled,
    /// <summary>A value stated for the end of its step was taken as the mean with that at the step's start.</summary>
    MovedToMiddle,
    /// <summary>Months of different years were put into one running year.</summary>
    YearsJoined,
    /// <summary>29 February of a typical year was left out.</summary>
    LeapDayLeftOut,
    /// <summary>Local standard time is that of the nearest 15° of longitude, because the file tells only universal time.</summary>
    OffsetFromLongitude,
    /// <summary>Sun belongs to an instant this much after the middle of its step.</summary>
    SunIsLater,
    /// <summary>Sun slightly below 0, as sensors show at night, was taken as 0.</summary>
    SunBelowZero,
    /// <summary>Sky light and beam were split from the light on the flat.</summary>
    SunSplit,
    /// <summary>The third of flat, beam and sky light follows from the other two.</summary>
    SunCompleted,
    /// <summary>There is no sun in the file.</summary>
    SunMissing,
    /// <summary>Vapour pressure above saturation over water was taken as saturation.</summary>
    HumidityCapped,
    /// <summary>Sky temperature was computed from air, vapour and the sun of each day.</summary>
    SkyComputed,
    /// <summary>There is no sky temperature, and no sun to compute it from.</summary>
    SkyMissing,
}
