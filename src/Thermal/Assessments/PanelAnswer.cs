using Thermal.Envelope;

namespace Thermal.Assessments;

/// <summary>One panel: its transmittance and how it was found.</summary>
public sealed record PanelAnswer
{
    /// <summary>The panel.</summary>
    public required Surface Surface { get; init; }
    /// <summary>Transmittance between ribs with its working.</summary>
    public required StackTransmittance Transmittance { get; init; }
    /// <summary>U with ribs and bolts spread over the opaque area, W/(m²·K).</summary>
    public required double UWithRibsWPerM2K { get; init; }
    /// <summary>Faces on the cold night, inside to outside, °C: n layers have n + 1.</summary>
    public required IReadOnlyList<double> TemperaturesAtFacesC { get; init; }
    /// <summary>Heat lost on the cold night by the panel with ribs and openings, W; for a partition the flow through it.</summary>
    public required double LossW { get; init; }
    /// <summary>Coldest inner surface of the panel on the cold night, glass and ribs included, °C.</summary>
    public required double ColdestC { get; init; }

    /// <summary>Transmittance between ribs with the loss films.</summary>
    internal static StackTransmittance Between(Surface surface, double windMPerS) =>
        Envelope.Transmittance.Of(surface.Stack, surface.Direction, SurfaceResistance.InsideM2KPerW(surface.Direction), surface.OutsideFilmM2KPerW(windMPerS));

    /// <summary>The same with ribs and bolts spread over the opaque area, W/(m²·K).</summary>
    internal static double WithRibsWPerM2K(Surface surface, StackTransmittance between)
    {
        double bridgesWPerK = surface.Ribs.Sum(rib => rib.LossWPerK) + surface.Bolts.Sum(bolt => bolt.LossWPerK);
        return surface.OpaqueAreaM2 > 1e-6 ? between.UWPerM2K + bridgesWPerK / surface.OpaqueAreaM2 : between.UWPerM2K;
    }
}
