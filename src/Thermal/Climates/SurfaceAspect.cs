namespace Thermal.Climates;

/// <summary>Which way a surface looks, and how high its horizon stands; found once, used for every hour.</summary>
public sealed class SurfaceAspect
{
    /// <summary>Share of sun thrown back by bare ground, fraction. Source: DUFFIE, chapter 2.</summary>
    public const double BareGroundFraction = 0.2;
    /// <summary>Share of sun thrown back by lying snow, fraction: 0.65 to 0.77 in a snowy typical year. Source: DUFFIE, chapter 2, 0.7.</summary>
    public const double SnowFraction = 0.7;
    /// <summary>Lowest height of the sun at which the light round it is still projected from the flat, degrees. Source: OURS.</summary>
    public const double LowestProjectedDeg = 3;

    private const double RadPerDeg = Math.PI / 180;
    private const int AzimuthCount = 360;
    private static readonly double LowestProjected = Math.Sin(LowestProjectedDeg * RadPerDeg);
    private readonly double sinTilt, cosTilt, azimuthRad;

    /// <param name="tiltDeg">Angle between its outward side and straight up, degrees: roof 0, side 90, floor 180.</param>
    /// <param name="azimuthDeg">Where its outward side looks, degrees clockwise from north, 0 to 360; of no matter for a roof.</param>
    /// <param name="horizonDeg">Height of hills, trees or houses all round, degrees, 0 to 80.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    public SurfaceAspect(double tiltDeg, double azimuthDeg, double horizonDeg = 0)
    {
        (TiltDeg, AzimuthDeg, HorizonDeg) = (Guard.InRange(tiltDeg, 0, 180, "°"), Guard.InRange(azimuthDeg, 0, 360, "°"), Guard.InRange(horizonDeg, 0, 80, "°"));
        (sinTilt, cosTilt) = Math.SinCos(tiltDeg * RadPerDeg);
        azimuthRad = azimuthDeg * RadPerDeg;
        SkyViewFraction = horizonDeg == 0 ? (1 + cosTilt) / 2 : SkyView();
    }

    /// <summary>The aspect of a vehicle's panel.</summary>
    /// <param name="tiltDeg">Tilt of the panel, degrees.</param>
    /// <param name="facingDeg">Where its outward side faces, degrees clockwise from the vehicle's nose, 0 to 360.</param>
    /// <param name="headingDeg">Where the nose points, degrees clockwise from north, 0 to 360.</param>
    /// <param name="horizonDeg">Height of the horizon, degrees, 0 to 80.</param>
    public static SurfaceAspect OfPanel(double tiltDeg, double facingDeg, double headingDeg, double horizonDeg = 0) =>
        new(tiltDeg, (Guard.InRange(facingDeg, 0, 360, "°") + Guard.InRange(headingDeg, 0, 360, "°")) % 360, horizonDeg);

    /// <summary>Tilt, degrees.</summary>
    public double TiltDeg { get; }
    /// <summary>Azimuth, degrees.</summary>
    public double AzimuthDeg { get; }
    /// <summary>Height of the horizon, degrees.</summary>
    public double HorizonDeg { get; }
    /// <summary>Share of what it sees that is open sky, fraction: (1 + cos tilt)/2 with a flat horizon.</summary>
    public double SkyViewFraction { get; }

    /// <summary>Cosine of the angle between the sun and straight out, as a factor; 0 behind it.</summary>
    /// <param name="sun">Where the sun stands.</param>
    public double IncidenceFactor(SunPosition sun)
    {
        (double up, double along) = Math.SinCos(sun.ElevationDeg * RadPerDeg);
        return Math.Max(0, up * cosTilt + along * sinTilt * Math.Cos(sun.AzimuthDeg * RadPerDeg - azimuthRad));
    }

    /// <summary>What falls on it.</summary>
    /// <param name="sun">Where the sun stands, in the middle of the step.</param>
    /// <param name="beamNormalWPerM2">Beam on a face turned to the sun, W/m².</param>
    /// <param name="diffuseWPerM2">Sky light on the flat, W/m².</param>
    /// <param name="globalWPerM2">Both on the flat, W/m².</param>
    /// <param name="aboveAirWPerM2">Normal irradiance above the air, W/m².</param>
    /// <param name="groundFraction">Share of sun thrown back by the ground (albedo), fraction, 0 to 1.</param>
    /// <param name="model">How sky light is spread.</param>
    /// <returns>Beam, sky and ground part, W/m².</returns>
    /// <remarks>
    /// Below the horizon there is no beam and no light round the sun; that light then counts to the sky. What the horizon hides of the sky
    /// is as bright as the ground. In hours of sunrise and sunset with the sun below the horizon in their middle the beam is left out.
    /// Source: DUFFIE, chapter 2: isotropic and Hay and Davies.
    /// </remarks>
    public SunOnSurface Of(SunPosition sun, double beamNormalWPerM2, double diffuseWPerM2, double globalWPerM2, double aboveAirWPerM2, double groundFraction, SkyModel model)
    {
        double ground = globalWPerM2 * groundFraction * (1 - SkyViewFraction);
        if (!(sun.ElevationDeg > HorizonDeg)) return new(0, diffuseWPerM2 * SkyViewFraction, ground);
        double incidence = IncidenceFactor(sun);
        double round = model == SkyModel.HayDavies ? Math.Clamp(beamNormalWPerM2 / aboveAirWPerM2, 0, 1) : 0;
        double projected = incidence / Math.Max(Math.Sin(sun.ElevationDeg * RadPerDeg), LowestProjected);
        return new(beamNormalWPerM2 * incidence + diffuseWPerM2 * round * projected, diffuseWPerM2 * (1 - round) * SkyViewFraction, ground);
    }

    /// <summary>Cosine-weighted share of the sky above the horizon, by its exact integral over height and the sum over directions.</summary>
    private double SkyView()
    {
        double sum = 0;
        for (int i = 0; i < AzimuthCount; i++)
        {
            double towards = Math.Cos(2 * Math.PI * (i + 0.5) / AzimuthCount);
            // The surface sees heights above that at which the direction turns behind it.
            double lowest = HorizonDeg * RadPerDeg, turn = Math.Atan2(-sinTilt * towards, cosTilt);
            double from = cosTilt > 0 ? Math.Max(lowest, turn) : lowest, to = cosTilt > 0 ? Math.PI / 2 : Math.Min(Math.PI / 2, Math.Atan2(sinTilt * towards, -cosTilt));
            if (to <= from) continue;
            double flat = (Math.Pow(Math.Sin(to), 2) - Math.Pow(Math.Sin(from), 2)) / 2;
            double upright = (to - from) / 2 + (Math.Sin(2 * to) - Math.Sin(2 * from)) / 4;
            sum += cosTilt * flat + sinTilt * towards * upright;
        }
        return sum * 2 / AzimuthCount;
    }
}
