namespace Thermal.Materials;

/// <summary>What is burnt, or electricity.</summary>
public enum Fuel
{
    /// <summary>Road diesel.</summary>
    Diesel,
    /// <summary>Petrol.</summary>
    Petrol,
    /// <summary>Propane.</summary>
    Propane,
    /// <summary>Butane.</summary>
    Butane,
    /// <summary>Ethanol of a spirit stove.</summary>
    Ethanol,
    /// <summary>230 V or 12 V.</summary>
    Electricity,
}
