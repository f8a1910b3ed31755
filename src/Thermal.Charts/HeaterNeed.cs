using Thermal.Assessments;

namespace Thermal.Charts;

/// <summary>What a vehicle loses over the outside temperature, and what its heater can give.</summary>
public sealed record HeaterNeed
{
    /// <summary>Heat lost at outside temperatures, at least two, coldest first.</summary>
    public required IReadOnlyList<HeaterNeedPoint> Points { get; init; }
    /// <summary>Name of the heater.</summary>
    public required string Heater { get; init; }
    /// <summary>Lowest steady output here, W.</summary>
    public required double LowestOutputW { get; init; }
    /// <summary>Highest output here, W.</summary>
    public required double HighestOutputW { get; init; }
    /// <summary>Outside temperature of the cold night, °C; one of the points.</summary>
    public required double ColdC { get; init; }
    /// <summary>Outside temperature of the mild night, °C; one of the points.</summary>
    public required double MildC { get; init; }
    /// <summary>Power to warm up on the cold night, W; null where it is not asked for.</summary>
    public double? WarmUpW { get; init; }

    /// <summary>The need of an assessment: its cold and its mild night, straight in between.</summary>
    /// <param name="assessment">The assessment.</param>
    public static HeaterNeed Of(Assessment assessment) => new()
    {
        Points =
        [
            new(assessment.ColdNight.Conditions.OutsideC, assessment.ColdNight.LossRangeW),
            new(assessment.MildNight.Conditions.OutsideC, assessment.MildNight.LossRangeW),
        ],
        Heater = assessment.Case.Heater.Name,
        LowestOutputW = assessment.Heating.LowestOutputW,
        HighestOutputW = assessment.Heating.HighestOutputW,
        ColdC = assessment.ColdNight.Conditions.OutsideC,
        MildC = assessment.MildNight.Conditions.OutsideC,
        WarmUpW = assessment.Heating.WarmUpW.Value,
    };

    internal Between LossAt(double outsideC) => Points.First(point => point.OutsideC == outsideC).LossW;
}
