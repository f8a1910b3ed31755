namespace Thermal.Assessments;

/// <summary>One inner surface by the means of the months lived in.</summary>
/// <param name="Name">Where.</param>
/// <param name="Panel">The panel.</param>
/// <param name="WorstMonth">Month with the highest surface humidity, 1 to 12.</param>
/// <param name="SurfaceHumidityFraction">Surface humidity in that month, fraction; mould can grow above 0.8, above 1 it is wet.</param>
/// <param name="TemperatureFactor">f_Rsi with the films for mould, fraction.</param>
/// <param name="TemperatureC">Surface temperature in that month, °C.</param>
public sealed record MouldAnswer(string Name, string Panel, int WorstMonth, double SurfaceHumidityFraction, double TemperatureFactor, double TemperatureC)
{
    /// <summary>True above 80 %.</summary>
    public bool CanGrow => SurfaceHumidityFraction > Moisture.MouldRisk.CriticalHumidityFraction;
}
