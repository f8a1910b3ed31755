using System.Globalization;
using Thermal.Words.Units;

namespace Thermal.Words;

/// <summary>How numbers are written, once for all faces: unit, significant digits, a true minus sign, never a minus zero.</summary>
/// <remarks>Every method takes the value in the unit Thermal computes in. NaN and infinity are refused: a number that is not one must not reach a page.</remarks>
public sealed class Figures
{
    private Figures(UnitSet set) => Set = set;

    /// <summary>Figures in metric units.</summary>
    public static Figures Metric { get; } = new(UnitSet.Metric);
    /// <summary>Figures in US units.</summary>
    public static Figures Us { get; } = new(UnitSet.Us);
    /// <summary>Figures in that set.</summary>
    /// <param name="set">Metric or US.</param>
    public static Figures In(UnitSet set) => set == UnitSet.Us ? Us : Metric;

    /// <summary>The set these figures are in.</summary>
    public UnitSet Set { get; }

    /// <summary>The unit as written, such as mm; empty for a bare number.</summary>
    public string Unit(Shown shown) => StyleOf(shown).Unit.Spelling;

    /// <summary>The value in the unit shown, unrounded, for an axis or a table of numbers.</summary>
    /// <exception cref="ArgumentOutOfRangeException">NaN or infinite.</exception>
    public double Convert(Shown shown, double si) => double.IsFinite(si)
        ? StyleOf(shown).Dimension.FromSi(si, StyleOf(shown).Unit)
        : throw new ArgumentOutOfRangeException(nameof(si), si, $"{shown} must be a finite number to be written.");

    /// <summary>The rounded number without its unit.</summary>
    public string Number(Shown shown, double si) => Round(Convert(shown, si), StyleOf(shown));

    /// <summary>The rounded number with its unit, such as "40 mm" or "−10.0 °C".</summary>
    public string Write(Shown shown, double si) => WithUnit(Number(shown, si), shown);

    /// <summary>The number with its sign always written, such as "+3.2 K"; for a change.</summary>
    public string Signed(Shown shown, double si)
    {
        string number = Number(shown, si);
        bool isZero = number.All(letter => letter is '0' or '.');
        return WithUnit(isZero || number[0] == '−' ? number : "+" + number, shown);
    }

    /// <summary>A span with its unit once, such as "1.4 to 2.1 kW"; a single figure where both ends read the same.</summary>
    public string Range(Shown shown, double lowSi, double highSi)
    {
        string low = Number(shown, lowSi), high = Number(shown, highSi);
        return WithUnit(low == high ? low : $"{low} to {high}", shown);
    }

    /// <summary>A layer's thickness, from m.</summary>
    public string Thickness(double thicknessM) => Write(Shown.Thickness, thicknessM);
    /// <summary>A length, width or height, from m.</summary>
    public string Length(double lengthM) => Write(Shown.Length, lengthM);
    /// <summary>Height above sea, from m.</summary>
    public string Altitude(double altitudeM) => Write(Shown.Altitude, altitudeM);
    /// <summary>An area, from m².</summary>
    public string Area(double areaM2) => Write(Shown.Area, areaM2);
    /// <summary>A volume of air, from m³.</summary>
    public string AirVolume(double volumeM3) => Write(Shown.AirVolume, volumeM3);
    /// <summary>A volume of fuel or water, from m³.</summary>
    public string LiquidVolume(double volumeM3) => Write(Shown.LiquidVolume, volumeM3);
    /// <summary>A temperature, from °C.</summary>
    public string Temperature(double temperatureC) => Write(Shown.Temperature, temperatureC);
    /// <summary>A difference of temperatures, from K.</summary>
    public string Difference(double differenceK) => Write(Shown.Difference, differenceK);
    /// <summary>Heat per time, from W.</summary>
    public string Power(double powerW) => Write(Shown.Power, powerW);
    /// <summary>A heater's size, from W.</summary>
    public string HeaterPower(double powerW) => Write(Shown.HeaterPower, powerW);
    /// <summary>A charge, from C.</summary>
    public string Charge(double chargeC) => Write(Shown.Charge, chargeC);
    /// <summary>A transmittance U, from W/(m²·K).</summary>
    public string Transmittance(double transmittanceWPerM2K) => Write(Shown.Transmittance, transmittanceWPerM2K);
    /// <summary>A resistance R, from m²·K/W.</summary>
    public string Resistance(double resistanceM2KPerW) => Write(Shown.Resistance, resistanceM2KPerW);
    /// <summary>A linear transmittance ψ, from W/(m·K).</summary>
    public string LinearTransmittance(double transmittanceWPerMK) => Write(Shown.LinearTransmittance, transmittanceWPerMK);
    /// <summary>A mass, from kg.</summary>
    public string Mass(double massKg) => Write(Shown.Mass, massKg);
    /// <summary>Water on an area, from kg/m².</summary>
    public string WaterPerArea(double waterKgPerM2) => Write(Shown.WaterPerArea, waterKgPerM2);
    /// <summary>Water, from kg.</summary>
    public string WaterMass(double waterKg) => Write(Shown.WaterMass, waterKg);
    /// <summary>Water per time, from kg/s.</summary>
    public string WaterFlow(double waterKgPerS) => Write(Shown.WaterFlow, waterKgPerS);
    /// <summary>A flow of air, from m³/s.</summary>
    public string AirFlow(double airM3PerS) => Write(Shown.AirFlow, airM3PerS);
    /// <summary>A share, from a fraction.</summary>
    public string Percent(double fraction) => Write(Shown.Percent, fraction);

    private FigureStyle StyleOf(Shown shown) => FigureStyle.Of(shown, Set);

    private string WithUnit(string number, Shown shown)
    {
        string unit = Unit(shown);
        return unit.Length == 0 ? number : unit == "°" ? number + unit : $"{number} {unit}";
    }

    private static string Round(double value, FigureStyle style)
    {
        int magnitude = value == 0 ? 0 : (int)Math.Floor(Math.Log10(Math.Abs(value)));
        int decimals = Math.Min(style.MostDecimals, style.SignificantDigits - 1 - magnitude);
        // Through decimal text, so that 0.15 rounds as it is written and not as it is stored; tens and hundreds by scaling.
        double scaled = decimals < 0 ? Math.Round(value / Math.Pow(10, -decimals), MidpointRounding.AwayFromZero) * Math.Pow(10, -decimals) : value;
        string text = Math.Abs(scaled).ToString("F" + Math.Max(0, decimals), CultureInfo.InvariantCulture);
        if (style.DropsZeros && text.Contains('.', StringComparison.Ordinal))
            text = text.TrimEnd('0').TrimEnd('.');
        bool isZero = text.All(letter => letter is '0' or '.');
        return (value < 0 && !isZero ? "−" : "") + Grouped(text);
    }

    // Five digits and more get a narrow space before the thousands: 12 400.
    private static string Grouped(string text)
    {
        int point = text.IndexOf('.', StringComparison.Ordinal);
        string whole = point < 0 ? text : text[..point];
        if (whole.Length < 5)
            return text;
        for (int at = whole.Length - 3; at > 0; at -= 3)
            whole = whole.Insert(at, "\u202F");
        return whole + (point < 0 ? "" : text[point..]);
    }
}
