using Thermal.Envelope;
using Thermal.Materials;
using static Thermal.Tests.Sketches;

namespace Thermal.Tests.Published;

/// <summary>Printed tables of glazing, acrylic sheets and shutters.</summary>
public class GlazingTests
{
    private const double FilmsM2KPerW = 1 / 25.0 + 0.13, SquareFeetPerUnit = 5.678263;

    public static IEnumerable<object[]> LowEmissivity => PublishedTable.Rows("low-emissivity-glazing.csv");

    public static IEnumerable<object[]> Acrylic => PublishedTable.Rows("acrylic-sheets.csv");

    public static IEnumerable<object[]> Shutters => PublishedTable.Rows("shutters.csv");

    private static Pane Glass(double thicknessM = 0.004, double outerEmissivityFraction = 0.837, double conductivityWPerMK = 1) =>
        new() { Material = Of(conductivityWPerMK, MaterialGroup.Pane), ThicknessM = thicknessM, OuterEmissivityFraction = outerEmissivityFraction };

    private static GlazingGap Gap(double thicknessM, string filling) => filling == "air"
        ? new() { ThicknessM = thicknessM } : new() { ThicknessM = thicknessM, Gas = GapGas.Argon, GasFraction = 0.9 };

    private static double U(Glazing glazing, double filmsM2KPerW = FilmsM2KPerW) => 1 / (filmsM2KPerW + GlazingTransmittance.CoreM2KPerW(glazing, 90));

    [Theory, MemberData(nameof(LowEmissivity))]
    public void Coated_double_glazing_comes_back(double gapM, string filling, double printed, double tolerance, double script)
    {
        double computed = U(new([Glass(outerEmissivityFraction: filling == "air" ? 0.05 : 0.03), Glass()], [Gap(gapM, filling)]));
        Assert.Equal(printed, computed, tolerance);
        Assert.Equal(script, computed, 0.0006);
    }

    /// <summary>4-16-4: Nusselt number, both parts of the gap's conductance and U, by an independent script; half its last digit.</summary>
    [Theory]
    [InlineData("air", 0.837, 0.02496, 1.0344, 1.6136, 3.700, 2.731)]
    [InlineData("argon", 0.03, 0.9 * 0.01684 + 0.1 * 0.02496, 1.104, 1.218, 0.153, 1.103)]
    public void The_steps_on_the_way_to_a_glazing_s_U_come_back(string filling, double emissivity, double conductivity, double nusselt, double convective, double radiative, double u)
    {
        double black = 4 * 5.670374419e-8 * Math.Pow(283, 3) / (1 / emissivity + 1 / 0.837 - 1);
        double rest = GlazingTransmittance.GapWPerM2K(Gap(0.016, filling), emissivity, 0.837, 90, 15) - black;
        Assert.Equal(radiative, black, 0.0005);
        Assert.Equal(convective, rest, 0.0005);
        Assert.Equal(nusselt, rest * 0.016 / conductivity, 0.0005);
        Assert.Equal(u, U(new([Glass(outerEmissivityFraction: emissivity), Glass()], [Gap(0.016, filling)])), 0.0005);
    }

    /// <summary>4 mm of glass: 5.8 in the French table of dwellings, with the older films; 5.75 with those of today by an independent script. Half the last digit of the script.</summary>
    [Theory, InlineData(23, 8, 5.80), InlineData(25, 7.69, 5.75)]
    public void A_single_pane_loses_5_8(double outside, double inside, double u) => Assert.Equal(u, U(new([Glass()], []), 1 / outside + 1 / inside), 0.005);

    /// <summary>3/x/3 mm of acrylic, ISO films 0.17, emissivity 0.9, by an independent script; half its last digit.</summary>
    [Theory, InlineData(0.010, 2.84), InlineData(0.015, 2.68), InlineData(0.020, 2.68), InlineData(0.030, 2.70)]
    public void Double_acrylic_comes_back(double gapM, double u)
    {
        Pane sheet = Glass(0.003, 0.9, 0.18) with { InnerEmissivityFraction = 0.9 };
        Assert.Equal(u, U(new([sheet, sheet], [Gap(gapM, "air")]), 0.17), 0.005);
    }

    [Theory, MemberData(nameof(Acrylic))]
    public void A_single_acrylic_sheet_loses_what_its_maker_prints(double thicknessM, double printed) =>
        Assert.InRange(U(new([Glass(thicknessM, 0.9, 0.18)], []), 1 / 8.29 + 1 / 34.0) / SquareFeetPerUnit / printed, 0.97, 1.03);

    [Theory, MemberData(nameof(Shutters))]
    public void A_shutter_adds_what_its_class_says(string edges, double own, double added) =>
        Assert.Equal(added, ShutterResistance.AddedM2KPerW(own, Enum.Parse<ShutterEdges>(edges)), 0.0005 + 1e-12);

    /// <summary>U_w 2.6 and ΔR 0.15: 1.8705 closed, 2.235 as the mean of day and night; French decree of 2007, worked by an independent script; half its last digit.</summary>
    [Theory, InlineData(CoveringSide.Inside), InlineData(CoveringSide.Outside)]
    public void A_cover_stands_in_series_with_the_window(CoveringSide side)
    {
        Opening window = new() { Name = "window", WidthM = 1, HeightM = 1, Leaf = new([Resisting(1 / 2.6 - 0.17)]) };
        Covering cover = new() { Name = "cover", Side = side, AddedResistanceM2KPerW = Exactly(0.15) };
        double open = OpeningTransmittance.Of(window, null, 90, 0.13, 0.04).MeanUWPerM2K, closed = OpeningTransmittance.Of(window, cover, 90, 0.13, 0.04).MeanUWPerM2K;
        Assert.Equal(2.6, open, 1e-12);
        Assert.Equal(1.8705, closed, 0.00005);
        Assert.Equal(2.235, (open + closed) / 2, 0.0005);
    }
}
