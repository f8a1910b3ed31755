namespace Thermal.Climates;

/// <summary>How a winter design temperature came about; values of different kinds are not to be compared to the degree.</summary>
public enum DesignKind
{
    /// <summary>Printed for this very station in a table of design conditions.</summary>
    Published,
    /// <summary>Computed from hourly or daily readings of this very station.</summary>
    Computed,
    /// <summary>Estimated from monthly normals; ±1 K with the place's own spread of day means, else ±3 K.</summary>
    Estimated,
    /// <summary>Given by the person who asks.</summary>
    Stated,
}
