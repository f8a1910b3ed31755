namespace Thermal.Charts;

/// <summary>One line of a picture over a trip.</summary>
/// <param name="Name">What it is, as written at its end or in the key.</param>
/// <param name="Values">A value for every hour in the unit shown; NaN where there is none.</param>
/// <param name="Colour">Its colour.</param>
/// <param name="Width">Its width, px.</param>
/// <param name="IsDashed">Drawn in dashes.</param>
/// <param name="HasBand">Over a long trip, drawn with a band from the lowest to the highest of each day.</param>
internal sealed record TripLine(string Name, IReadOnlyList<double> Values, string Colour, float Width, bool IsDashed = false, bool HasBand = false)
{
    internal IEnumerable<double> Known => Values.Where(value => !double.IsNaN(value));
}
