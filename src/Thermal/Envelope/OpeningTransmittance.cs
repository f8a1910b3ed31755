namespace Thermal.Envelope;

/// <summary>What one opening loses with one state of its covers, and how warm its inner face stays.</summary>
/// <param name="BodyUWPerM2K">U of glazing or leaf, W/(m²·K).</param>
/// <param name="FrameUWPerM2K">U of the frame, W/(m²·K).</param>
/// <param name="MeanUWPerM2K">Mean over the opening, edge included, W/(m²·K).</param>
/// <param name="BodyInsideShareFraction">Inner face of glass or leaf as a share of the temperature difference, fraction.</param>
/// <param name="FrameInsideShareFraction">Inner face of the frame, fraction.</param>
public sealed record OpeningTransmittance(double BodyUWPerM2K, double FrameUWPerM2K, double MeanUWPerM2K, double BodyInsideShareFraction, double FrameInsideShareFraction)
{
    /// <summary>Finds it.</summary>
    /// <param name="opening">The opening.</param>
    /// <param name="covering">The cover in place; null for none.</param>
    /// <param name="tiltDeg">Tilt of the panel, degrees.</param>
    /// <param name="insideFilmM2KPerW">Inside film, m²·K/W.</param>
    /// <param name="outsideFilmM2KPerW">Outside film, m²·K/W.</param>
    /// <remarks>
    /// A cover adds its ΔR in series (EN 13125 / ISO 10077-1 form). Behind an inside cover the glass is that much colder.
    /// The frame's loss is as given; for its inner face the given U is taken to hold with the usual inside film of 0.13 m²·K/W, so that
    /// another film or a cover moves that face and never beyond the outside. Source: EN-673; EN-13125.
    /// </remarks>
    public static OpeningTransmittance Of(Opening opening, Covering? covering, double tiltDeg, double insideFilmM2KPerW, double outsideFilmM2KPerW) =>
        AroundCore(opening, covering, CoreM2KPerW(opening, tiltDeg, insideFilmM2KPerW, outsideFilmM2KPerW), insideFilmM2KPerW, outsideFilmM2KPerW);

    /// <summary>Resistance of glazing or leaf without films, m²·K/W: the same for every cover.</summary>
    internal static double CoreM2KPerW(Opening opening, double tiltDeg, double insideFilmM2KPerW, double outsideFilmM2KPerW) => opening.Glazing is { } glazing
        ? GlazingTransmittance.CoreM2KPerW(glazing, tiltDeg)
        : 1 / Transmittance.Of(opening.Leaf!, SurfaceResistance.DirectionOf(tiltDeg), insideFilmM2KPerW, outsideFilmM2KPerW).UWPerM2K - insideFilmM2KPerW - outsideFilmM2KPerW;

    /// <summary>Finds it with a core that is known.</summary>
    internal static OpeningTransmittance AroundCore(Opening opening, Covering? covering, double coreM2KPerW, double insideFilmM2KPerW, double outsideFilmM2KPerW)
    {
        double added = covering?.AddedResistanceM2KPerW.Value ?? 0;
        double addedInside = covering is { Side: CoveringSide.Inside } ? added : 0;
        double body = 1 / (insideFilmM2KPerW + coreM2KPerW + added + outsideFilmM2KPerW);
        double frame = 1 / (1 / opening.FrameUWPerM2K + added);
        double frameTotal = 1 / opening.FrameUWPerM2K - SurfaceResistance.InsideM2KPerW(FlowDirection.Horizontal) + insideFilmM2KPerW + added;
        double edge = opening.EdgeLossWPerK / opening.AreaM2;
        return new(body, frame, (1 - opening.FrameFraction) * body + opening.FrameFraction * frame + edge,
            1 - body * (insideFilmM2KPerW + addedInside), 1 - (insideFilmM2KPerW + addedInside) / frameTotal);
    }
}
