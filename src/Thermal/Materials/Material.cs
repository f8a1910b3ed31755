namespace Thermal.Materials;

/// <summary>One generic material, every figure with its span and source. Immutable.</summary>
public sealed record Material
{
    /// <summary>Name in files, lower case with underscores, such as birch_plywood.</summary>
    public required string Key { get; init; }
    /// <summary>Name in sentences, such as birch plywood.</summary>
    public required string Name { get; init; }
    /// <summary>What kind of thing it is; decides texture and colour in a picture and some findings.</summary>
    public required MaterialGroup Group { get; init; }
    /// <summary>Thermal conductivity λ, dry, W/(m·K), 0.001 to 500.</summary>
    public required Bounded ConductivityWPerMK { get; init; }
    /// <summary>Thermal conductivity λ, wet, W/(m·K); null where not known.</summary>
    public Bounded? WetConductivityWPerMK { get; init; }
    /// <summary>Density ρ, kg/m³, 1 to 9000.</summary>
    public required Bounded DensityKgPerM3 { get; init; }
    /// <summary>Specific heat capacity c, J/(kg·K), 100 to 5000.</summary>
    public required Bounded SpecificHeatJPerKgK { get; init; }
    /// <summary>Water vapour resistance factor μ, dimensionless, 1 to 10 000 000; null for a film that has its s_d instead.</summary>
    public Bounded? VapourResistanceFactor { get; init; }
    /// <summary>Diffusion-equivalent air layer thickness s_d of a film, whatever its thickness, m, 0.001 to 10 000; null for materials with μ.</summary>
    public Bounded? FilmDiffusionThicknessM { get; init; }
    /// <summary>Longwave emissivity of its surface, fraction, 0.01 to 1.</summary>
    public required Bounded EmissivityFraction { get; init; }
    /// <summary>Water taken up from air at 80 % relative humidity, kg per kg dry, fraction; null where it takes up none that matters.</summary>
    public Bounded? SorptionAt80Fraction { get; init; }
    /// <summary>Sensitivity to mould; null where nothing organic can grow.</summary>
    public MouldClass? MouldClass { get; init; }
    /// <summary>Thicknesses sold, m, ascending; empty where it is cut, sprayed or stuffed to any.</summary>
    public IReadOnlyList<double> ThicknessesSoldM { get; init; } = [];
    /// <summary>Thicknesses sold where the inch is the unit of trade, m, ascending; empty where not known.</summary>
    public IReadOnlyList<double> InchThicknessesSoldM { get; init; } = [];
    /// <summary>What a buyer must ask about fire, one short sentence.</summary>
    public string FireNote { get; init; } = "";
    /// <summary>Price per square metre and millimetre thickness, in <see cref="PriceCurrency"/>; null where not known.</summary>
    public Bounded? PricePerM2Mm { get; init; }
    /// <summary>Currency of the price, such as EUR.</summary>
    public string PriceCurrency { get; init; } = "";

    /// <summary>True for steel, aluminium and other metals: where one bridges insulation the combined method is outside its scope.</summary>
    public bool IsMetal => Group == MaterialGroup.Metal;

    /// <summary>True where it can take up or hold liquid water: wool, fibre, wood, felt, open foam.</summary>
    public bool HoldsWater => SorptionAt80Fraction is { Value: > 0.005 } || Group is MaterialGroup.Wool or MaterialGroup.Wood;

    /// <summary>Diffusion-equivalent air layer thickness of a sheet of it, s_d = μ·d or that of the film, m.</summary>
    /// <param name="thicknessM">Thickness d, m, 1e-6 to 1.</param>
    public double DiffusionThicknessM(double thicknessM) =>
        FilmDiffusionThicknessM?.Value ?? VapourResistanceFactor!.Value * Guard.InRange(thicknessM, 1e-6, 1, "m");
}

/// <summary>Kinds of material.</summary>
public enum MaterialGroup
{
    /// <summary>Steel, aluminium.</summary>
    Metal,
    /// <summary>Glass-fibre reinforced plastic, solid plastics, rubber, wet-room panels.</summary>
    Plastic,
    /// <summary>Plywood, timber, chipboard, cork lining.</summary>
    Wood,
    /// <summary>Foams and boards with closed or mostly closed cells, cork board.</summary>
    Foam,
    /// <summary>Wools, fibres, felts, blankets.</summary>
    Wool,
    /// <summary>Carpet, vinyl, linoleum.</summary>
    Covering,
    /// <summary>Membranes, foils, paints: described by s_d.</summary>
    Film,
    /// <summary>Glass, acrylic, polycarbonate.</summary>
    Pane,
    /// <summary>Water, ice, air.</summary>
    Fluid,
}

/// <summary>Mould sensitivity classes of the extended Finnish model.</summary>
/// <remarks>Source: HV-1999 and its extension, table of material classes.</remarks>
public enum MouldClass
{
    /// <summary>Untreated wood with much sapwood.</summary>
    VerySensitive,
    /// <summary>Planed wood, paper-faced boards, wood-based boards.</summary>
    Sensitive,
    /// <summary>Plastics, mineral wool, aerated products.</summary>
    MediumResistant,
    /// <summary>Glass, metal, products with active protection.</summary>
    Resistant,
}
