namespace Thermal.Choices;

/// <summary>One change that was tried.</summary>
/// <param name="Change">What was changed.</param>
/// <param name="Where">Panel, zone or opening.</param>
/// <param name="WaterAvoidedG">Water that no longer settles on surfaces and behind linings in the cold night, g.</param>
/// <param name="LossSavedW">Heat saved on the cold night, W; negative where it costs.</param>
/// <param name="PeakAvoidedGPerM2">Sum over build-ups of the year's peak avoided, g/m².</param>
/// <param name="BuildUpsDriedCount">Build-ups that turn dry less those that turn wet.</param>
/// <param name="HumidityDropFraction">Drop of the living space's humidity in the cold night, fraction.</param>
/// <param name="HeadroomLostM">Headroom lost, m.</param>
public sealed record AdviceItem(Change Change, string Where, double WaterAvoidedG, double LossSavedW, double PeakAvoidedGPerM2,
    int BuildUpsDriedCount, double HumidityDropFraction, double HeadroomLostM);

/// <summary>The stated list of changes.</summary>
public enum Change
{
    /// <summary>Joints of the lining taped.</summary>
    TapeLining,
    /// <summary>A vapour retarder of s_d 10 m behind the lining.</summary>
    AddRetarder,
    /// <summary>Closed-cell foam glued to the skin instead of wool or fibre.</summary>
    BondedFoam,
    /// <summary>10 mm more of the layer that insulates most.</summary>
    MoreInsulation,
    /// <summary>A 10 mm strip of closed-cell foam over described ribs that have none.</summary>
    StripOverRibs,
    /// <summary>Roof fan at 40 m³/h all night.</summary>
    RunFan,
    /// <summary>Wet clothes dried elsewhere.</summary>
    DryElsewhere,
    /// <summary>Covers outside over glass that has none.</summary>
    CoverOutside,
    /// <summary>Curtain or door closed to the cab.</summary>
    CloseCurtain,
}
