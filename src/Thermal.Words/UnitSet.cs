namespace Thermal.Words;

/// <summary>Which units a person wants to read.</summary>
public enum UnitSet
{
    /// <summary>Millimetres, degrees Celsius, watts, litres.</summary>
    Metric,
    /// <summary>Inches, degrees Fahrenheit, Btu per hour, US gallons; grams of water and electricity stay as they are.</summary>
    Us,
}
