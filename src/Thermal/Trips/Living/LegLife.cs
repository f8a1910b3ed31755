using Thermal.Materials;
using Thermal.People;

namespace Thermal.Trips.Living;

/// <summary>How people live on one leg: from clock hours to what they do in a step. Immutable.</summary>
/// <remarks>
/// While driving all are on board and awake; nobody cooks, showers or hangs things up, and covers are off. Parked, people are in between the hours of
/// the habits and every night. A meal or a shower at an hour when nobody is in is not taken inside. Sums over a day are exact for any step.
/// </remarks>
internal sealed class LegLife
{
    /// <summary>Time a meal boils and steams, h. Source: OURS, three quarters of an hour.</summary>
    internal const double MealH = 0.75;
    /// <summary>Time of a shower and of the damp that follows from curtain and tray, h. Source: OURS, 10 and 20 minutes.</summary>
    internal const double ShowerH = 1.0 / 6, ShowerTailH = 1.0 / 3;
    /// <summary>Of a shower's vapour, what comes with the water, fraction; the rest follows. Source: OURS.</summary>
    internal const double WithWaterFraction = 2.0 / 3;
    /// <summary>How long a fan for wet work runs on, h. Source: OURS.</summary>
    internal const double FanTailH = 0.5;
    private const double LitrePerM3 = 1000, EvaporationJPerKg = Air.MoistAir.EvaporationHeatJPerKg;

    private readonly TripHabits habits;
    private readonly Habits figures;
    private readonly bool isDriving, isAllDay;
    private readonly ClockSpan home, night, evening;
    private readonly ClockSpan[] meals, showers, showerTails, wetWork;
    private readonly double mealFlameW, mealSteamKgPerS, mealFlameKgPerS, mealCarbonDioxideM3PerS;

    /// <param name="leg">The leg.</param>
    /// <param name="usual">Habits where the leg has none of its own.</param>
    /// <param name="figures">What a meal, a shower and a pet give off.</param>
    internal LegLife(Leg leg, TripHabits usual, Habits figures)
    {
        (habits, this.figures, isDriving) = (leg.Habits ?? usual, figures, leg.IsDriving);
        isAllDay = habits.HomeFromH == habits.HomeToH;
        (home, night, evening) = (new(habits.HomeFromH, habits.HomeToH), new(habits.BedtimeH, habits.RisingH), new(12, habits.BedtimeH));
        meals = Inside(habits.MealsAtH, MealH, 0);
        showers = Inside(habits.ShowersAtH, ShowerH, 0);
        showerTails = Inside(habits.ShowersAtH, ShowerTailH, ShowerH);
        wetWork = [.. Inside(habits.MealsAtH, MealH + FanTailH, 0), .. Inside(habits.ShowersAtH, ShowerH + FanTailH, 0)];
        mealFlameW = figures.FlamePerMealKWh * 1000 / MealH;
        mealSteamKgPerS = figures.SteamPerMealG.Value / 1000 / (MealH * 3600);
        if (figures.CookerFuel is not { } fuel) return;
        mealFlameKgPerS = mealFlameW / 1000 * FuelData.Of(fuel).WaterPerKWhG / 3.6e6;
        mealCarbonDioxideM3PerS = mealFlameW / 1000 * FuelData.Of(fuel).CarbonDioxidePerKWhL / LitrePerM3 / 3600;
    }

    /// <summary>The habits it follows.</summary>
    internal TripHabits Habits => habits;

    /// <summary>True where people are in at this hour.</summary>
    internal bool IsHome(double clockH) => habits.PeopleCount > 0 && (isDriving || isAllDay || home.Holds(clockH) || night.Holds(clockH));

    /// <summary>Fills in what is done in a step.</summary>
    /// <param name="clockH">Begin of the step, clock hour.</param>
    /// <param name="hours">Its length, h.</param>
    /// <param name="isSunDown">True with the sun below the horizon.</param>
    /// <param name="drying">What hangs to dry; goes on through legs.</param>
    /// <param name="now">Where to write it.</param>
    internal void Fill(double clockH, double hours, bool isSunDown, Drying drying, Doings now)
    {
        double middle = (clockH + hours / 2) % 24;
        now.IsDriving = isDriving;
        now.IsHome = IsHome(middle);
        now.IsAsleep = now.IsHome && !isDriving && night.Holds(middle);
        now.IsShut = now.IsAsleep || now.IsHome && !isDriving && isSunDown && evening.Holds(middle);
        now.CoversOn = !isDriving && habits.Covers switch { CoverUse.Always => true, CoverUse.Never => false, _ => now.IsShut };
        now.IsWetWork = Any(wetWork, middle);
        now.WantedC = (isDriving ? habits.DrivingC : !now.IsHome ? habits.AwayC : now.IsAsleep ? habits.NightC : habits.DayC) ?? double.NaN;
        FillPeople(clockH, hours, now);
        FillWater(clockH, hours, drying, now);
    }

