namespace Thermal.Trips;

/// <summary>How people live on a leg: warmth, covers, water, air. Clock times are hours of the day in local standard time. Immutable.</summary>
public sealed record TripHabits
{
    /// <summary>People on board, 0 to 12.</summary>
    public required int PeopleCount { get; init => field = (int)Guard.InRange(value, 0, 12, "people", nameof(PeopleCount)); }
    /// <summary>When people are in the vehicle, clock hour in and out; equal means all day. Nights are always spent in it while <see cref="PeopleCount"/> is over 0.</summary>
    public double HomeFromH { get; init => field = ClockH(value); } = 17;
    /// <summary>When they leave in the morning, clock hour.</summary>
    public double HomeToH { get; init => field = ClockH(value); } = 9;
    /// <summary>Bedtime, clock hour.</summary>
    public double BedtimeH { get; init => field = ClockH(value); } = 22.5;
    /// <summary>Getting up, clock hour.</summary>
    public double RisingH { get; init => field = ClockH(value); } = 7;
    /// <summary>Wanted in the living space with people awake at home, °C, 0 to 30; null: heater off.</summary>
    public double? DayC { get; init => field = Wanted(value); } = 20;
    /// <summary>Wanted at night, °C; null: heater off.</summary>
    public double? NightC { get; init => field = Wanted(value); } = 16;
    /// <summary>Wanted while nobody is in, °C; null: heater off.</summary>
    public double? AwayC { get; init => field = Wanted(value); } = 8;
    /// <summary>Wanted while driving, °C; null: heater off.</summary>
    public double? DrivingC { get; init => field = Wanted(value); }
    /// <summary>Heat the engine gives the cab while driving, W, 0 to 10 000.</summary>
    public double EngineHeatW { get; init => field = Guard.InRange(value, 0, 10_000, "W", nameof(EngineHeatW)); } = 3000;
    /// <summary>When covers are on.</summary>
    public CoverUse Covers { get; init; } = CoverUse.Nights;
    /// <summary>Clock hours of hot meals, 0 to 10 of them.</summary>
    public IReadOnlyList<double> MealsAtH { get; init => field = Clock(value); } = [8, 19];
    /// <summary>Clock hours of showers, 0 to 12 of them.</summary>
    public IReadOnlyList<double> ShowersAtH { get; init => field = Clock(value); } = [];
    /// <summary>Water given off by clothes and kit hung up to dry each day, g, 0 to 10 000.</summary>
    public double DryingPerDayG { get; init => field = Guard.InRange(value, 0, 10_000, "g", nameof(DryingPerDayG)); }
    /// <summary>When they are hung up, clock hour; most of the water leaves in the hours after.</summary>
    public double DryingFromH { get; init => field = ClockH(value); } = 18;
    /// <summary>When the roof fan runs.</summary>
    public FanUse Fan { get; init; } = FanUse.Off;
    /// <summary>Humidity above which it runs, fraction, 0.2 to 0.95; for <see cref="FanUse.AboveHumidity"/>.</summary>
    public double FanAboveFraction { get; init => field = Guard.InRange(value, 0.2, 0.95, "(fraction)", nameof(FanAboveFraction)); } = 0.65;
    /// <summary>Warmth above which a summer hour counts as too hot, operative, °C. Source: OURS, 26 °C, common practice for sleeping and sitting indoors.</summary>
    public double HotC { get; init => field = Guard.InRange(value, 20, 40, "°C", nameof(HotC)); } = 26;
    /// <summary>True where people at home open windows and roof light from 2 K below <see cref="HotC"/> on, while it is cooler outside.</summary>
    public bool OpensWindowsWhenHot { get; init; } = true;

    private static double ClockH(double value) => Guard.InRange(value, 0, 24, "h");

    private static double? Wanted(double? value) => value is { } wanted ? Guard.InRange(wanted, 0, 30, "°C") : null;

    private static IReadOnlyList<double> Clock(IReadOnlyList<double> hours)
    {
        Guard.InRange(hours.Count, 0, 12, "times a day");
        foreach (double hour in hours) ClockH(hour);
        return hours;
    }
}

/// <summary>When covers are on.</summary>
public enum CoverUse
{
    /// <summary>From dusk (when people come home and the sun is down) to getting up.</summary>
    Nights,
    /// <summary>Always while parked.</summary>
    Always,
    /// <summary>Never.</summary>
    Never,
}

/// <summary>When the roof fan runs.</summary>
public enum FanUse
{
    /// <summary>Never.</summary>
    Off,
    /// <summary>While the living space is more humid than the stated limit and outside air is drier.</summary>
    AboveHumidity,
    /// <summary>While people are in.</summary>
    WhenHome,
    /// <summary>While cooking and showering, and half an hour after.</summary>
    AtWetWork,
}
