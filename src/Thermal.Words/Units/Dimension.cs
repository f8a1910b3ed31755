using System.Globalization;

namespace Thermal.Words.Units;

/// <summary>What is measured: a length, a power; with every unit it may be written in. Conversion is done by UnitsNet.</summary>
public sealed class Dimension
{
    private readonly Func<double, Enum, Enum, double> convert;
    private readonly Lazy<Dictionary<string, Unit>> bySpelling;

    /// <param name="name">With its article, such as "a length".</param>
    /// <param name="example">How a good value looks, such as "40 mm".</param>
    /// <param name="convert">From a value and its unit to the value in another unit.</param>
    /// <param name="units">Units; the first is the one Thermal computes in.</param>
    internal Dimension(string name, string example, Func<double, Enum, Enum, double> convert, params Unit[] units)
    {
        Name = name;
        Example = example;
        Units = units;
        this.convert = convert;
        bySpelling = new(() => units.SelectMany(unit => unit.BareSpellings.Distinct().Select(bare => KeyValuePair.Create(bare, unit))).ToDictionary(StringComparer.Ordinal));
    }

    /// <summary>With its article, such as "a length".</summary>
    public string Name { get; }
    /// <summary>How a good value looks, such as "40 mm".</summary>
    public string Example { get; }
    /// <summary>The unit in <see cref="Example"/>.</summary>
    public Unit ExampleUnit => QuantityText.TrySplit(Example, this, out _, out Unit? unit) ? unit : Units[0];
    /// <summary>Units that are read; the first is the one Thermal computes in.</summary>
    public IReadOnlyList<Unit> Units { get; }
    /// <summary>True where a value may stand without a unit: counts, ratios, fractions.</summary>
    public bool MayBeBare => Units[0].Spelling.Length == 0;

    /// <summary>A value in another unit; unchanged where both are the same.</summary>
    /// <param name="value">The number beside <paramref name="from"/>.</param>
    /// <param name="from">One of <see cref="Units"/>.</param>
    /// <param name="to">One of <see cref="Units"/>.</param>
    public double Convert(double value, Unit from, Unit to) => from == to ? value : Exact(convert(value, from.Converter, to.Converter));

    /// <summary>A value in the unit that Thermal computes in.</summary>
    /// <param name="value">The number beside <paramref name="unit"/>.</param>
    /// <param name="unit">One of <see cref="Units"/>.</param>
    public double ToSi(double value, Unit unit) => Convert(value, unit, Units[0]);

    /// <summary>A value of ours in a person's unit.</summary>
    /// <param name="si">Value in the unit Thermal computes in.</param>
    /// <param name="unit">One of <see cref="Units"/>.</param>
    public double FromSi(double si, Unit unit) => Convert(si, Units[0], unit);

    /// <summary>The unit of this dimension with that spelling, or null.</summary>
    /// <param name="spelling">Any accepted spelling, such as W/mK.</param>
    public Unit? Find(string spelling) => bySpelling.Value.GetValueOrDefault(spelling) ?? bySpelling.Value.GetValueOrDefault(Unit.Bare(spelling));

    // 9 mm times 0.001 is 0.009000000000000001 in binary; fifteen digits give back the decimal that was written.
    private static double Exact(double value) => double.IsFinite(value) && value != 0
        ? double.Parse(value.ToString("E14", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture)
        : value;
}