    private void FillPeople(double clockH, double hours, Doings now)
    {
        double asleep = isDriving || habits.PeopleCount == 0 ? 0 : night.SharedH(clockH, hours) / hours;
        double home = habits.PeopleCount == 0 ? 0 : isDriving || isAllDay ? 1 : HomeH(clockH, hours) / hours, awake = Math.Max(0, home - asleep);
        double people = habits.PeopleCount;
        now.PeopleW = people * (asleep * BodyLoads.AsleepHeatW + awake * BodyLoads.AwakeHeatW);
        now.PeopleKgPerS = (people * (asleep * BodyLoads.AsleepVapourGPerH.Value + awake * BodyLoads.AwakeVapourGPerH.Value) + home * figures.PetsGPerH) / 3.6e6;
        now.CarbonDioxideM3PerS = people * (asleep * BodyLoads.AsleepCarbonDioxideLPerH + awake * BodyLoads.AwakeCarbonDioxideLPerH) / LitrePerM3 / 3600;
    }

    /// <summary>Hours of a stretch with people in: home or night, what both share counted once.</summary>
    private double HomeH(double clockH, double hours)
    {
        double both = 0;
        for (int day = -1; day <= 1; day++)
        {
            double from = Math.Max(clockH, night.FromH + 24 * day), to = Math.Min(clockH + hours, night.FromH + 24 * day + night.Hours);
            if (to > from) both += home.SharedH(from < 0 ? from + 24 : from % 24, to - from);
        }
        return home.SharedH(clockH, hours) + night.SharedH(clockH, hours) - both;
    }

    private void FillWater(double clockH, double hours, Drying drying, Doings now)
    {
        double cooking = Share(meals, clockH, hours), water = Share(showers, clockH, hours), tail = Share(showerTails, clockH, hours);
        double vapourKg = figures.VapourPerShowerG.Value / 1000;
        now.FlameW = cooking * mealFlameW;
        now.CookingKgPerS = cooking * (mealSteamKgPerS + mealFlameKgPerS);
        now.CookingW = now.FlameW - cooking * mealSteamKgPerS * EvaporationJPerKg;
        now.CarbonDioxideM3PerS += cooking * mealCarbonDioxideM3PerS;
        now.ShowersKgPerS = vapourKg * (WithWaterFraction * water / ShowerH + (1 - WithWaterFraction) * tail / ShowerTailH) / 3600;
        now.WarmWaterLPerS = figures.WaterPerShowerL * water / ShowerH / 3600;
        double afterH = (habits.DryingFromH - clockH + 24) % 24;
        bool isHungUp = afterH < hours && !isDriving && habits.PeopleCount > 0;
        now.DryingKgPerS = drying.Step(hours, isHungUp ? habits.DryingPerDayG / 1000 : 0, isHungUp ? afterH : 0) / (3600 * hours);
    }

    /// <summary>Spans after each clock hour at which people are in and parked.</summary>
    private ClockSpan[] Inside(IReadOnlyList<double> atH, double lastsH, double afterH) =>
        isDriving ? [] : [.. atH.Where(hour => IsHome(hour % 24)).Select(hour => ClockSpan.Lasting(hour + afterH, lastsH))];

    /// <summary>How many of them go on, mean of a stretch.</summary>
    private static double Share(ClockSpan[] spans, double clockH, double hours)
    {
        double sharedH = 0;
        foreach (ClockSpan span in spans) sharedH += span.SharedH(clockH, hours);
        return sharedH / hours;
    }

    private static bool Any(ClockSpan[] spans, double clockH)
    {
        foreach (ClockSpan span in spans)
            if (span.Holds(clockH)) return true;
        return false;
    }
}
