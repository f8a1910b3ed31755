using Thermal.Assessments;
using Thermal.Materials;

namespace Thermal.Words.Sentences;

/// <summary>Fuel, current, water and time as people speak of them, from the units in which results hold them.</summary>
public static class Amounts
{
    private const double CPerAh = 3600, JPerKWh = 3.6e6, LitresPerM3 = 1000, SecondsPerHour = 3600, SecondsPerDay = 86_400;

    /// <summary>How the fuel is measured out: volume for liquids, mass for gas, energy for electricity.</summary>
    public static Shown ShownOf(Fuel fuel) => fuel switch
    {
        Fuel.Propane or Fuel.Butane => Shown.FuelMass,
        Fuel.Electricity => Shown.Energy,
        Fuel.Diesel or Fuel.Petrol or Fuel.Ethanol => Shown.LiquidVolume,
        _ => throw new ArgumentOutOfRangeException(nameof(fuel), fuel, "Not a fuel."),
    };

    /// <summary>An amount in the unit that <see cref="Figures"/> takes for <see cref="ShownOf"/>.</summary>
    /// <param name="fuel">What is burnt.</param>
    /// <param name="amount">Litres of liquid fuel, kg of gas, kWh of electricity.</param>
    public static double Si(Fuel fuel, double amount) => ShownOf(fuel) switch
    {
        Shown.LiquidVolume => amount / LitresPerM3,
        Shown.Energy => amount * JPerKWh,
        _ => amount,
    };

    /// <summary>An amount of fuel with its unit, such as "2.2 L".</summary>
    public static string FuelAmount(this Figures figures, Fuel fuel, double amount) => figures.Write(ShownOf(fuel), Si(fuel, amount));

    /// <summary>A span of fuel with its unit once.</summary>
    public static string FuelAmount(this Figures figures, Fuel fuel, Between amount) =>
        figures.Range(ShownOf(fuel), Si(fuel, amount.Low), Si(fuel, amount.High));

    /// <summary>A charge, from Ah.</summary>
    public static string Ah(this Figures figures, double chargeAh) => figures.Write(Shown.Charge, chargeAh * CPerAh);

    /// <summary>A span of charge, from Ah.</summary>
    public static string Ah(this Figures figures, Between chargeAh) =>
        figures.Range(Shown.Charge, chargeAh.Low * CPerAh, chargeAh.High * CPerAh);

    /// <summary>An energy, from kWh.</summary>
    public static string KWh(this Figures figures, double energyKWh) => figures.Write(Shown.Energy, energyKWh * JPerKWh);

    /// <summary>Water, from g.</summary>
    public static string Grams(this Figures figures, double waterG) => figures.Write(Shown.WaterMass, waterG / 1000);

    /// <summary>Water per time, from g/h.</summary>
    public static string GramsPerHour(this Figures figures, double waterGPerH) => figures.Write(Shown.WaterFlow, waterGPerH / 1000 / SecondsPerHour);

    /// <summary>Water on an area, from g/m².</summary>
    public static string GramsPerArea(this Figures figures, double waterGPerM2) => figures.Write(Shown.WaterPerArea, waterGPerM2 / 1000);

    /// <summary>Air per time, from m³/h.</summary>
    public static string AirPerHour(this Figures figures, double airM3PerH) => figures.Write(Shown.AirFlow, airM3PerH / SecondsPerHour);

    /// <summary>A mean irradiance over day and night as what falls in a day, without its unit, from W/m².</summary>
    public static string SunNumber(this Figures figures, double meanWPerM2) => figures.Number(Shown.SunPerArea, meanWPerM2 * SecondsPerDay);

    /// <summary>A mean irradiance over day and night as what falls in a day, from W/m².</summary>
    public static string SunPerDay(this Figures figures, double meanWPerM2) => figures.Write(Shown.SunPerArea, meanWPerM2 * SecondsPerDay) + " a day";

    /// <summary>The same unrounded, for an axis.</summary>
    public static double SunOnAxis(this Figures figures, double meanWPerM2) => figures.Convert(Shown.SunPerArea, meanWPerM2 * SecondsPerDay);

    /// <summary>Hours, from h.</summary>
    public static string Hours(this Figures figures, double hours) => figures.Write(Shown.Hours, hours * SecondsPerHour);

    /// <summary>Carbon dioxide, from ppm.</summary>
    public static string Ppm(this Figures figures, double ppm) => figures.Write(Shown.Gas, ppm / 1e6);
}
