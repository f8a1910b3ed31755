namespace Thermal.Trips.Books;

/// <summary>A column of hourly means of something that is known at the ends of steps: between them it is taken as straight, in the first step as at its end.</summary>
/// <param name="hours">Number of hours.</param>
internal sealed class StateColumn(int hours)
{
    private double before = double.NaN;

    /// <summary>Sums of value times seconds until an hour is closed, then means.</summary>
    internal double[] Hours { get; } = new double[hours];

    /// <summary>Takes in a step.</summary>
    internal void Take(int hour, double stepS, double value)
    {
        Hours[hour] += stepS * (double.IsNaN(before) ? value : (before + value) / 2);
        before = value;
    }
}
