using Thermal.Materials;

namespace Thermal.Envelope.Details;

/// <summary>A described place where the build-up is bridged: its numbers in a builder's words. Its loss is found by conduction in its section.</summary>
public abstract record Detail
{
    /// <summary>The same detail with every conductivity of its own at one end of its span.</summary>
    /// <param name="extreme">Which end.</param>
    public abstract Detail WithConductivity(Extreme extreme);

    private protected static Material Moved(Material material, Extreme extreme) =>
        material with { ConductivityWPerMK = material.ConductivityWPerMK.MovedTo(extreme) };
}

/// <summary>A detail that runs along a line and is counted by its length: it has a ψ.</summary>
public abstract record LineDetail : Detail
{
    /// <inheritdoc/>
    public abstract override LineDetail WithConductivity(Extreme extreme);
}

/// <summary>A detail at a point and counted by its number: it has a χ.</summary>
public abstract record PointDetail : Detail
{
    /// <inheritdoc/>
    public abstract override PointDetail WithConductivity(Extreme extreme);
}
