using Thermal.Heating;

namespace Thermal.Assessments;

/// <summary>Heater need, what the fitted heater does, and what a night costs.</summary>
public sealed record HeatingAnswer
{
    /// <summary>Heat needed: the larger of steady loss and warm-up, at the place's altitude, W.</summary>
    public required Between NeedW { get; init; }
    /// <summary>Steady loss on the cold night, W.</summary>
    public required Between SteadyW { get; init; }
    /// <summary>Power to warm up in the stated time, W.</summary>
    public required Between WarmUpW { get; init; }
    /// <summary>True where warm-up decides.</summary>
    public bool WarmUpDecides => WarmUpW.Value > SteadyW.Value;
    /// <summary>Time the fitted heater takes to warm up at full output, h; null when it never gets there.</summary>
    public required double? WarmUpH { get; init; }
    /// <summary>Output of the fitted heater at this altitude, W.</summary>
    public required double HighestOutputW { get; init; }
    /// <summary>Lowest output at this altitude, W.</summary>
    public required double LowestOutputW { get; init; }
    /// <summary>Output left by thin air, fraction.</summary>
    public required double AltitudeFactor { get; init; }
    /// <summary>True where the fitted heater covers the usual need.</summary>
    public bool IsEnough => HighestOutputW >= NeedW.Value;
    /// <summary>Cold night.</summary>
    public required NightHeating Cold { get; init; }
    /// <summary>Mild night.</summary>
    public required NightHeating Mild { get; init; }
    /// <summary>Smallest class of the same fuel that is enough for the usual need here; null when none is.</summary>
    public required HeaterClass? Suggested { get; init; }
    /// <summary>Temperature in the living space at dawn with the heater off all night, °C; low is the coldest run.</summary>
    public required Between DawnHeaterOffC { get; init; }
    /// <summary>Cold-chamber grades 2 and 3.</summary>
    public required IReadOnlyList<ChamberGrade> Grades { get; init; }
    /// <summary>Hot water for showers a day.</summary>
    public required HotWater HotWater { get; init; }
}

/// <summary>What the heater does on one night.</summary>
public sealed record NightHeating
{
    /// <summary>Mean heat the heater gives, people's heat taken off, W.</summary>
    public required Between HeatW { get; init; }
    /// <summary>Share of the highest output, fraction; above 1 it does not hold the set-point.</summary>
    public required double OutputFraction { get; init; }
    /// <summary>Starts in the night; 1 when it runs through.</summary>
    public required double StartsCount { get; init; }
    /// <summary>Temperature the living space reaches at lowest output without cycling, °C.</summary>
    public required double AtLowestOutputC { get; init; }
    /// <summary>Fuel a night: litres of liquid fuel, kg of gas, kWh of electricity; no more than the heater burns at its highest output (<see cref="OutputFraction"/> says when that falls short).</summary>
    public required Between FuelAmount { get; init; }
    /// <summary>Charge a night at 12.8 V for heater and fan, Ah.</summary>
    public required Between ChargeAh { get; init; }
}

/// <summary>One cold-chamber grade.</summary>
/// <param name="Grade">2 or 3.</param>
/// <param name="OutsideC">Chamber, °C.</param>
/// <param name="LimitH">Time allowed, h.</param>
/// <param name="ReachedAfterH">Time to 20 °C at full output, h; null when never.</param>
/// <param name="IsReached">True when within the time.</param>
public sealed record ChamberGrade(int Grade, double OutsideC, double LimitH, double? ReachedAfterH, bool IsReached);

/// <summary>Hot water for showers.</summary>
/// <param name="HeatKWhPerDay">Heat in the water a day, kWh.</param>
/// <param name="FuelAmountPerDay">Fuel a day, litres or kg or kWh.</param>
public sealed record HotWater(double HeatKWhPerDay, double FuelAmountPerDay);
