using System.Globalization;
using CsCheck;
using Thermal.Words.Units;

namespace Thermal.Files.Tests.Units;

/// <summary>A number with its unit is read the same in every culture, or refused with what to write instead.</summary>
public sealed class QuantityTextTests
{
    private const double ByDefinition = 2e-11; // relative; the factors are exact by definition, and UnitsNet carries some to eleven digits only

    public static TheoryData<string, string, double> Good => new()
    {
        { "Length", "40 mm", 0.04 }, { "Length", "40mm", 0.04 }, { "Length", "9 mm", 0.009 }, { "Length", "1.5 m", 1.5 }, { "Length", "1 in", 0.0254 },
        { "Length", "12 ft", 3.6576 }, { "Length", "1e-3 m", 0.001 }, { "Length", "40\u00A0mm", 0.04 }, { "Length", "25 µm", 25e-6 }, { "Length", "25 μm", 25e-6 },
        { "Temperature", "-10 °C", -10 }, { "Temperature", "−10 C", -10 }, { "Temperature", "14 °F", -10 }, { "Temperature", "263.15 K", -10 },
        { "Difference", "20 K", 20 }, { "Difference", "36 °F", 20 },
        { "Conductivity", "0.036 W/mK", 0.036 }, { "Conductivity", "0.036 W/(m·K)", 0.036 }, { "Conductivity", "0.036 W/(m K)", 0.036 }, { "Conductivity", "0.036 W/m·K", 0.036 },
        { "Transmittance", "5.7 W/m²K", 5.7 }, { "Transmittance", "5.7 W/(m2·K)", 5.7 }, { "Transmittance", "5.7 W/m^2K", 5.7 },
        { "Resistance", "0.5 m²K/W", 0.5 }, { "Resistance", "0.5 m2·K/W", 0.5 },
        { "LinearTransmittance", "0.12 W/(m·K)", 0.12 }, { "PointTransmittance", "0.02 W/K", 0.02 },
        { "SpecificHeat", "1.45 kJ/kgK", 1450 }, { "Density", "30 kg/m3", 30 }, { "HeatCapacity", "120 kJ/K", 120e3 }, { "CapacityPerArea", "25 kJ/m²K", 25e3 },
        { "Pressure", "850 hPa", 85000 }, { "Volume", "70 L", 0.07 }, { "Volume", "70 l", 0.07 }, { "Volume", "1 gal", 3.785411784e-3 },
        { "Mass", "1 lb", 0.45359237 }, { "Mass", "250 g", 0.25 }, { "Power", "2 kW", 2000 }, { "Power", "-3 W", -3 }, { "Energy", "80 Wh", 288000 },
        { "Charge", "100 Ah", 360000 }, { "Speed", "36 km/h", 10 }, { "Speed", "10 mph", 4.4704 }, { "VolumeFlow", "36 m³/h", 0.01 }, { "VolumeFlow", "10 L/day", 0.01 / 86400 },
        { "VolumeFlow", "1 cfm", 0.028316846592 / 60 }, { "MassFlow", "36 g/h", 1e-5 }, { "MassFlow", "0.5 kg/day", 0.5 / 86400 }, { "AirPerArea", "0.36 m³/(m²h)", 1e-4 },
        { "Area", "15 cm²", 0.0015 }, { "Area", "1 ft²", 0.09290304 }, { "Area", "1 sq ft", 0.09290304 }, { "Angle", "90°", 90 }, { "Angle", "90 deg", 90 },
        { "Duration", "8 h", 28800 }, { "Duration", "10 min", 600 }, { "HeatValue", "42.8 MJ/kg", 42.8e6 }, { "AirChange", "0.8 1/h", 0.8 },
        { "Fraction", "60 %", 0.6 }, { "Fraction", "0.6", 0.6 }, { "Number", "2", 2 }, { "GasFraction", "420 ppm", 420e-6 },
    };

    [Theory, MemberData(nameof(Good))]
    public void A_good_value_is_read_in_the_unit_that_is_computed_in(string dimension, string text, double expected)
    {
        Assert.True(QuantityText.TryRead(text, Named(dimension), out double si, out string wrong), wrong);
        Assert.InRange(si, expected - Math.Abs(expected) * ByDefinition, expected + Math.Abs(expected) * ByDefinition);
    }

