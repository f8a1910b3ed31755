using Thermal.Materials;

namespace Thermal.Charts;

/// <summary>One layer as a cut shows it.</summary>
/// <param name="Name">What the builder calls it.</param>
/// <param name="ThicknessM">Thickness, m, above 0.</param>
/// <param name="DiffusionThicknessM">Equivalent air layer thickness s_d, m; 0 where it stands outside a ventilated layer.</param>
/// <param name="Group">Kind of material, which decides ground and texture; <see cref="MaterialGroup.Fluid"/> for air.</param>
/// <param name="BattenFraction">Share of its width taken by battens, fraction; 0 without.</param>
public sealed record CutLayer(string Name, double ThicknessM, double DiffusionThicknessM, MaterialGroup Group, double BattenFraction = 0);
