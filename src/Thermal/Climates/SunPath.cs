namespace Thermal.Climates;

/// <summary>Where the sun stands through one day, from solar midnight to solar midnight. Immutable.</summary>
/// <param name="Day">The day.</param>
/// <param name="Positions">Positions every ten minutes, 145 of them.</param>
public sealed record SunPath(DateOnly Day, IReadOnlyList<SunPosition> Positions)
{
    private const int PerHour = 6;
    private static readonly int[] ShownMonths = [12, 3, 6];

    /// <summary>The path of one day.</summary>
    /// <param name="latitudeDeg">Latitude, degrees, −90 to 90.</param>
    /// <param name="longitudeDeg">Longitude, degrees, −180 to 180.</param>
    /// <param name="day">The day, years 1951 to 2099.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    public static SunPath Of(double latitudeDeg, double longitudeDeg, DateOnly day)
    {
        Guard.InRange(day.Year, 1951, 2099, "(year)", nameof(day));
        DateTime noonUtc = day.ToDateTime(new TimeOnly(12, 0), DateTimeKind.Utc).AddHours(-Guard.InRange(longitudeDeg, -180, 180, "degrees") / 15);
        DateTime midnightUtc = noonUtc.AddHours(-12 - SunPosition.At(latitudeDeg, longitudeDeg, noonUtc).EquationOfTimeH);
        return new(day, [.. Enumerable.Range(0, 24 * PerHour + 1).Select(i => SunPosition.At(latitudeDeg, longitudeDeg, midnightUtc.AddHours((double)i / PerHour)))]);
    }

    /// <summary>The shortest and the longest day and one between them, 21 December, March and June.</summary>
    /// <param name="latitudeDeg">Latitude, degrees, −90 to 90.</param>
    /// <param name="longitudeDeg">Longitude, degrees, −180 to 180.</param>
    /// <param name="year">Year, 1951 to 2099.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    public static IReadOnlyList<SunPath> ThreeDays(double latitudeDeg, double longitudeDeg, int year) =>
        [.. ShownMonths.Select(month => Of(latitudeDeg, longitudeDeg, new DateOnly((int)Guard.InRange(year, 1951, 2099, "(year)"), month, 21)))];

    /// <summary>Greatest height of the day, degrees; negative where the sun stays below a flat horizon.</summary>
    public double HighestDeg => Positions.Max(position => position.ElevationDeg);

    /// <summary>Time that the sun's centre stands above the horizon, h.</summary>
    /// <param name="horizonDeg">Height of the horizon all round, degrees, 0 to 80.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <remarks>Without refraction and the sun's own width: a flat horizon has about ten minutes more at mid latitudes.</remarks>
    public double AboveH(double horizonDeg)
    {
        Guard.InRange(horizonDeg, 0, 80, "degrees");
        double steps = 0;
        for (int i = 1; i < Positions.Count; i++)
        {
            double from = Positions[i - 1].ElevationDeg - horizonDeg, to = Positions[i].ElevationDeg - horizonDeg;
            steps += from > 0 && to > 0 ? 1 : from > 0 || to > 0 ? Math.Max(from, to) / Math.Abs(to - from) : 0;
        }
        return steps / PerHour;
    }
}
