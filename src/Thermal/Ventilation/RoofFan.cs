namespace Thermal.Ventilation;

/// <summary>A fan in the roof that draws air out. Immutable.</summary>
public sealed record RoofFan
{
    /// <summary>Air it draws out at the speed used, m³/h, 5 to 2000.</summary>
    public required double FlowM3PerH { get; init => field = Guard.InRange(value, 5, 2000, "m³/h", nameof(FlowM3PerH)); }
    /// <summary>Its current at that speed, A at 12.8 V, 0 to 20.</summary>
    public required double CurrentA { get; init => field = Guard.InRange(value, 0, 20, "A", nameof(CurrentA)); }
}
