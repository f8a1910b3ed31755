namespace Thermal.Assessments;

/// <summary>Damp inside one build-up: one cold night, twelve months, and the verdict.</summary>
public sealed record BuildUpDamp
{
    /// <summary>The panel, or panel and door leaf.</summary>
    public required string Name { get; init; }
    /// <summary>The panel.</summary>
    public required string Panel { get; init; }
    /// <summary>Verdict in one word.</summary>
    public required DampVerdict Verdict { get; init; }
    /// <summary>Verdicts of the run with least and with most vapour and air: when both agree with <see cref="Verdict"/> it is sure.</summary>
    public required DampVerdict LowVerdict { get; init; }
    /// <summary>Verdict of the run with most.</summary>
    public required DampVerdict HighVerdict { get; init; }
    /// <summary>Most water held in the year with the runs of least and most damp, g/m²; null without months.</summary>
    public required Between? PeakRangeGPerM2 { get; init; }
    /// <summary>Where most water settles: the face between which layers, in words from inside, such as "between sheep's wool and steel".</summary>
    public required string WettestPlace { get; init; }
    /// <summary>Index of that face, 0 at the room; -1 when nowhere.</summary>
    public required int WettestFace { get; init; }
    /// <summary>By diffusion in the cold night, g/m².</summary>
    public required double NightByDiffusionGPerM2 { get; init; }
    /// <summary>By air behind the lining in the cold night, g/m²; an upper bound.</summary>
    public required double NightByAirGPerM2 { get; init; }
    /// <summary>The face that air meets, 0 at the room; -1 when none gets there.</summary>
    public required int AirFace { get; init; }
    /// <summary>Temperatures at the faces on the cold night, °C.</summary>
    public required IReadOnlyList<double> TemperaturesAtFacesC { get; init; }
    /// <summary>Saturation pressure at the faces on the cold night, Pa.</summary>
    public required IReadOnlyList<double> SaturationAtFacesPa { get; init; }
    /// <summary>Vapour pressure at the faces on the cold night after what settles has settled, Pa.</summary>
    public required IReadOnlyList<double> VapourAtFacesPa { get; init; }
    /// <summary>Diffusion-equivalent air layer thickness of each layer, m.</summary>
    public required IReadOnlyList<double> DiffusionThicknessesM { get; init; }
    /// <summary>Dew point of the room's air on the cold night, °C.</summary>
    public required double RoomDewPointC { get; init; }
    /// <summary>How far room air can get before a tight or bonded layer stops it: index of the face, 0 = only the lining's surface.</summary>
    public required int AirReachesFace { get; init; }
    /// <summary>The year; null where the case has no months.</summary>
    public required YearDamp? Year { get; init; }
    /// <summary>DIN block climate, what settles in its 90 days, g/m²: a remark and never a verdict.</summary>
    public required double BlockSettledGPerM2 { get; init; }
    /// <summary>DIN block climate, what could dry in its 90 days, g/m²; behind a tight skin outside the method's scope.</summary>
    public required double BlockDryableGPerM2 { get; init; }
    /// <summary>Name of a layer that can hold water between two tight ones while air can reach it; null for none.</summary>
    public required string? TrappedLayer { get; init; }
}

/// <summary>Twelve months inside one build-up.</summary>
public sealed record YearDamp
{
    /// <summary>Water held at the end of each month at the wettest face, g/m², January first.</summary>
    public required IReadOnlyList<double> WettestFaceGPerM2 { get; init; }
    /// <summary>Water held at the end of each month at all faces together, g/m², January first.</summary>
    public required IReadOnlyList<double> HeldGPerM2 { get; init; }
    /// <summary>Most held, g/m².</summary>
    public required double PeakGPerM2 { get; init; }
    /// <summary>First month that ends with more water than counts as dry (50 g/m²), 1 to 12; null when none does.</summary>
    public required int? WetFromMonth { get; init; }
    /// <summary>First month after the wettest that ends with no more than that, 1 to 12; null when never wet, never dry or gaining year by year.</summary>
    public required int? DryInMonth { get; init; }
    /// <summary>Gain from one year to the next when it never dries, g/m²; 0 otherwise.</summary>
    public required double GainPerYearGPerM2 { get; init; }
    /// <summary>Months with ice at the wettest face.</summary>
    public required IReadOnlyList<int> IceMonths { get; init; }
    /// <summary>Inside °C, outside °C, inside Pa, outside Pa of each month as put in.</summary>
    public required IReadOnlyList<MonthInside> Months { get; init; }
}

/// <summary>What one month put in.</summary>
public sealed record MonthInside(double InsideC, double OutsideC, double InsidePa, double OutsidePa, double LivedInFraction);

/// <summary>Verdict of a build-up.</summary>
public enum DampVerdict
{
    /// <summary>Nothing settles, or so little (up to 50 g/m², and no more a year) that none runs off.</summary>
    Dry,
    /// <summary>Gets wet and dries within the year.</summary>
    WetDries,
    /// <summary>Holds water all year round or gains year by year.</summary>
    StaysWet,
    /// <summary>Wet on the cold night; there are no months to tell whether it dries.</summary>
    WetNightOnly,
}
