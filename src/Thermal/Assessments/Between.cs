namespace Thermal.Assessments;

/// <summary>A headline figure with its all-low and all-high runs. The unit stands in the name of the property that holds it.</summary>
/// <param name="Low">Result of the run that loses least.</param>
/// <param name="Value">Result with the usual values.</param>
/// <param name="High">Result of the run that loses most.</param>
public readonly record struct Between(double Low, double Value, double High);
