using Thermal.Words.Units;

namespace Thermal.Words;

/// <summary>Unit and rounding of one kind of figure in one set of units.</summary>
/// <param name="Dimension">What is measured.</param>
/// <param name="Unit">The unit it is shown in.</param>
/// <param name="SignificantDigits">Digits that mean something: results of this trade are good to two or three.</param>
/// <param name="MostDecimals">Never more than this behind the point.</param>
/// <param name="DropsZeros">True where "40" reads better than "40.0".</param>
internal sealed record FigureStyle(Dimension Dimension, Unit Unit, int SignificantDigits, int MostDecimals, bool DropsZeros)
{
    /// <summary>The style of one kind of figure.</summary>
    internal static FigureStyle Of(Shown shown, UnitSet set) => Of(shown, set == UnitSet.Us);

    private static FigureStyle Of(Shown shown, bool us) => shown switch
    {
        Shown.Thickness => us ? Style(Dimensions.Length, "in", 3, 2, true) : Style(Dimensions.Length, "mm", 3, 1, true),
        Shown.Length => Style(Dimensions.Length, us ? "ft" : "m", 3, 2),
        Shown.Altitude => Style(Dimensions.Length, us ? "ft" : "m", 4, 0),
        Shown.DiffusionThickness => Style(Dimensions.Length, "m", 2, 2, true),
        Shown.Area => us ? Style(Dimensions.Area, "ft²", 3, 1) : Style(Dimensions.Area, "m²", 3, 2),
        Shown.VentArea => Style(Dimensions.Area, us ? "in²" : "cm²", 3, 1, true),
        Shown.AirVolume => us ? Style(Dimensions.Volume, "ft³", 3, 0) : Style(Dimensions.Volume, "m³", 3, 1),
        Shown.LiquidVolume => us ? Style(Dimensions.Volume, "gal", 2, 2) : Style(Dimensions.Volume, "L", 2, 1),
        Shown.Temperature => us ? Style(Dimensions.Temperature, "°F", 3, 0) : Style(Dimensions.Temperature, "°C", 3, 1),
        Shown.Difference => Style(Dimensions.Difference, us ? "°F" : "K", 3, 1),
        Shown.Power => Style(Dimensions.Power, us ? "Btu/h" : "W", 3, 0),
        Shown.HeaterPower => us ? Style(Dimensions.Power, "Btu/h", 3, 0) : Style(Dimensions.Power, "kW", 2, 2),
        Shown.ElectricPower => Style(Dimensions.Power, "W", 3, 0),
        Shown.Energy => Style(Dimensions.Energy, "kWh", 3, 2),
        Shown.Charge => Style(Dimensions.Charge, "Ah", 2, 1),
        Shown.Transmittance => us ? Style(Dimensions.Transmittance, "Btu/(h·ft²·°F)", 3, 3) : Style(Dimensions.Transmittance, "W/(m²·K)", 3, 2),
        Shown.Resistance => us ? Style(Dimensions.Resistance, "h·ft²·°F/Btu", 3, 1) : Style(Dimensions.Resistance, "m²·K/W", 3, 3),
        Shown.Conductivity => us ? Style(Dimensions.Conductivity, "Btu/(h·ft·°F)", 3, 4) : Style(Dimensions.Conductivity, "W/(m·K)", 3, 4, true),
        Shown.LinearTransmittance => us ? Style(Dimensions.LinearTransmittance, "Btu/(h·ft·°F)", 3, 3) : Style(Dimensions.LinearTransmittance, "W/(m·K)", 3, 3),
        Shown.LossPerKelvin => Style(Dimensions.PointTransmittance, "W/K", 3, 2),
        Shown.Mass => Style(Dimensions.Mass, us ? "lb" : "kg", 3, 1),
        Shown.FuelMass => Style(Dimensions.Mass, us ? "lb" : "kg", 2, 2),
        Shown.WaterMass => Style(Dimensions.Mass, "g", 2, 0),
        Shown.WaterPerArea => Style(Dimensions.MassPerArea, "g/m²", 2, 1),
        Shown.WaterFlow => Style(Dimensions.MassFlow, "g/h", 2, 1),
        Shown.Density => Style(Dimensions.Density, us ? "lb/ft³" : "kg/m³", 3, 1, true),
        Shown.SpecificHeat => us ? Style(Dimensions.SpecificHeat, "Btu/(lb·°F)", 3, 2) : Style(Dimensions.SpecificHeat, "J/(kg·K)", 4, 0),
        Shown.HeatCapacity => Style(Dimensions.HeatCapacity, "kJ/K", 3, 1),
        Shown.VapourPressure => Style(Dimensions.Pressure, "Pa", 4, 0),
        Shown.AirPressure => us ? Style(Dimensions.Pressure, "inHg", 4, 2) : Style(Dimensions.Pressure, "hPa", 4, 0),
        Shown.AirFlow => Style(Dimensions.VolumeFlow, us ? "cfm" : "m³/h", 2, 1),
        Shown.WindSpeed => Style(Dimensions.Speed, us ? "mph" : "m/s", 2, 1),
        Shown.DrivingSpeed => Style(Dimensions.Speed, us ? "mph" : "km/h", 3, 0),
        Shown.Hours => Style(Dimensions.Duration, "h", 2, 1),
        Shown.Minutes => Style(Dimensions.Duration, "min", 2, 0),
        Shown.AirChange => Style(Dimensions.AirChange, "1/h", 2, 2),
        Shown.Percent => Style(Dimensions.Fraction, "%", 3, 0),
        Shown.Gas => Style(Dimensions.GasFraction, "ppm", 2, 0),
        Shown.Angle => Style(Dimensions.Angle, "°", 3, 0),
        Shown.Factor => Style(Dimensions.Number, "", 3, 3),
        Shown.PointTransmittance => Style(Dimensions.PointTransmittance, "W/K", 3, 4),
        Shown.FinePower => Style(Dimensions.Power, us ? "Btu/h" : "W", 3, 2),
        Shown.SunPerArea => Style(Dimensions.SunPerArea, "kWh/m²", 2, 2),
        Shown.FinePercent => Style(Dimensions.Fraction, "%", 2, 2),
        _ => throw new ArgumentOutOfRangeException(nameof(shown), shown, "No style for this kind of figure."),
    };

    private static FigureStyle Style(Dimension dimension, string unit, int digits, int decimals, bool dropsZeros = false) =>
        new(dimension, dimension.Find(unit)!, digits, decimals, dropsZeros);
}
