using Thermal.Materials;

namespace Thermal.Envelope;

/// <summary>A build-up: layers from inside to outside. Immutable.</summary>
public sealed record Stack
{
    /// <param name="layers">1 to 40 layers, inside to outside.</param>
    /// <exception cref="ArgumentException">No layers, or more than 40.</exception>
    public Stack(IReadOnlyList<StackLayer> layers)
    {
        if (layers.Count is < 1 or > 40)
            throw new ArgumentException("A build-up has 1 to 40 layers.", nameof(layers));
        Layers = layers;
    }

    /// <summary>The layers, inside to outside.</summary>
    public IReadOnlyList<StackLayer> Layers { get; }

    /// <summary>Air gaps in the insulation: 0 none, 1 gaps that do not let air round it, 2 gaps that do.</summary>
    /// <remarks>Source: ISO-6946, annex F, table F.1 (from memory): ΔU″ 0, 0.01, 0.04 W/(m²·K).</remarks>
    public int GapLevel { get; init => field = value is >= 0 and <= 2 ? value : throw new ArgumentOutOfRangeException(nameof(value), value, "Gap level is 0, 1 or 2."); }

    /// <summary>Total thickness, m.</summary>
    public double ThicknessM => Layers.Sum(layer => layer.ThicknessM);

    /// <summary>Thickness inside the skin, m: without the outermost layer where that is metal or plastic. Bare dimensions run from skin to skin.</summary>
    public double InsideSkinThicknessM => ThicknessM - (Layers[^1] is SolidLayer { Material.Group: MaterialGroup.Metal or MaterialGroup.Plastic } skin ? skin.ThicknessM : 0);

    /// <summary>
    /// The face up to which room air gets, 0 at the room: through the joints of a lining and of loose boards, past wool and air,
    /// up to a bonded layer, a metal or the last layer. 0 where the lining itself is bonded.
    /// </summary>
    public int FaceAirReaches(LiningFit fit)
    {
        if (fit == LiningFit.Bonded) return 0;
        int face = 1;
        while (face < Layers.Count - 1 && Layers[face] is not (SolidLayer { IsBonded: true } or SolidLayer { Material.IsMetal: true })) face++;
        return Math.Min(face, Layers.Count - 1);
    }

    /// <summary>Mass per area, kg/m², battens included.</summary>
    public double MassKgPerM2 => Layers.OfType<SolidLayer>().Sum(layer =>
        layer.ThicknessM * (layer.Battens is { } battens
            ? battens.AreaFraction * battens.Material.DensityKgPerM3.Value + (1 - battens.AreaFraction) * layer.Material.DensityKgPerM3.Value
            : layer.Material.DensityKgPerM3.Value));

    /// <summary>Heat stored per area and kelvin in the whole build-up, J/(m²·K), between battens.</summary>
    public double HeatCapacityJPerM2K => Layers.OfType<SolidLayer>().Sum(layer =>
        layer.ThicknessM * layer.Material.DensityKgPerM3.Value * layer.Material.SpecificHeatJPerKgK.Value);

    /// <summary>The same build-up with one layer's thickness changed.</summary>
    /// <param name="layer">Index of the layer, 0 at the room.</param>
    /// <param name="thicknessM">New thickness, m, 1e-6 to 1.</param>
    public Stack WithThicknessM(int layer, double thicknessM) => WithLayer(layer, Layers[layer] with { ThicknessM = thicknessM });

    /// <summary>The same build-up with one layer replaced.</summary>
    public Stack WithLayer(int index, StackLayer layer) =>
        new([.. Layers.Take(index), layer, .. Layers.Skip(index + 1)]) { GapLevel = GapLevel };

    /// <summary>What a given ψ or χ was found for: materials and thicknesses, inside to outside, such as "birch_plywood 6 mm, sheep_wool 40 mm".</summary>
    public string Signature => string.Join(", ", Layers.Select(layer => string.Create(System.Globalization.CultureInfo.InvariantCulture,
        $"{(layer is SolidLayer solid ? solid.Material.Key : "air")} {Math.Round(layer.ThicknessM * 1000, 3)} mm")));

    /// <summary>The same build-up with every conductivity at one end of its span.</summary>
    public Stack WithConductivity(Extreme extreme) => new([.. Layers.Select(layer => layer is SolidLayer solid
        ? solid with
        {
            Material = Moved(solid.Material, extreme),
            Battens = solid.Battens is { } battens ? battens with { Material = Moved(battens.Material, extreme) } : null,
        }
        : layer)]) { GapLevel = GapLevel };

    private static Material Moved(Material material, Extreme extreme) =>
        material with { ConductivityWPerMK = material.ConductivityWPerMK.MovedTo(extreme) };
}
