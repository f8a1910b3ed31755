namespace Thermal.Assessments;

/// <summary>Everything the tool has to say of one case on steady nights and over twelve months. The one result that all faces show. Immutable.</summary>
public sealed record Assessment
{
    /// <summary>What was asked.</summary>
    public required Case Case { get; init; }
    /// <summary>The cold night.</summary>
    public required Night ColdNight { get; init; }
    /// <summary>The mild damp night.</summary>
    public required Night MildNight { get; init; }
    /// <summary>Heater, fuel, current, warm-up, dawn.</summary>
    public required HeatingAnswer Heating { get; init; }
    /// <summary>Panels: U-values and build-ups, in the order of the vehicle.</summary>
    public required IReadOnlyList<PanelAnswer> Panels { get; init; }
    /// <summary>Ribs, edges and bolts, largest loss first.</summary>
    public required IReadOnlyList<BridgeAnswer> Bridges { get; init; }
    /// <summary>Damp inside the build-ups, one for each panel that faces the outside and each door leaf.</summary>
    public required IReadOnlyList<BuildUpDamp> BuildUps { get; init; }
    /// <summary>Every cover of every opening on the cold night, the whole balance repeated for each.</summary>
    public required IReadOnlyList<CoverAnswer> Covers { get; init; }
    /// <summary>Mould on inner surfaces by months, worst first; empty where the case has no months or no nights lived in.</summary>
    public required IReadOnlyList<MouldAnswer> Mould { get; init; }
    /// <summary>Air that would keep the wanted humidity on the cold and the mild night.</summary>
    public required AirNeeded AirNeededCold { get; init; }
    /// <summary>The same on the mild night.</summary>
    public required AirNeeded AirNeededMild { get; init; }
    /// <summary>Space and mass.</summary>
    public required Space Space { get; init; }
    /// <summary>Mean transmittance of the whole body.</summary>
    public required MeanK MeanK { get; init; }
    /// <summary>Tanks on the cold night.</summary>
    public required IReadOnlyList<TankAnswer> Tanks { get; init; }
    /// <summary>What a person should know, worst first.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }
}
