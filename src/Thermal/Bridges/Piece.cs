namespace Thermal.Bridges;

/// <summary>A piece of one material in a section.</summary>
/// <param name="Name">What the builder calls it; used in problems and pictures.</param>
/// <param name="Where">The space it takes, finite, m.</param>
/// <param name="ConductivityWPerMK">Thermal conductivity λ, W/(m·K), 0.001 to 500.</param>
public sealed record Piece(string Name, Box Where, double ConductivityWPerMK)
{
    /// <summary>True where it is set into the pieces named before it and takes their place; it may stand out of them. A piece that overlaps without this is refused.</summary>
    public bool IsInset { get; init; }
}
