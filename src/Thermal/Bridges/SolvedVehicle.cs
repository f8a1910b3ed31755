using Thermal.Envelope;

namespace Thermal.Bridges;

/// <summary>The one step from a described vehicle to an evaluated one.</summary>
public static class SolvedVehicle
{
    /// <summary>The vehicle with ψ, χ and coldest points of every described detail.</summary>
    /// <param name="vehicle">The vehicle; given ψ and χ stay as they are.</param>
    /// <param name="windMPerS">Wind of the loss films outside, m/s, 0 to 40.</param>
    /// <param name="cache">Sections solved before.</param>
    /// <returns>The same record where it has no described detail.</returns>
    /// <exception cref="ArgumentException">A detail does not fit its panel.</exception>
    public static Vehicle Of(Vehicle vehicle, double windMPerS, BridgeCache cache) => throw new NotImplementedException();
}
