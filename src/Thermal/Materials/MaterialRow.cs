using System.Globalization;
using CsvHelper;

namespace Thermal.Materials;

/// <summary>The row of a table of materials that the reader stands on; every cell taken from it is checked.</summary>
internal readonly struct MaterialRow(CsvReader reader, string fileName)
{
    internal InvalidDataException Fault(int column, string what) =>
        new($"{fileName}:{reader.LineNumber}: {reader.GetString(0)}: {MaterialTable.Columns[column]} {what}.");

    internal string Optional(int column) => reader.GetString(column);

    internal string Text(int column) => reader.IsEmpty(column) ? throw Fault(column, "must not be empty") : reader.GetString(column);

    internal Bounded? Figure(int first, double min, double max) => Span(first, first + 3, min, max);

    /// <summary>Low, value and high from the first column on, source and place from the source column on; null where all are empty.</summary>
    internal Bounded? Span(int first, int source, double min, double max)
    {
        if (reader.IsEmpty(first) && reader.IsEmpty(first + 1) && reader.IsEmpty(first + 2) && reader.IsEmpty(source) && reader.IsEmpty(source + 1))
        {
            return null;
        }
        double low = Number(first, min, max), value = Number(first + 1, low, max), high = Number(first + 2, value, max);
        string key = Text(source);
        return Sources.Knows(key)
            ? new Bounded(low, value, high, key, Text(source + 1))
            : throw Fault(source, $"is '{key}', which the list of sources does not have");
    }

    internal IReadOnlyList<double> Lengths(int column, double metres)
    {
        if (reader.IsEmpty(column))
        {
            return [];
        }
        string[] cells = reader.GetString(column).Split(';');
        double[] lengths = new double[cells.Length];
        for (int i = 0; i < cells.Length; i++)
        {
            bool isLength = double.TryParse(cells[i], NumberStyles.Float, CultureInfo.InvariantCulture, out double length);
            lengths[i] = length * metres;
            if (!isLength || !(lengths[i] >= 1e-6 && lengths[i] <= 1) || (i > 0 && lengths[i] <= lengths[i - 1]))
            {
                throw Fault(column, $"holds '{cells[i]}'; lengths must be numbers, ascending, 0.001 mm to 1 m");
            }
        }
        return lengths;
    }

    internal MaterialGroup Group(int column) => Text(column) switch
    {
        "metal" => MaterialGroup.Metal,
        "plastic" => MaterialGroup.Plastic,
        "wood" => MaterialGroup.Wood,
        "foam" => MaterialGroup.Foam,
        "wool" => MaterialGroup.Wool,
        "covering" => MaterialGroup.Covering,
        "film" => MaterialGroup.Film,
        "pane" => MaterialGroup.Pane,
        "fluid" => MaterialGroup.Fluid,
        string other => throw Fault(column, $"is '{other}'; metal, plastic, wood, foam, wool, covering, film, pane and fluid are known"),
    };

    internal MouldClass? MouldClass(int column) => Optional(column) switch
    {
        "" => null,
        "very_sensitive" => Materials.MouldClass.VerySensitive,
        "sensitive" => Materials.MouldClass.Sensitive,
        "medium_resistant" => Materials.MouldClass.MediumResistant,
        "resistant" => Materials.MouldClass.Resistant,
        string other => throw Fault(column, $"is '{other}'; very_sensitive, sensitive, medium_resistant and resistant are known"),
    };

    private double Number(int column, double min, double max) =>
        double.TryParse(reader.GetSpan(column), NumberStyles.Float, CultureInfo.InvariantCulture, out double number) && number >= min && number <= max
            ? number
            : throw Fault(column, string.Create(CultureInfo.InvariantCulture, $"is '{reader.GetString(column)}'; it must be a number from {min} to {max}"));
}
