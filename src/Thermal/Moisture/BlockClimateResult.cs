namespace Thermal.Moisture;

/// <summary>What the block climate of houses says about a build-up: grams, no verdict.</summary>
/// <param name="CondensedKgPerM2">Water that settles in the 90 winter days, kg/m².</param>
/// <param name="EvaporableKgPerM2">Water that could leave in the 90 summer days, kg/m²; null where nothing settles.</param>
/// <param name="WetFaces">Faces where it settles, counted from 0 at the inside air.</param>
/// <param name="InsideToPlaneM">s_d from the inside to the innermost wet face, m; null where nothing settles.</param>
/// <param name="PlaneToOutsideM">s_d from the outermost wet face to the outside, m; null where nothing settles.</param>
/// <param name="OutsideScope">
/// True for a vapour-tight skin: the method's summer dries outwards as well as inwards, which such a skin does not allow, so its drying
/// hardly depends on the build-up at all. The grams stand; no verdict follows from them.
/// </param>
public sealed record BlockClimateResult(
    double CondensedKgPerM2,
    double? EvaporableKgPerM2,
    IReadOnlyList<int> WetFaces,
    double? InsideToPlaneM,
    double? PlaneToOutsideM,
    bool OutsideScope);
