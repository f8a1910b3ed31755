using Thermal.Air;
using Thermal.Climates;

namespace Thermal.Files;

/// <summary>One month of a place file: its cells in the file's units, checked against each other, blanks estimated and marked.</summary>
/// <param name="line">Line, counted from 1.</param>
/// <param name="month">Month, 1 to 12.</param>
/// <param name="problems">Where problems go.</param>
internal sealed class PlaceRow(int line, int month, ProblemList problems)
{
    private const string Mean = "mean_c", Min = "min_c", Max = "max_c", Humidity = "relative_humidity_percent", Vapour = "vapour_pressure_pa",
        Wind = "wind_m_s", Global = "global_kwh_m2_day", Spread = "day_mean_sd_k";

    // MonthNormals.HighestGlobalIrradianceWPerM2 in the file's unit: 1 kWh a day is 1000/24 W on average.
    private const double HighestGlobalKwhPerM2Day = 10;

    // Limits chosen by us: the true mean lay between 0.88 and 1.30 times humidity × saturation in 72 station-months.
    private const double LeastVapourRatio = 0.5, MostVapourRatio = 2;

    /// <summary>The columns beside the month, with what they may hold.</summary>
    internal static IReadOnlyDictionary<string, NumberRange> Columns { get; } = new Dictionary<string, NumberRange>
    {
        [Mean] = Degrees(),
        [Min] = Degrees(),
        [Max] = Degrees(),
        [Humidity] = new(100 * MonthNormals.LowestRelativeHumidityFraction, 100, "%", "76", "write 76 for three quarters, not 0.76"),
        [Vapour] = new(MonthNormals.LowestVapourPressurePa, MonthNormals.HighestVapourPressurePa, "Pa", "340", "one hectopascal is 100 Pa"),
        [Wind] = new(0, MonthNormals.HighestWindMPerS, "m/s", "2.4", "give metres a second"),
        [Global] = new(0, HighestGlobalKwhPerM2Day, "kWh/m² a day", "1.63", "one megajoule is 0.278 kWh"),
        [Spread] = new(0, MonthNormals.HighestDayMeanSdK, "K", "4.9", "give the standard deviation of the day means"),
    };

    private readonly Dictionary<string, (double Value, int Column)> given = [];
    private bool isRight = true;

    /// <summary>The month; null where a problem stands in the way.</summary>
    internal MonthNormals? Read(string[] columns, (string Text, int Column)[] cells)
    {
        for (int i = 0; i < columns.Length; i++)
        {
            var (text, column) = cells[i];
            if (columns[i] == PlaceTable.MonthColumn || text.Length == 0) continue;
            if (problems.Number(text, line, column, Where(columns[i]), Columns[columns[i]]) is double number)
                given[columns[i]] = (number, column);
            else
                isRight = false;
        }
        if (!isRight) return null;
        double meanC = MeanC();
        double humidityFraction = isRight ? HumidityFraction(meanC) : double.NaN;
        if (isRight) CheckVapour(meanC, humidityFraction);
        return isRight ? Normals(meanC, humidityFraction) : null;
    }

    private double MeanC()
    {
        double? mean = Value(Mean), min = Value(Min), max = Value(Max);
        double? meanC = mean ?? (min + max) / 2;
        if (meanC is null)
            Refuse(1, Mean, $"is missing and cannot be estimated; give {Mean}, or both {Min} and {Max}.");
        else if (min > meanC || max < meanC)
            Refuse(given[min > meanC ? Min : Max].Column, min > meanC ? Min : Max, $"does not go with the mean of {meanC} °C; {Min} ≤ {Mean} ≤ {Max} must hold.");
        return meanC ?? double.NaN;
    }

    private double HumidityFraction(double meanC)
    {
        if (Value(Humidity) is double percent) return percent / 100;
        if (given.TryGetValue(Vapour, out var vapour))
            Refuse(vapour.Column, Vapour, $"needs {Humidity} beside it.");
        else if (Value(Min) is not double minC)
            Refuse(1, Humidity, $"is missing and cannot be estimated; give {Humidity}, or {Min}.");
        else
        {
            double estimate = HumidityEstimate.RelativeHumidityFraction(minC, meanC);
            if (estimate >= MonthNormals.LowestRelativeHumidityFraction) return estimate;
            Refuse(given[Min].Column, Min, $"lies so far below the mean of {meanC} °C that no humidity can be estimated; check both.");
        }
        return double.NaN;
    }

    private void CheckVapour(double meanC, double humidityFraction)
    {
        if (!given.TryGetValue(Vapour, out var vapour)) return;
        double expectedPa = humidityFraction * SaturationPressure.OverWaterPa(meanC);
        if (vapour.Value < LeastVapourRatio * expectedPa || vapour.Value > MostVapourRatio * expectedPa)
            Refuse(vapour.Column, Vapour, $"{vapour.Value} Pa does not go with {Mean} and {Humidity}, which make about {expectedPa:F0} Pa; check the three.");
    }

    private MonthNormals Normals(double meanC, double humidityFraction) => new()
    {
        MeanC = meanC,
        MeanIsEstimated = !given.ContainsKey(Mean),
        MinC = Value(Min),
        MaxC = Value(Max),
        RelativeHumidityFraction = humidityFraction,
        HumidityIsEstimated = !given.ContainsKey(Humidity),
        MeasuredVapourPressurePa = Value(Vapour),
        WindMPerS = Value(Wind),
        GlobalIrradianceWPerM2 = Value(Global) * 1000 / 24,
        DayMeanSdK = Value(Spread),
    };

    private double? Value(string column) => given.TryGetValue(column, out var cell) ? cell.Value : null;

    private string Where(string column) => $"month {month} / {column}";

    private void Refuse(int column, string name, FormattableString what)
    {
        isRight = false;
        problems.Add(line, column, Where(name), what);
    }

    private static NumberRange Degrees() => new(MonthNormals.LowestC, MonthNormals.HighestC, "°C", "-4.5", "give degrees Celsius");
}
