using Thermal.Envelope;

namespace Thermal.Trips.Heat;

/// <summary>A vehicle as chains of cells between its rooms and the outside: found once, stepped through time by <see cref="HeatStepper"/>. Immutable.</summary>
/// <remarks>
/// Every area with a face of its own is a <see cref="Part"/>: bare lining, lining behind each thing that stands against it, door leaf,
/// glass, frame. Each is one chain of cells with capacity and conduction. Ribs, bolts and edges are ties without mass, beside the chains.
/// Each room has air, a radiant node that all its faces see, and furnishings.
/// </remarks>
internal sealed class Body
{
    /// <summary>Finds it.</summary>
    /// <param name="vehicle">A vehicle whose described ribs, bolts and edges are solved.</param>
    /// <param name="films">How faces exchange heat with rooms and outside.</param>
    /// <param name="airPressurePa">Air pressure at the start, Pa.</param>
    internal static Body Of(Vehicle vehicle, FilmRule films, double airPressurePa) => throw new NotImplementedException();

    /// <summary>The vehicle.</summary>
    internal required Vehicle Vehicle { get; init; }
    /// <summary>Every area with a face of its own.</summary>
    internal required Part[] Parts { get; init; }
    /// <summary>Ribs, bolts and edges of openings.</summary>
    internal required Tie[] Ties { get; init; }
}

/// <summary>How faces exchange heat.</summary>
internal enum FilmRule
{
    /// <summary>One lumped resistance inside and outside as in the steady answers, no sky: for the proof against them.</summary>
    Lumped,
    /// <summary>Convection to the air and radiation to the other faces inside; convection by wind, longwave to sky and ground outside.</summary>
    Separate,
}
