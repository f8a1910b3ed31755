namespace Thermal.Choices;

/// <summary>What a strip over the ribs of a panel buys, thickness by thickness; everything else as kept.</summary>
/// <param name="Panel">The panel.</param>
/// <param name="Rib">The rib.</param>
/// <param name="Material">What the strip is of, in words.</param>
/// <param name="Rows">Ascending thickness, 0 first.</param>
public sealed record StripTable(string Panel, string Rib, string Material, IReadOnlyList<StripRow> Rows);

/// <summary>One thickness of strip.</summary>
/// <param name="StripM">Thickness of the strip, m; 0 for none.</param>
/// <param name="PsiWPerMK">ψ, W/(m·K).</param>
/// <param name="UWithRibsWPerM2K">U of the panel with this rib at its spacing, W/(m²·K); for one that stands alone with everything that bridges the panel.</param>
/// <param name="ColdestC">Coldest inner point on the cold night, °C.</param>
/// <param name="ToSpareK">Degrees to spare before it gets wet, K.</param>
/// <param name="SavedW">Heat saved on the cold night against no strip, W.</param>
/// <param name="HeadroomLostM">How much the lining moves inwards because the strip does not fit over the crown, m.</param>
/// <param name="IsKept">True for the strip as it stands in the case.</param>
public sealed record StripRow(double StripM, double PsiWPerMK, double UWithRibsWPerM2K, double ColdestC, double ToSpareK, double SavedW, double HeadroomLostM, bool IsKept);
