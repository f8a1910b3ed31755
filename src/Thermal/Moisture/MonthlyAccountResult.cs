namespace Thermal.Moisture;

/// <summary>Twelve months of wetting and drying.</summary>
/// <param name="Verdict">Whether it wets and dries.</param>
/// <param name="Months">
/// The twelve months in the order they were given. Once the years repeat: the repeating year. Where water grows year after year: the first
/// year, which starts dry in <paramref name="StartMonth"/>.
/// </param>
/// <param name="StartMonth">Month in which wetting begins, 0 to 11 in the given order.</param>
/// <param name="DryMonth">Month in which the last water goes, 0 to 11; null where nothing settles or it never goes.</param>
/// <param name="PeakKgPerM2">Most water held at any moment of these twelve months, kg/m².</param>
/// <param name="PeakMonth">Month of that moment, 0 to 11.</param>
/// <param name="PeakFace">Face that holds most of it then, counted from 0 at the inside air; null where nothing settles.</param>
/// <param name="GrowthKgPerM2PerYear">Water added year after year, kg/(m²·a); zero once the years repeat.</param>
/// <param name="YearsComputed">Years computed until that was known, 1 to 200.</param>
public sealed record MonthlyAccountResult(
    YearOutcome Verdict,
    IReadOnlyList<MonthWater> Months,
    int StartMonth,
    int? DryMonth,
    double PeakKgPerM2,
    int PeakMonth,
    int? PeakFace,
    double GrowthKgPerM2PerYear,
    int YearsComputed)
{
    /// <summary>True where each year leaves more water than the one before.</summary>
    public bool StillAccumulating => GrowthKgPerM2PerYear > 0;
}
