namespace Thermal.Moisture;

/// <summary>What one month does to a build-up. Immutable.</summary>
public sealed record MonthConditions
{
    /// <param name="insideC">Mean inside temperature, °C, -60 to 60.</param>
    /// <param name="outsideC">Mean outside temperature, °C, -60 to 60.</param>
    /// <param name="insidePa">Mean vapour pressure inside, Pa, 0 to 20 000; empty days mixed in by the caller.</param>
    /// <param name="outsidePa">Mean vapour pressure outside, Pa, 0 to 20 000.</param>
    /// <param name="lengthS">Length, s, 1 day to 31 days (86 400 to 2 678 400).</param>
    /// <param name="permeabilityKgPerMSPa">Permeability of still air δ0 at the build-up's mean temperature and place, kg/(m·s·Pa), 1e-10 to 1e-9.</param>
    public MonthConditions(double insideC, double outsideC, double insidePa, double outsidePa, double lengthS, double permeabilityKgPerMSPa)
    {
        StackChecks.Air(insideC, outsideC, insidePa, outsidePa, permeabilityKgPerMSPa);
        InsideC = insideC;
        OutsideC = outsideC;
        InsidePa = insidePa;
        OutsidePa = outsidePa;
        LengthS = Guard.InRange(lengthS, 86_400, 31 * 86_400, "s");
        PermeabilityKgPerMSPa = permeabilityKgPerMSPa;
    }

    /// <summary>Mean inside temperature, °C.</summary>
    public double InsideC { get; }

    /// <summary>Mean outside temperature, °C.</summary>
    public double OutsideC { get; }

    /// <summary>Mean vapour pressure inside, Pa.</summary>
    public double InsidePa { get; }

    /// <summary>Mean vapour pressure outside, Pa.</summary>
    public double OutsidePa { get; }

    /// <summary>Length of the month, s.</summary>
    public double LengthS { get; }

    /// <summary>Permeability of still air δ0, kg/(m·s·Pa).</summary>
    public double PermeabilityKgPerMSPa { get; }

    /// <summary>
    /// Water that air carries to each face (<see cref="AirBehindLining"/>), kg/(m²·s), -0.001 to 0.001; below zero: what it can carry away
    /// while there is any. One entry a face: inside air, faces, outside air;
    /// empty for none. Both ends, and faces with no s_d between them and the air, must be zero: nothing can be held there.
    /// </summary>
    public IReadOnlyList<double> SourcesAtFacesKgPerM2S { get; init; } = [];
}
