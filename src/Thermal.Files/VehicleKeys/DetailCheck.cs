using Thermal.Envelope;
using Thermal.Envelope.Details;
using Thermal.Files.Yaml;

namespace Thermal.Files.VehicleKeys;

/// <summary>Whether described details can stand where the file puts them.</summary>
internal static class DetailCheck
{
    /// <summary>Adds a problem for each corner that does not meet another outer panel of its room.</summary>
    /// <param name="spot">The list of panels.</param>
    /// <param name="surfaces">The panels as read.</param>
    internal static void Corners(Spot spot, IReadOnlyList<Surface> surfaces)
    {
        for (int i = 0; i < surfaces.Count; i++)
            for (int j = 0; j < surfaces[i].Ribs.Count; j++)
                if (surfaces[i].Ribs[j] is { Detail: Corner corner } rib && CornerFault(corner.Other, surfaces[i], surfaces) is { } fault)
                    spot.At(i, surfaces[i].Name).At("ribs").At(j, rib.Name).At("with").Problem(fault);
    }

    private static string? CornerFault(string name, Surface panel, IReadOnlyList<Surface> surfaces)
    {
        if (surfaces.FirstOrDefault(surface => surface.Name == name) is not { } other)
            return $"there is no panel \"{name}\"; {Offer.Of(name, surfaces.Where(surface => surface != panel).Select(surface => surface.Name), "the panels are")}";
        if (other == panel)
            return "a corner lies between two panels, and this is the same one; write the name of the other";
        if (other.Zone != panel.Zone)
            return $"the panel {name} belongs to another room; a corner lies between two panels of one room";
        return other.Outside == OuterSide.OtherZone || panel.Outside == OuterSide.OtherZone
            ? "a corner lies between two panels that both have the outside behind them, and a partition has a room there; leave this corner out"
            : null;
    }
}
