namespace Thermal.Assessments;

/// <summary>A headline figure with its all-low and all-high runs. The unit stands in the name of the property that holds it.</summary>
/// <param name="Low">Lowest of the three runs.</param>
/// <param name="Value">Result with the usual values.</param>
/// <param name="High">Highest of the three runs.</param>
public readonly record struct Between(double Low, double Value, double High)
{
    /// <summary>A figure that need not grow from run to run (wind warms a skin that the sky cools; a heater that cycles draws more current in mild weather): the span holds all three.</summary>
    /// <param name="least">Run that loses least.</param>
    /// <param name="usual">Usual run.</param>
    /// <param name="most">Run that loses most.</param>
    public static Between Spanning(double least, double usual, double most) =>
        new(Math.Min(usual, Math.Min(least, most)), usual, Math.Max(usual, Math.Max(least, most)));
}
