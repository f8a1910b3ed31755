using Thermal.Envelope.Details;

namespace Thermal.Bridges;

/// <summary>The section of a detail in its build-up: y runs from outside (0) inwards, x along the panel.</summary>
public static class DetailSection
{
    /// <summary>Name of the environment inside.</summary>
    public const string Room = "room";
    /// <summary>Name of the environment outside.</summary>
    public const string Outside = "outside";

    /// <summary>Draws it.</summary>
    /// <param name="detail">The detail.</param>
    /// <param name="place">Where it stands.</param>
    /// <param name="insideFilmM2KPerW">Inside film R_si, m²·K/W: that of the loss, or that for mould.</param>
    public static Section Of(Detail detail, DetailPlace place, double insideFilmM2KPerW) => throw new NotImplementedException();
}
