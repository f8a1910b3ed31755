namespace Thermal.Envelope;

/// <summary>Resistance between a surface and the air and surroundings it faces.</summary>
public static class SurfaceResistance
{
    /// <summary>Stefan–Boltzmann constant σ, W/(m²·K⁴); exact, by definition (SI 2019).</summary>
    public const double StefanBoltzmannWPerM2K4 = 5.670374419e-8;

    /// <summary>Emissivity of ordinary surfaces in the surface resistances, fraction.</summary>
    /// <remarks>Source: ISO-6946, annex C (from memory).</remarks>
    public const double UsualEmissivityFraction = 0.9;

    /// <summary>Radiative coefficient of a black surface outside, W/(m²·K), at 10 °C.</summary>
    /// <remarks>Source: ISO-6946, annex C, table of h_r0 (from memory).</remarks>
    public const double OutsideBlackWPerM2K = 5.1;

    /// <summary>Outside resistance on the sheltered road side of a floor, m²·K/W.</summary>
    /// <remarks>Source: OURS.</remarks>
    public const double ShelteredRoadM2KPerW = 0.10;

    /// <summary>Resistance round a thing slung under the floor in the open, m²·K/W: the sheltered road side parked, convection by speed while driving.</summary>
    /// <param name="drivingMPerS">Driving speed v, m/s, 0 to 40; null parked.</param>
    /// <remarks>Parked 0.10 whatever the wind; driving 1/(4 + 4v), never more than parked (reached below 1.5 m/s). Source: OURS, with the convection of ISO-6946, annex C (from memory).</remarks>
    public static double UnderFloorM2KPerW(double? drivingMPerS) =>
        drivingMPerS is { } speed ? Math.Min(ShelteredRoadM2KPerW, 1 / OutsideConvectiveWPerM2K(speed)) : ShelteredRoadM2KPerW;

    /// <summary>Inside resistance for mould on opaque surfaces, m²·K/W. Source: ISO-13788, from memory.</summary>
    public const double MouldOpaqueM2KPerW = 0.25;

    /// <summary>Inside resistance for mould on glass and frames, m²·K/W. Source: ISO-13788, from memory.</summary>
    public const double MouldGlassM2KPerW = 0.13;

    /// <summary>The way heat leaves through a surface whose outward side leans by the tilt.</summary>
    /// <param name="tiltDeg">Angle between the outward side and straight up, degrees, 0 (roof) to 180 (floor).</param>
    /// <remarks>Source: ISO-6946, 6.7: within 30° of the horizontal counts as horizontal.</remarks>
    public static FlowDirection DirectionOf(double tiltDeg) =>
        Guard.InRange(tiltDeg, 0, 180, "°") < 60 ? FlowDirection.Up : tiltDeg <= 120 ? FlowDirection.Horizontal : FlowDirection.Down;

    /// <summary>Inside surface resistance R_si, m²·K/W.</summary>
    /// <remarks>Source: ISO-6946, table 7.</remarks>
    public static double InsideM2KPerW(FlowDirection direction) => direction switch
    {
        FlowDirection.Up => 0.10,
        FlowDirection.Down => 0.17,
        _ => 0.13,
    };

    /// <summary>Convective part of the inside coefficient h_c, W/(m²·K).</summary>
    /// <remarks>Source: ISO-6946, annex C (from memory): 5.0 up, 2.5 horizontal, 0.7 down.</remarks>
    public static double InsideConvectiveWPerM2K(FlowDirection direction) => direction switch
    {
        FlowDirection.Up => 5.0,
        FlowDirection.Down => 0.7,
        _ => 2.5,
    };

    /// <summary>Convective part of the outside coefficient, h_c = 4 + 4v, W/(m²·K).</summary>
    /// <param name="windMPerS">Wind or driving speed beside the surface v, m/s, 0 to 40; beyond 10 an extrapolation.</param>
    /// <remarks>Source: ISO-6946, annex C (from memory).</remarks>
    public static double OutsideConvectiveWPerM2K(double windMPerS) => 4 + 4 * Guard.InRange(windMPerS, 0, 40, "m/s");

    /// <summary>Outside surface resistance R_se = 1/(h_c + ε·h_r0), m²·K/W.</summary>
    /// <param name="windMPerS">Wind speed v, m/s, 0 to 40.</param>
    /// <remarks>Source: ISO-6946, annex C (from memory); within 0.006 of the standard's rounded table.</remarks>
    public static double OutsideM2KPerW(double windMPerS) =>
        1 / (OutsideConvectiveWPerM2K(windMPerS) + UsualEmissivityFraction * OutsideBlackWPerM2K);

    /// <summary>
    /// How much colder than the air the surroundings of an outside surface are in effect, K: the share of its
    /// exchange that is radiation to the sky, times how far the sky is below the air.
    /// </summary>
    /// <param name="windMPerS">Wind speed, m/s, 0 to 40.</param>
    /// <param name="tiltDeg">Tilt, degrees, 0 (roof) to 180 (floor); the sky share is (1 + cos tilt)/2.</param>
    /// <param name="skyBelowAirK">Sky temperature below the air, K, 0 to 50.</param>
    /// <remarks>Linear radiation at 10 °C as in R_se; the balance of the outside film, a definition.</remarks>
    public static double SkyChillK(double windMPerS, double tiltDeg, double skyBelowAirK)
    {
        double radiative = UsualEmissivityFraction * OutsideBlackWPerM2K;
        double skyShare = (1 + Math.Cos(Guard.InRange(tiltDeg, 0, 180, "°") * Math.PI / 180)) / 2;
        return skyShare * radiative * OutsideM2KPerW(windMPerS) * Guard.InRange(skyBelowAirK, 0, 50, "K");
    }
}
