namespace Thermal.Climates;

/// <summary>An ordinary year, or a cold spell, by the hour, made from the monthly normals of a place.</summary>
public static class GeneratedWeather
{
    /// <summary>The seed of the default year.</summary>
    public const int UsualSeed = 1;

    /// <summary>A year of hours that has the place's monthly means of temperature, vapour pressure, sun and wind.</summary>
    /// <param name="place">The place.</param>
    /// <param name="seed">Which of the many possible years; equal seed gives equal bits.</param>
    /// <param name="year">Calendar year it is put into, 1950 to 2100; a leap year drops its last day.</param>
    public static Weather Typical(Place place, int seed = UsualSeed, int year = 2025) => throw new NotImplementedException();

    /// <summary>Clear winter days in a row whose coldest hour is the place's design temperature.</summary>
    /// <param name="place">The place.</param>
    /// <param name="days">Days, 1 to 30.</param>
    public static Weather ColdSpell(Place place, int days) => throw new NotImplementedException();
}
