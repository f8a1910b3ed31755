using Thermal.Air;

namespace Thermal.Zones;

/// <summary>Steady state of all zones, in the vehicle's order of zones.</summary>
public sealed record ZoneState
{
    /// <summary>The shell it holds for.</summary>
    public required Shell Shell { get; init; }
    /// <summary>What was asked.</summary>
    public required ZoneInputs Inputs { get; init; }
    /// <summary>Temperatures, °C.</summary>
    public required IReadOnlyList<double> TemperaturesC { get; init; }
    /// <summary>Humidity ratios, kg vapour per kg dry air.</summary>
    public required IReadOnlyList<double> HumidityRatiosKgPerKg { get; init; }
    /// <summary>Outside air of each zone, m³/h.</summary>
    public required IReadOnlyList<double> OutsideAirM3PerH { get; init; }
    /// <summary>Density of the outside air, kg/m³: turns those flows into mass.</summary>
    public required double OutsideDensityKgPerM3 { get; init; }
    /// <summary>Humidity ratio outside, kg/kg.</summary>
    public required double OutsideRatioKgPerKg { get; init; }
    /// <summary>Heat the living space needs, W.</summary>
    public required double HeaterW { get; init; }

    /// <summary>Vapour pressure in a zone, Pa.</summary>
    /// <param name="zone">Index of the zone.</param>
    public double VapourPa(int zone) => MoistAir.VapourPressurePa(HumidityRatiosKgPerKg[zone], Inputs.AirPressurePa);

    /// <summary>Temperature of a place, °C, with loss films or with those for mould.</summary>
    /// <param name="place">The place.</param>
    /// <param name="forMould">True for the films for mould.</param>
    public double PlaceC(ColdPlace place, bool forMould = false)
    {
        double outer = place.OtherZone >= 0 ? TemperaturesC[place.OtherZone] : Inputs.OutsideC - place.SkyShareRatio * Inputs.SkyBelowAirK;
        return outer + (forMould ? place.MouldShareFraction : place.InsideShareFraction) * (TemperaturesC[place.Zone] - outer);
    }

    /// <summary>Water settling at a place, kg/s, by the saturation pair of ISO 13788 (ice below zero).</summary>
    /// <param name="place">The place.</param>
    public double SettlingKgPerS(ColdPlace place) => place.TransferKgPerS * Math.Max(0, HumidityRatiosKgPerKg[place.Zone]
        - MoistAir.HumidityRatioUncheckedKgPerKg(SaturationPressure.PairUncheckedPa(PlaceC(place)), Inputs.AirPressurePa));
}
