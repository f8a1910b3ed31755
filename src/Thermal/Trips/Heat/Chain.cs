namespace Thermal.Trips.Heat;

/// <summary>Cells in a row from the inner to the outer face of a part, per m². Cells hold heat; what lies between their middles only conducts.</summary>
/// <param name="CapacityJPerM2K">Heat stored by each cell, inside to outside, J/(m²·K); at least one cell.</param>
/// <param name="LinksM2KPerW">Resistances: inner face to first middle, middle to middle, last middle to outer face; one more than cells, m²·K/W, over 0.</param>
/// <param name="FaceLinks">The link each face between layers lies in, first face to last; empty where there are no layers.</param>
/// <param name="FaceSharesFraction">How far along that link it lies, fraction of its resistance.</param>
internal sealed record Chain(double[] CapacityJPerM2K, double[] LinksM2KPerW, int[] FaceLinks, double[] FaceSharesFraction);
