namespace Thermal.Moisture;

/// <summary>What twelve months make of a build-up. Grams decide how much it matters; this says only whether it dries.</summary>
public enum YearOutcome
{
    /// <summary>Nothing settles in any month.</summary>
    Dry,
    /// <summary>Water settles and is all gone again in every year.</summary>
    WetDriesByMonth,
    /// <summary>Water is held in every month of the year; it may grow year after year.</summary>
    StaysWet,
}
