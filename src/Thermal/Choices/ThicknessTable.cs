using Thermal.Assessments;
using Thermal.Bridges;

namespace Thermal.Choices;

/// <summary>One layer in all thicknesses it is sold in, everything else kept.</summary>
/// <param name="Panel">The panel.</param>
/// <param name="Layer">Name of the layer.</param>
/// <param name="LayerIndex">Its index, 0 at the room.</param>
/// <param name="KeptThicknessM">Its thickness in the case, m.</param>
/// <param name="FuelUnit">Unit of the fuel figures: L, kg or kWh.</param>
/// <param name="Rows">Ascending thickness; the kept one is among them.</param>
public sealed record ThicknessTable(string Panel, string Layer, int LayerIndex, double KeptThicknessM, string FuelUnit, IReadOnlyList<ThicknessRow> Rows)
{
    /// <summary>Thicknesses sold that have no row, ascending: a described rib, bolt or edge does not fit in them.</summary>
    public IReadOnlyList<ThicknessLeftOut> LeftOut { get; init; } = [];
}

/// <summary>A thickness without a row.</summary>
/// <param name="ThicknessM">Thickness, m.</param>
/// <param name="Reason">The first thing that does not fit.</param>
public sealed record ThicknessLeftOut(double ThicknessM, UnfitDetail Reason);

/// <summary>One thickness.</summary>
public sealed record ThicknessRow
{
    /// <summary>Thickness, m.</summary>
    public required double ThicknessM { get; init; }
    /// <summary>True for the thickness of the case.</summary>
    public required bool IsKept { get; init; }
    /// <summary>U between ribs, W/(m²·K).</summary>
    public required double UWPerM2K { get; init; }
    /// <summary>U with ribs, W/(m²·K).</summary>
    public required double UWithRibsWPerM2K { get; init; }
    /// <summary>Heat the vehicle loses on the cold night, W.</summary>
    public required double LossW { get; init; }
    /// <summary>Fuel of the cold night, in the table's unit.</summary>
    public required double FuelAmount { get; init; }
    /// <summary>Headroom, m; null where the vehicle has no dimensions.</summary>
    public required double? HeadroomM { get; init; }
    /// <summary>Inner width, m; null likewise.</summary>
    public required double? InnerWidthM { get; init; }
    /// <summary>Mass of all build-ups, kg.</summary>
    public required double MassKg { get; init; }
    /// <summary>Verdict of this panel's build-up.</summary>
    public required DampVerdict Verdict { get; init; }
    /// <summary>Most water held in the year, g/m²; null without months.</summary>
    public required double? PeakGPerM2 { get; init; }
    /// <summary>Coldest inner surface of the panel, °C.</summary>
    public required double ColdestC { get; init; }
    /// <summary>Watts the next 10 mm save from here, W; negative never, null at the last row.</summary>
    public double? NextTenMmSaveW { get; init; }
    /// <summary>True where a given ψ or χ belongs to another thickness: the row's bridges are then only a guess. Described ones are solved anew in every row.</summary>
    public required bool BridgesStale { get; init; }
}
