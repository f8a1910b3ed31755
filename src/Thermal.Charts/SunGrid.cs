using Thermal.Climates;

namespace Thermal.Charts;

/// <summary>Sun on the surfaces of a parked vehicle by month, as it is drawn. Immutable.</summary>
/// <param name="Title">Place and question.</param>
/// <param name="Stand">How the vehicle stands, one sentence.</param>
/// <param name="Months">Months from the left, 1 to 12.</param>
/// <param name="Rows">Surfaces, the roof first.</param>
public sealed record SunGrid(string Title, string Stand, IReadOnlyList<int> Months, IReadOnlyList<SunGridRow> Rows)
{
    /// <summary>The grid of a vehicle that stands one way.</summary>
    /// <param name="place">Name of the place.</param>
    /// <param name="stand">How the vehicle stands, one sentence.</param>
    /// <param name="months">At least one month.</param>
    public static SunGrid Of(string place, string stand, IReadOnlyList<SunOnVehicleMonth> months) => new(TitleOf(place), stand, [.. months.Select(month => month.Month)],
    [
        new("roof", [.. months.Select(month => month.RoofWPerM2)]),
        new("left side", [.. months.Select(month => month.LeftWPerM2)]),
        new("right side", [.. months.Select(month => month.RightWPerM2)]),
        new("front", [.. months.Select(month => month.FrontWPerM2)]),
        new("rear", [.. months.Select(month => month.RearWPerM2)]),
    ]);

    /// <summary>The grid of a vehicle whose heading is not known.</summary>
    /// <param name="place">Name of the place.</param>
    /// <param name="stand">How the vehicle stands, one sentence.</param>
    /// <param name="months">At least one month.</param>
    public static SunGrid Of(string place, string stand, IReadOnlyList<SunAnyHeadingMonth> months) => new(TitleOf(place), stand, [.. months.Select(month => month.Month)],
    [
        new("roof", [.. months.Select(month => month.RoofWPerM2)]),
        new("sunniest side", [.. months.Select(month => month.MostWPerM2)]),
        new("darkest side", [.. months.Select(month => month.LeastWPerM2)]),
    ]);

    internal double MostWPerM2 => Rows.Max(row => row.MeansWPerM2.Max());

    private static string TitleOf(string place) => $"{place}: sun on a parked vehicle";
}

/// <summary>One surface of a <see cref="SunGrid"/>.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="MeansWPerM2">Sun in each month, mean over day and night, W/m².</param>
public sealed record SunGridRow(string Name, IReadOnlyList<double> MeansWPerM2);
