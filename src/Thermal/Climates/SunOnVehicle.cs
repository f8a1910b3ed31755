namespace Thermal.Climates;

/// <summary>Sun on the outside of a parked vehicle, month by month.</summary>
/// <remarks>Sky light by Hay and Davies. The vehicle throws no shadow on itself, nothing stands near it, and every side is upright.</remarks>
public static class SunOnVehicle
{
    /// <summary>Directions tried where the heading is not known, degrees apart. Source: OURS.</summary>
    private const int TriedEveryDeg = 15;

    /// <summary>Sun on roof, front, rear and sides of a vehicle that stands one way.</summary>
    /// <param name="weather">Weather with sun.</param>
    /// <param name="headingDeg">Where the nose points, degrees clockwise from north, 0 to 360.</param>
    /// <param name="horizonDeg">Height of hills, trees or houses all round, degrees, 0 to 80.</param>
    /// <param name="groundFraction">Share of sun thrown back by the ground in the twelve months, January first; see <see cref="GroundCover"/>.</param>
    /// <returns>The months that the weather covers, in the order of the calendar.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A figure outside its range, or NaN.</exception>
    /// <exception cref="ArgumentException">Weather without sun, or not twelve fractions.</exception>
    public static IReadOnlyList<SunOnVehicleMonth> Months(Weather weather, double headingDeg, double horizonDeg, IReadOnlyList<double> groundFraction)
    {
        SurfaceAspect[] aspects = [new(0, 0, horizonDeg), .. new double[] { 0, 180, 270, 90 }.Select(facing => SurfaceAspect.OfPanel(90, facing, headingDeg, horizonDeg))];
        return [.. Means(weather, aspects, groundFraction).Select(month => new SunOnVehicleMonth(month.Month, month.WPerM2[0], month.WPerM2[1], month.WPerM2[2], month.WPerM2[3], month.WPerM2[4]))];
    }

    /// <summary>Sun on the roof, and on an upright side at worst and at best, where nobody knows which way the vehicle will stand.</summary>
    /// <param name="weather">Weather with sun.</param>
    /// <param name="horizonDeg">Height of the horizon, degrees, 0 to 80.</param>
    /// <param name="groundFraction">Share of sun thrown back by the ground in the twelve months, January first.</param>
    /// <returns>The months that the weather covers, in the order of the calendar; directions are tried every 15°.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A figure outside its range, or NaN.</exception>
    /// <exception cref="ArgumentException">Weather without sun, or not twelve fractions.</exception>
    public static IReadOnlyList<SunAnyHeadingMonth> AnyHeading(Weather weather, double horizonDeg, IReadOnlyList<double> groundFraction)
    {
        double[] tried = [.. Enumerable.Range(0, 360 / TriedEveryDeg).Select(i => (double)i * TriedEveryDeg)];
        SurfaceAspect[] aspects = [new(0, 0, horizonDeg), .. tried.Select(azimuth => new SurfaceAspect(90, azimuth, horizonDeg))];
        return [.. Means(weather, aspects, groundFraction).Select(month =>
        {
            double[] sides = month.WPerM2[1..];
            int least = Array.IndexOf(sides, sides.Min()), most = Array.IndexOf(sides, sides.Max());
            return new SunAnyHeadingMonth(month.Month, month.WPerM2[0], sides[least], tried[least], sides[most], tried[most]);
        })];
    }

    private static IEnumerable<(int Month, double[] WPerM2)> Means(Weather weather, SurfaceAspect[] aspects, IReadOnlyList<double> groundFraction)
    {
        if (groundFraction.Count != Place.MonthCount) throw new ArgumentException($"Twelve months are wanted, but {groundFraction.Count} were given.", nameof(groundFraction));
        if (weather is not { GlobalWPerM2: { } global, BeamNormalWPerM2: { } beam, DiffuseWPerM2: { } diffuse })
            throw new ArgumentException($"{weather.Name} has no sun.", nameof(weather));
        double[][] sums = [.. Enumerable.Range(0, Place.MonthCount).Select(_ => new double[aspects.Length])];
        int[] counts = new int[Place.MonthCount];
        for (int i = 0; i < weather.Count; i++)
        {
            int month = weather.MiddleLocal(i).Month - 1;
            counts[month]++;
            if (!(global[i] > 0)) continue;
            DateTime middle = weather.MiddleUtc(i);
            SunPosition sun = SunPosition.At(weather.LatitudeDeg, weather.LongitudeDeg, middle);
            double aboveAir = SunAboveAir.NormalWPerM2(middle.DayOfYear);
            for (int a = 0; a < aspects.Length; a++)
                sums[month][a] += aspects[a].Of(sun, beam[i], diffuse[i], global[i], aboveAir, groundFraction[month], SkyModel.HayDavies).TotalWPerM2;
        }
        for (int m = 0; m < counts.Length; m++)
            if (counts[m] > 0) yield return (m + 1, [.. sums[m].Select(sum => sum / counts[m])]);
    }
}

/// <summary>Sun on a parked vehicle in one month, mean over day and night.</summary>
/// <param name="Month">Month, 1 to 12.</param>
/// <param name="RoofWPerM2">On the roof, W/m².</param>
/// <param name="FrontWPerM2">On the front, W/m².</param>
/// <param name="RearWPerM2">On the rear, W/m².</param>
/// <param name="LeftWPerM2">On the left side, W/m².</param>
/// <param name="RightWPerM2">On the right side, W/m².</param>
public sealed record SunOnVehicleMonth(int Month, double RoofWPerM2, double FrontWPerM2, double RearWPerM2, double LeftWPerM2, double RightWPerM2);

/// <summary>Sun on a vehicle whose heading is not known, in one month, mean over day and night.</summary>
/// <param name="Month">Month, 1 to 12.</param>
/// <param name="RoofWPerM2">On the roof, W/m².</param>
/// <param name="LeastWPerM2">On the upright side with least sun, W/m².</param>
/// <param name="LeastAzimuthDeg">Where that side looks, degrees clockwise from north.</param>
/// <param name="MostWPerM2">On the upright side with most sun, W/m².</param>
/// <param name="MostAzimuthDeg">Where that side looks, degrees clockwise from north.</param>
public sealed record SunAnyHeadingMonth(int Month, double RoofWPerM2, double LeastWPerM2, double LeastAzimuthDeg, double MostWPerM2, double MostAzimuthDeg);