    /// <summary>ISO value of the international table Btu, 1055.05585262 J: U 1 Btu/(h·ft²·°F) = 5.678263 W/(m²·K), to its printed digits.</summary>
    [Theory]
    [InlineData("Transmittance", "1 Btu/(h·ft²·°F)", 5.678263)]
    [InlineData("Conductivity", "1 Btu/(h·ft·°F)", 1.730735)]
    [InlineData("Power", "1000 Btu/h", 293.0711)]
    public void British_thermal_units_convert_to_the_printed_factors(string dimension, string text, double expected)
    {
        Assert.True(QuantityText.TryRead(text, Named(dimension), out double si, out string wrong), wrong);
        Assert.InRange(si / expected, 1 - 3e-7, 1 + 3e-7); // half of the last digit printed
    }

    [Theory]
    [InlineData("1,5 m", "write 1.5 m")]
    [InlineData("1,500 mm", "1500 mm")]
    [InlineData("40", "has no unit; write it with one, for instance 40 mm")]
    [InlineData("NaN m", "not a number")]
    [InlineData("40  ", "40 mm or 40 cm")]
    [InlineData(".nan", "not a number")]
    [InlineData("inf m", "not a number")]
    [InlineData("-.inf", "not a number")]
    [InlineData("1_000 mm", "write 1000 mm")]
    [InlineData("1 000 mm", "write 1000 mm")]
    [InlineData("1'000 mm", "write 1000 mm")]
    [InlineData("010 mm", "write 10 mm")]
    [InlineData(".5 m", "lacks a digit")]
    [InlineData("5. m", "lacks a digit")]
    [InlineData("3/4 in", "write it as a decimal")]
    [InlineData("1 1/2 in", "write it as a decimal")]
    [InlineData("1.234.567 m", "is not a value")]
    [InlineData("forty mm", "is not a value")]
    [InlineData("mm 40", "is not a value")]
    [InlineData("0x10 mm", "is not a unit known here")]
    [InlineData("1e999 m", "too large")]
    [InlineData("", "nothing is written")]
    [InlineData("40 W", "W measures power, and this must be a length")]
    [InlineData("40 MM", "write 40 mm")]
    [InlineData("40 furlong", "is not a unit known here")]
    [InlineData("40 %", "%")]
    public void A_bad_value_is_refused_with_what_to_write_instead(string text, string instead)
    {
        Assert.False(QuantityText.TryRead(text, Dimensions.Length, out double si, out string wrong));
        Assert.True(double.IsNaN(si));
        Assert.Contains(instead, wrong, StringComparison.Ordinal);
    }

    [Fact]
    public void A_resistance_in_US_units_is_read_to_five_digits()
    {
        Assert.True(QuantityText.TryRead("5.678263 h·ft²·°F/Btu", Dimensions.Resistance, out double si, out string wrong), wrong);
        Assert.InRange(si, 1 - 2e-5, 1 + 2e-5); // UnitsNet carries this factor, 0.1761, to five digits
    }

    [Fact]
    public void Any_text_is_read_or_refused_and_never_throws() => Gen.Select(
        Gen.String[Gen.OneOf(Gen.Char["0123456789.,-+eE_ '/°%mMcWKhkgμ²()·"], Gen.Char), 0, 12], Gen.Int[0, Dimensions.All.Count - 1])
        .Sample((text, index) => QuantityText.TryRead(text, Dimensions.All[index], out double si, out string wrong) == (wrong.Length == 0)
            && double.IsFinite(si) == (wrong.Length == 0), iter: 20_000);

    [Fact]
    public void Every_unit_goes_there_and_back() => Assert.All(Dimensions.All, dimension => Assert.All(dimension.Units, unit =>
    {
        double back = dimension.FromSi(dimension.ToSi(12.34, unit), unit);
        Assert.InRange(back, 12.34 - 1e-9, 12.34 + 1e-9); // offsets of temperature scales cost digits
    }));

    [Fact]
    public void Every_spelling_finds_its_own_unit() => Assert.All(Dimensions.All, dimension => Assert.All(dimension.Units, unit =>
        Assert.All(unit.AlsoWritten.Append(unit.Spelling), spelling => Assert.Same(unit, dimension.Find(spelling)))));

    [Fact]
    public void Every_example_can_be_read() => Assert.All(Dimensions.All, dimension =>
        Assert.True(QuantityText.TryRead(dimension.Example, dimension, out _, out string wrong), wrong));

    [Fact]
    public void These_tests_run_in_a_culture_that_writes_a_comma() => Assert.Equal("1,5", 1.5.ToString(CultureInfo.CurrentCulture));

    private static Dimension Named(string name) => (Dimension)typeof(Dimensions).GetProperty(name)!.GetValue(null)!;
}
