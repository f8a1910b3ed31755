using Thermal.Assessments;

namespace Thermal.Charts;

/// <summary>Heat lost at one outside temperature.</summary>
/// <param name="OutsideC">Outside temperature, °C.</param>
/// <param name="LossW">Heat lost with its range, W.</param>
public sealed record HeaterNeedPoint(double OutsideC, Between LossW);
