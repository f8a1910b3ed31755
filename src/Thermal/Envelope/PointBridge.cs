using Thermal.Envelope.Details;
using Thermal.Materials;

namespace Thermal.Envelope;

/// <summary>Bolts, screws or other points: described by their <see cref="Detail"/>, or with a point thermal transmittance given from elsewhere.</summary>
public sealed record PointBridge
{
    /// <summary>What the builder calls it.</summary>
    public required string Name { get; init; }
    /// <summary>Its description; null where χ is given.</summary>
    public PointDetail? Detail { get; init; }
    /// <summary>Point thermal transmittance χ, W/K, -1 to 5; null for a described one that was not solved yet.</summary>
    public Bounded? ChiWPerK { get; init => field = value is { } chi ? Guard.InRange(chi, -1, 5, "W/K", nameof(ChiWPerK)) : null; }
    /// <summary>How many there are, 0 to 10 000.</summary>
    public required int Count { get; init => field = (int)Guard.InRange(value, 0, 10_000, "points", nameof(Count)); }
    /// <summary>Temperature factor of the coldest inner point with the loss films, fraction, 0 to 1; null where not known.</summary>
    public double? ColdestFactor { get; init => field = value is { } factor ? Guard.InRange(factor, 0, 1, "(factor)", nameof(ColdestFactor)) : null; }
    /// <summary>The same with the films for mould; null where not known.</summary>
    public double? MouldFactor { get; init => field = value is { } factor ? Guard.InRange(factor, 0, 1, "(factor)", nameof(MouldFactor)) : null; }
    /// <summary>The build-up a given value was found for; null where the file does not say or the point is described.</summary>
    public string? GivenFor { get; init; }

    /// <summary>Heat per kelvin χ·n, W/K.</summary>
    /// <exception cref="InvalidOperationException">A described point that was not solved.</exception>
    public double LossWPerK => (ChiWPerK ?? throw new InvalidOperationException($"{Name} is described but not solved: evaluate the vehicle first.")).Value * Count;
}
