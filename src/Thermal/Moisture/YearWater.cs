namespace Thermal.Moisture;

/// <summary>Twelve months as they were run; the months in the order they were given, whichever came first.</summary>
internal sealed record YearWater(MonthWater[] Months, int? DryMonth, double PeakKgPerM2, int PeakMonth, int? PeakFace);
