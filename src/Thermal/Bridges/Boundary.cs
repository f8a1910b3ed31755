namespace Thermal.Bridges;

/// <summary>A space of air at one temperature: every face of a piece that borders on it gets its film. One environment may have several, with other films.</summary>
/// <param name="Environment">Name of the environment, such as room or outside; boundaries of one name are one temperature.</param>
/// <param name="Where">The space the air takes, m; ends may be infinite. Pieces win where both claim a place.</param>
/// <param name="SurfaceResistanceM2KPerW">Surface resistance R_s, m²·K/W, 0 to 10; 0 fixes the surface at the environment's temperature.</param>
/// <remarks>A face at the outer limits of all pieces that borders on no environment lets no heat through: a cut. Elsewhere such a face is a leak and refused; so is a face that two boundaries of different environments or films claim.</remarks>
public sealed record Boundary(string Environment, Box Where, double SurfaceResistanceM2KPerW);
