namespace Thermal.Materials;

/// <summary>A figure with the span it is known to lie in, and where it comes from. The unit stands in the name of the property that holds it.</summary>
/// <param name="Low">Lowest plausible value.</param>
/// <param name="Value">The value to use.</param>
/// <param name="High">Highest plausible value; Low ≤ Value ≤ High.</param>
/// <param name="Source">Key of <see cref="Sources"/>.</param>
/// <param name="Place">Table, row or clause in the source; "from memory" where nobody could look it up.</param>
public sealed record Bounded(double Low, double Value, double High, string Source, string Place)
{
    /// <summary>A figure a person states in a file, without a span.</summary>
    public static Bounded Stated(double value) => new(value, value, value, "OURS", "stated in the vehicle file");

    /// <summary>The lowest, the usual or the highest value.</summary>
    public double At(Extreme extreme) => extreme switch { Extreme.Low => Low, Extreme.High => High, _ => Value };

    /// <summary>This figure with its value and span moved to one end, so that a whole vehicle can be run all low or all high.</summary>
    public Bounded MovedTo(Extreme extreme) => extreme == Extreme.Usual ? this : this with { Low = At(extreme), Value = At(extreme), High = At(extreme) };
}

/// <summary>Which end of a span is meant.</summary>
public enum Extreme
{
    /// <summary>The lowest plausible value.</summary>
    Low,
    /// <summary>The value to use.</summary>
    Usual,
    /// <summary>The highest plausible value.</summary>
    High,
}
