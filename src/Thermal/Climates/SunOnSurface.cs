namespace Thermal.Climates;

/// <summary>Sun on a tilted surface, part by part, W/m².</summary>
/// <param name="BeamWPerM2">Straight from the sun and, by Hay and Davies, from the sky close round it.</param>
/// <param name="SkyWPerM2">From the rest of the sky.</param>
/// <param name="GroundWPerM2">Thrown back by the ground and by what stands before the sky.</param>
public readonly record struct SunOnSurface(double BeamWPerM2, double SkyWPerM2, double GroundWPerM2)
{
    /// <summary>All together, W/m².</summary>
    public double TotalWPerM2 => BeamWPerM2 + SkyWPerM2 + GroundWPerM2;
}

/// <summary>How sky light is spread over the sky.</summary>
public enum SkyModel
{
    /// <summary>Evenly.</summary>
    Isotropic,
    /// <summary>Partly round the sun, by Hay and Davies.</summary>
    HayDavies,
}
