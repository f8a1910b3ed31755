namespace Thermal.Choices;

/// <summary>A hollow rib left empty, filled with what is around it, or foamed; everything else as kept.</summary>
/// <param name="Panel">The panel.</param>
/// <param name="Rib">The rib.</param>
/// <param name="Rows">Empty first.</param>
public sealed record FillingTable(string Panel, string Rib, IReadOnlyList<FillingRow> Rows);

/// <summary>One filling.</summary>
/// <param name="Filling">What fills it, in words; null for air.</param>
/// <param name="PsiWPerMK">ψ, W/(m·K).</param>
/// <param name="UWithRibsWPerM2K">U of the panel with this rib at its spacing, W/(m²·K); for one that stands alone with everything that bridges the panel.</param>
/// <param name="ColdestC">Coldest inner point on the cold night, °C.</param>
/// <param name="ToSpareK">Degrees to spare before it gets wet, K.</param>
/// <param name="SavedW">Heat saved on the cold night against an empty rib, W.</param>
/// <param name="IsKept">True for the filling of the case.</param>
public sealed record FillingRow(string? Filling, double PsiWPerMK, double UWithRibsWPerM2K, double ColdestC, double ToSpareK, double SavedW, bool IsKept);
