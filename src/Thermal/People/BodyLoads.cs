using Thermal.Materials;

namespace Thermal.People;

/// <summary>Heat, vapour and carbon dioxide of people.</summary>
public static class BodyLoads
{
    /// <summary>Sensible heat of a sleeper, W. Source: ASHRAE-F (2017), ch. 18, table of metabolic rates, sensible share from memory.</summary>
    public const double AsleepHeatW = 46;
    /// <summary>Sensible heat of a person at rest, W. Source: ASHRAE-F (2017), ch. 18, sensible share from memory.</summary>
    public const double AwakeHeatW = 70;
    /// <summary>Carbon dioxide asleep, L/h. Source: PRACTICE, 11 to 14 L/h, from memory.</summary>
    public const double AsleepCarbonDioxideLPerH = 13;
    /// <summary>Carbon dioxide awake, L/h. Source: PRACTICE.</summary>
    public const double AwakeCarbonDioxideLPerH = 20;
    /// <summary>Carbon dioxide outside, ppm. Source: OURS.</summary>
    public const double OutsideCarbonDioxidePpm = 420;

    /// <summary>Vapour of a sleeper, g/h.</summary>
    public static Bounded AsleepVapourGPerH { get; } = new(30, 40, 50, "TRADE", "person asleep");
    /// <summary>Vapour of a person awake at rest, g/h.</summary>
    public static Bounded AwakeVapourGPerH { get; } = new(40, 55, 100, "TRADE", "person at rest or light work");

    /// <summary>Vapour given off inside, mean over the hours at home.</summary>
    /// <param name="habits">Who and what.</param>
    /// <param name="extreme">Lowest, usual or highest figures of bodies, cooking and showers.</param>
    /// <returns>g/h.</returns>
    /// <remarks>People asleep and awake, pets, meals with the water of an open flame, showers, drying; all spread over <see cref="Habits.AtHomeH"/>.</remarks>
    public static double VapourGPerH(Habits habits, Extreme extreme = Extreme.Usual)
    {
        double night = Math.Min(habits.NightH, habits.AtHomeH), day = habits.AtHomeH - night;
        double people = habits.SleepersCount * (night * AsleepVapourGPerH.At(extreme) + day * AwakeVapourGPerH.At(extreme));
        double flame = habits.CookerFuel is { } fuel ? habits.FlamePerMealKWh * FuelData.Of(fuel).WaterPerKWhG : 0;
        double meals = habits.MealsPerDay * (habits.SteamPerMealG.At(extreme) + flame);
        double showers = habits.ShowersPerDay * habits.VapourPerShowerG.At(extreme);
        return (people + meals + showers + habits.DryingPerDayG) / habits.AtHomeH + habits.PetsGPerH;
    }

    /// <summary>Carbon dioxide in a well-mixed room after an evening awake and a night asleep.</summary>
    /// <param name="habits">Who, and how long.</param>
    /// <param name="volumeM3">Air volume, m³, 0.1 to 500.</param>
    /// <param name="airM3PerH">Outside air, m³/h, 0 to 5000.</param>
    /// <returns>ppm at the end of the night, starting the evening at outside air. Meals over an open flame come on top.</returns>
    /// <remarks>Closed form of a well-mixed zone, c' = (G − Q·(c − c_e))/V.</remarks>
    public static double CarbonDioxideAtDawnPpm(Habits habits, double volumeM3, double airM3PerH)
    {
        double evening = Math.Max(0, habits.AtHomeH - habits.NightH);
        double excess = After(0, habits.SleepersCount * AwakeCarbonDioxideLPerH, evening);
        return OutsideCarbonDioxidePpm + After(excess, habits.SleepersCount * AsleepCarbonDioxideLPerH, habits.NightH);

        double After(double startPpm, double sourceLPerH, double hours)
        {
            double rate = Guard.InRange(airM3PerH, 0, 5000, "m³/h") / Guard.InRange(volumeM3, 0.1, 500, "m³");
            double source = sourceLPerH / volumeM3 * 1000;
            return rate < 1e-9 ? startPpm + source * hours : startPpm * Math.Exp(-rate * hours) + source / rate * (1 - Math.Exp(-rate * hours));
        }
    }
}
