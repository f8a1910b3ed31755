namespace Thermal.Bridges;

/// <summary>A rectangular space with sides along the axes; its ends may be infinite where only its side matters.</summary>
/// <param name="X0M">Lower end in x, m; the radius in a round section.</param>
/// <param name="X1M">Upper end in x, m.</param>
/// <param name="Y0M">Lower end in y, m; the height in a round section.</param>
/// <param name="Y1M">Upper end in y, m.</param>
/// <param name="Z0M">Lower end in z, m; only for a solid body.</param>
/// <param name="Z1M">Upper end in z, m; a plane section is one metre deep.</param>
public readonly record struct Box(double X0M, double X1M, double Y0M, double Y1M, double Z0M = 0, double Z1M = 1);
