using Thermal.Envelope;

namespace Thermal.Ventilation;

/// <summary>Air exchange of a parked vehicle's room by warm air, wind and a fan.</summary>
public static class AirFlow
{
    /// <summary>Discharge factor of a sharp opening. Source: ASHRAE-F (2017), ch. 16, from memory.</summary>
    public const double DischargeFactor = 0.6;

    private const double GravityMPerS2 = 9.81;

    /// <summary>Stack pressure of a warm room, ρ·g·h·ΔT/T.</summary>
    /// <param name="heightM">Height between low and high openings h, m, 0 to 5.</param>
    /// <param name="insideC">Inside, °C, -60 to 60.</param>
    /// <param name="outsideC">Outside, °C, -60 to 60.</param>
    /// <param name="outsideDensityKgPerM3">Density of the outside air, kg/m³, 0.3 to 2.</param>
    /// <returns>Pa, never negative: a room colder than outside drives as much downwards.</returns>
    /// <remarks>Hydrostatics of two air columns, exact for uniform temperatures.</remarks>
    public static double StackPa(double heightM, double insideC, double outsideC, double outsideDensityKgPerM3) =>
        Guard.InRange(outsideDensityKgPerM3, 0.3, 2, "kg/m³") * GravityMPerS2 * Guard.InRange(heightM, 0, 5, "m")
            * Math.Abs(Guard.InRange(insideC, -60, 60, "°C") - Guard.InRange(outsideC, -60, 60, "°C")) / (insideC + 273.15);

    /// <summary>Wind pressure across the vehicle, ΔC_p·ρ·v²/2.</summary>
    /// <param name="windMPerS">Wind, m/s, 0 to 40.</param>
    /// <param name="pressureFactor">Difference of pressure coefficients ΔC_p, 0 to 2.</param>
    /// <param name="densityKgPerM3">Density of the outside air, kg/m³, 0.3 to 2.</param>
    /// <returns>Pa.</returns>
    public static double WindPa(double windMPerS, double pressureFactor, double densityKgPerM3) =>
        Guard.InRange(pressureFactor, 0, 2, "(factor)") * Guard.InRange(densityKgPerM3, 0.3, 2, "kg/m³") / 2 * Guard.InRange(windMPerS, 0, 40, "m/s") * windMPerS;

    /// <summary>Flow through a low and a high opening in series, q = C·A·√(2Δp/ρ) with 1/A² = 1/A_low² + 1/A_high².</summary>
    /// <param name="lowM2">Openings low down, m², 0 to 5.</param>
    /// <param name="highM2">Openings high up, m², 0 to 5.</param>
    /// <param name="pressurePa">Pressure over both together, Pa, 0 to 2000.</param>
    /// <param name="densityKgPerM3">Density of air, kg/m³, 0.3 to 2.</param>
    /// <returns>m³/s; 0 where either opening is closed.</returns>
    /// <remarks>Source: ASHRAE-F (2017), ch. 16, from memory; Bernoulli with a discharge factor.</remarks>
    public static double ThroughPairM3PerS(double lowM2, double highM2, double pressurePa, double densityKgPerM3)
    {
        Guard.InRange(lowM2, 0, 5, "m²");
        Guard.InRange(highM2, 0, 5, "m²");
        if (lowM2 == 0 || highM2 == 0) return 0;
        double area = 1 / Math.Sqrt(1 / (lowM2 * lowM2) + 1 / (highM2 * highM2));
        return DischargeFactor * area * Math.Sqrt(2 * Guard.InRange(pressurePa, 0, 2000, "Pa") / Guard.InRange(densityKgPerM3, 0.3, 2, "kg/m³"));
    }

    /// <summary>Air a zone exchanges with the outside.</summary>
    /// <param name="zone">The zone.</param>
    /// <param name="insideC">Its temperature, °C.</param>
    /// <param name="outsideC">Outside, °C.</param>
    /// <param name="windMPerS">Wind, m/s.</param>
    /// <param name="windPressureFactor">ΔC_p.</param>
    /// <param name="densityKgPerM3">Density of the outside air, kg/m³.</param>
    /// <param name="fanM3PerH">Air a fan draws out, m³/h, 0 to 2000; adds to natural flow by squares.</param>
    /// <returns>m³/h of outside air.</returns>
    /// <remarks>Stack and wind pressure add (flows add by squares), and so does a fan's flow (from memory, ASHRAE-F ch. 16).</remarks>
    public static double OfZoneM3PerH(Zone zone, double insideC, double outsideC, double windMPerS, double windPressureFactor, double densityKgPerM3, double fanM3PerH)
    {
        double natural;
        if (zone.AirChangesPerH is { } changes) natural = changes * zone.VolumeM3;
        else
        {
            double low = zone.LeakEachM2.Value, high = low;
            for (int i = 0; i < zone.Vents.Count; i++) // an enumerator would take memory in every step of a trip
                if (zone.Vents[i].IsHigh) high += zone.Vents[i].FreeAreaM2; else low += zone.Vents[i].FreeAreaM2;
            double pressure = StackPa(zone.HeightM, insideC, outsideC, densityKgPerM3) + WindPa(windMPerS, windPressureFactor, densityKgPerM3);
            natural = 3600 * ThroughPairM3PerS(low, high, pressure, densityKgPerM3);
        }
        return fanM3PerH == 0 ? natural : Math.Sqrt(natural * natural + Guard.InRange(fanM3PerH, 0, 2000, "m³/h") * fanM3PerH);
    }
}
