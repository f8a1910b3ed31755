namespace Thermal.Charts;

/// <summary>Vapour at one place of a build-up by diffusion.</summary>
/// <param name="Layer">Index of the layer, 0 at the room.</param>
/// <param name="Part">How far into the layer, 0 at its inner face to 1 at its outer.</param>
/// <param name="PressurePa">Vapour pressure, Pa.</param>
/// <param name="SaturationPa">Saturation pressure there, Pa.</param>
/// <param name="IsWet">True where vapour settles.</param>
internal sealed record VapourSample(int Layer, double Part, double PressurePa, double SaturationPa, bool IsWet);
