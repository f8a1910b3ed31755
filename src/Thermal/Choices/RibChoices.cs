using Thermal.Assessments;
using Thermal.Bridges;

namespace Thermal.Choices;

/// <summary>What can be done about a described rib.</summary>
public static class RibChoices
{
    /// <summary>Strips of 0 to 20 mm of closed-cell foam over the crown.</summary>
    /// <param name="kept">The assessment.</param>
    /// <param name="panel">Name of the panel.</param>
    /// <param name="rib">Name of the rib.</param>
    /// <param name="cache">Sections solved before.</param>
    /// <returns>The table; null where the rib is not described, or is bare.</returns>
    /// <remarks>Where the strip does not fit between crown and lining, lining and the layer the crown ends in move inwards by what is missing.</remarks>
    public static StripTable? Strips(Assessment kept, string panel, string rib, BridgeCache cache) => throw new NotImplementedException();

    /// <summary>The rib empty, filled with the material beside it, and foamed.</summary>
    /// <inheritdoc cref="Strips"/>
    /// <returns>The table; null where the rib is not described, or has no hollow.</returns>
    public static FillingTable? Fillings(Assessment kept, string panel, string rib, BridgeCache cache) => throw new NotImplementedException();
}
