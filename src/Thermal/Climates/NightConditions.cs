using Thermal.Air;

namespace Thermal.Climates;

/// <summary>The steady outside of one night: air, humidity, wind, sky and height. Immutable.</summary>
/// <remarks>
/// The two named nights are answers to different questions: the design night sizes the heater, the mild damp night shows
/// whether fresh air can dry anything. Source: OURS, choices made once.
/// </remarks>
public sealed record NightConditions
{
    /// <summary>Relative humidity of the design night, fraction. Source: OURS.</summary>
    public const double DesignRelativeHumidityFraction = 0.85;

    /// <summary>Wind of both nights, m/s. Source: OURS.</summary>
    public const double UsualWindMPerS = 3;

    /// <summary>How far a clear sky lies below the air, K. Source: OURS, rounded from 19 to 25 K measured on clear cold nights at four sites.</summary>
    public const double ClearSkyBelowAirK = 20;

    /// <summary>A covered sky is as warm as the air, K. Source: OURS.</summary>
    public const double CoveredSkyBelowAirK = 0;

    /// <summary>Outside temperature of the mild night, °C. Source: OURS.</summary>
    public const double MildC = 6;

    /// <summary>Relative humidity of the mild night, fraction. Source: OURS.</summary>
    public const double MildRelativeHumidityFraction = 0.90;

    /// <summary>Highest wind taken, m/s. Limit chosen by us.</summary>
    public const double HighestWindMPerS = 40;

    /// <summary>Farthest a sky may lie below the air, K. Limit chosen by us.</summary>
    public const double HighestSkyBelowAirK = 50;

    /// <summary>Outside air temperature, °C, −60 to 50.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    public required double OutsideC { get; init => field = Guard.InRange(value, MonthNormals.LowestC, MonthNormals.HighestC, "°C", nameof(OutsideC)); }

    /// <summary>Relative humidity over water, also below 0 °C, fraction, 0.05 to 1.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    public required double RelativeHumidityFraction { get; init => field = Guard.InRange(value, MonthNormals.LowestRelativeHumidityFraction, 1, "(a fraction)", nameof(RelativeHumidityFraction)); }

    /// <summary>Wind at the vehicle, m/s, 0 to 40.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    public required double WindMPerS { get; init => field = Guard.InRange(value, 0, HighestWindMPerS, "m/s", nameof(WindMPerS)); }

    /// <summary>How far the sky's radiant temperature lies below the air, K, 0 (covered) to 50.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    public required double SkyBelowAirK { get; init => field = Guard.InRange(value, 0, HighestSkyBelowAirK, "K", nameof(SkyBelowAirK)); }

    /// <summary>Height above the sea, m, −430 to 6000.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    public required double AltitudeM { get; init => field = Guard.InRange(value, Place.LowestAltitudeM, Place.HighestAltitudeM, "m", nameof(AltitudeM)); }

    /// <summary>Vapour pressure of the outside air, Pa, by the curve over water at every temperature.</summary>
    /// <remarks>Source: ISO-13788, annex E for the curve.</remarks>
    public double VapourPressurePa => RelativeHumidityFraction * SaturationPressure.OverWaterPa(OutsideC);

    /// <summary>The cold clear night a heater is sized for: the place's design temperature.</summary>
    /// <param name="place">Where the vehicle stands.</param>
    public static NightConditions Design(Place place) => new()
    {
        OutsideC = place.Design.TemperatureC,
        RelativeHumidityFraction = DesignRelativeHumidityFraction,
        WindMPerS = UsualWindMPerS,
        SkyBelowAirK = ClearSkyBelowAirK,
        AltitudeM = place.AltitudeM,
    };

    /// <summary>The mild damp night on which ventilating hardly dries: +6 °C under a covered sky.</summary>
    /// <param name="altitudeM">Height above the sea, m, −430 to 6000.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    public static NightConditions Mild(double altitudeM) => new()
    {
        OutsideC = MildC,
        RelativeHumidityFraction = MildRelativeHumidityFraction,
        WindMPerS = UsualWindMPerS,
        SkyBelowAirK = CoveredSkyBelowAirK,
        AltitudeM = altitudeM,
    };
}
