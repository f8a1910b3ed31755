namespace Thermal.Moisture;

/// <summary>How far mould has grown on a surface, and how long the surface has been too dry for it.</summary>
/// <param name="IndexFactor">Mould index M: 0 nothing, 1 first threads under the microscope, 3 visible, 6 all over.</param>
/// <param name="DryH">Hours since it was last damp enough, h; 0 while it is.</param>
public readonly record struct MouldState(double IndexFactor, double DryH);
