using Thermal.Climates;

namespace Thermal.Files.Weathers;

/// <summary>What a column of a weather file may hold, in the units of <see cref="Weather"/> once read.</summary>
internal enum Quantity
{
    Air,
    HumidityPercent,
    Vapour,
    DewPoint,
    Wind,
    Global,
    BeamNormal,
    Diffuse,
    Longwave,
    Sky,
    Pressure,
}

/// <summary>A known column: its name with its unit, what it holds, and the straight line to the unit of the physics.</summary>
/// <param name="Name">Name in the file.</param>
/// <param name="Quantity">What it holds.</param>
/// <param name="Range">What a cell may be, in the file's unit.</param>
/// <param name="Factor">Physics' unit per file's unit.</param>
/// <param name="Shift">Added to the cell before the factor.</param>
internal sealed record WeatherColumn(string Name, Quantity Quantity, NumberRange Range, double Factor = 1, double Shift = 0)
{
    internal const int QuantityCount = (int)Quantity.Pressure + 1;

    // Limits of sun, wind and pressure chosen by us: above the strongest light between clouds, the strongest storm on a mountain, the air at 6000 m.
    private static readonly NumberRange Degrees = new(MonthNormals.LowestC, MonthNormals.HighestC, "°C", "-4.5", "give degrees Celsius, and leave the cell empty where nothing is known"),
        Percent = new(0.5, 105, "%", "76", "write 76 for three quarters, and leave the cell empty where nothing is known"),
        Speed = new(0, 75, "m/s", "2.4", "give metres a second, and leave the cell empty where nothing is known"),
        Light = new(-20, 2000, "W/m²", "350", "give watts a square metre, and leave the cell empty where nothing is known");

    /// <summary>Columns of our own layout beside the time.</summary>
    internal static IReadOnlyList<WeatherColumn> Own { get; } =
    [
        new("air_c", Quantity.Air, Degrees),
        new("air_f", Quantity.Air, new(-76, 122, "°F", "23.9", "give degrees Fahrenheit, and leave the cell empty where nothing is known"), 5 / 9.0, -32),
        new("relative_humidity_percent", Quantity.HumidityPercent, Percent),
        new("vapour_pressure_pa", Quantity.Vapour, new(1, 10_000, "Pa", "340", "one hectopascal is 100 Pa; leave the cell empty where nothing is known")),
        new("dew_point_c", Quantity.DewPoint, Degrees),
        new("wind_m_s", Quantity.Wind, Speed),
        new("global_w_m2", Quantity.Global, Light),
        new("beam_normal_w_m2", Quantity.BeamNormal, Light),
        new("diffuse_w_m2", Quantity.Diffuse, Light),
        new("longwave_w_m2", Quantity.Longwave, new(50, 700, "W/m²", "290", "give what comes down from the sky, not the balance with what goes up, and leave the cell empty where nothing is known")),
        new("sky_c", Quantity.Sky, new(-110, MonthNormals.HighestC, "°C", "-15", "give degrees Celsius, and leave the cell empty where nothing is known")),
        new("pressure_pa", Quantity.Pressure, new(40_000, 110_000, "Pa", "95000", "one hectopascal is 100 Pa; leave the cell empty where nothing is known")),
    ];

    /// <summary>Columns of the TMY3 layout that are read.</summary>
    internal static IReadOnlyList<WeatherColumn> Tmy3 { get; } =
    [
        new("Dry-bulb (C)", Quantity.Air, Degrees),
        new("RHum (%)", Quantity.HumidityPercent, Percent),
        new("Wspd (m/s)", Quantity.Wind, Speed),
        new("GHI (W/m^2)", Quantity.Global, Light),
        new("DNI (W/m^2)", Quantity.BeamNormal, Light),
        new("DHI (W/m^2)", Quantity.Diffuse, Light),
        new("Pressure (mbar)", Quantity.Pressure, new(400, 1100, "mbar", "950", "give millibars"), 100),
    ];

    /// <summary>Columns of the European service that are read.</summary>
    internal static IReadOnlyList<WeatherColumn> European { get; } =
    [
        new("T2m", Quantity.Air, Degrees),
        new("RH", Quantity.HumidityPercent, Percent),
        new("WS10m", Quantity.Wind, Speed),
        new("G(h)", Quantity.Global, Light),
        new("Gb(n)", Quantity.BeamNormal, Light),
        new("Gd(h)", Quantity.Diffuse, Light),
        new("IR(h)", Quantity.Longwave, new(50, 700, "W/m²", "290", "give watts a square metre")),
        new("SP", Quantity.Pressure, new(40_000, 110_000, "Pa", "95000", "one hectopascal is 100 Pa")),
    ];
}
