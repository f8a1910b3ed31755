using System.Globalization;
using System.Text.Json.Nodes;
using Thermal.Files.Yaml;
using Thermal.Words.Units;
using YamlDotNet.RepresentationModel;

namespace Thermal.Files.Keys;

/// <summary>A number with its unit.</summary>
/// <param name="dimension">What it measures.</param>
/// <param name="unit">The unit the record holds.</param>
/// <param name="lowest">Lowest value, in that unit.</param>
/// <param name="highest">Highest value, in that unit; tight enough that a factor of 1000 falls outside where that can be.</param>
/// <param name="shownIn">The unit a person of the trade would write; that of the record where left out.</param>
internal sealed class QuantityNode(Dimension dimension, string unit, double lowest, double highest, string? shownIn = null) : Node<double>
{
    private readonly string wanted = $"{dimension.Name} such as {dimension.Example}";
    private readonly Unit kept = dimension.Find(unit)!;
    private readonly Unit shown = dimension.Find(shownIn ?? unit)!;

    /// <summary>True where a value just above zero is wanted: the lowest itself is not taken then.</summary>
    internal bool IsAboveLowest { get; init; }

    /// <summary>What editors show as an example; found from dimension and range where left out.</summary>
    internal string? Typical { get; init; }

    internal override bool TryRead(Spot spot, out double value)
    {
        value = double.NaN;
        if (spot.Text(wanted) is not { } text)
            return false;
        if (!QuantityText.TryRead(text, dimension, kept, out value, out string wrong))
        {
            spot.Problem(wrong);
            return false;
        }
        return IsInside(spot, text, value);
    }

    /// <summary>True where a value read elsewhere lies in the range too; else a problem was added.</summary>
    internal bool IsInside(Spot spot, double value) => IsInside(spot, spot.Node is WrittenScalar written ? written.Text.Trim() : TextOf(value), value);

    private bool IsInside(Spot spot, string text, double value)
    {
        if (IsIn(value))
            return true;
        spot.Problem($"{text} {Outside(text, value)}");
        return false;
    }

    internal override YamlNode Write(double value) => new YamlScalarNode(TextOf(value));

    internal override JsonObject Schema()
    {
        string number = "[-+−]?(0|[1-9][0-9]*)(\\.[0-9]+)?([eE][-+]?[0-9]+)?";
        JsonObject schema = dimension.MayBeBare
            ? new() { ["type"] = new JsonArray("number", "string"), ["pattern"] = dimension.Units.Count > 1 ? $"^{number} *\\S*$" : $"^{number}$" }
            : new() { ["type"] = "string", ["pattern"] = $"^{number}[ \\u00A0\\u202F]*([^0-9 .,]|1/).*$" };
        schema["examples"] = new JsonArray(Typical ?? Example());
        if (dimension.MayBeBare)
            (schema["minimum"], schema["maximum"]) = (lowest, highest);
        return schema;
    }

    /// <summary>The shortest text that is read as exactly this value, in the trade's unit if that can be.</summary>
    internal string TextOf(double value)
    {
        foreach (Unit candidate in new[] { shown, kept })
        {
            string text = Text(dimension.Convert(value, kept, candidate), candidate);
            if (QuantityText.TryRead(text, dimension, kept, out double back, out _) && back.Equals(value))
                return text;
        }
        throw new ArgumentOutOfRangeException(nameof(value), value, $"{dimension.Name} must be finite to be written.");
    }

    // That of the dimension where it is written in the same unit and fits; else a round value between the limits.
    private string Example()
    {
        if (dimension.ExampleUnit == shown && QuantityText.TryRead(dimension.Example, dimension, kept, out double usual, out _) && IsIn(usual))
            return dimension.Example;
        double middle = dimension.Convert(lowest > 0 ? Math.Sqrt(lowest * highest) : highest / 10, kept, shown);
        double step = Math.Pow(10, Math.Floor(Math.Log10(middle)));
        return Text(double.Parse((Math.Round(middle / step) * step).ToString("G3", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture), shown);
    }

    private bool IsIn(double value) => (IsAboveLowest ? value > lowest : value >= lowest) && value <= highest;

    private string Outside(string text, double value)
    {
        string limits = $"is outside {Text(dimension.Convert(lowest, kept, shown), shown)} to {Text(dimension.Convert(highest, kept, shown), shown)}";
        if (value <= 0 && lowest >= 0)
            return value < 0 ? $"is negative; write a value from {limits["is outside ".Length..]}" : $"is zero; write a value {(IsAboveLowest ? "above zero, " : "")}from {limits["is outside ".Length..]}";
        if (!QuantityText.TrySplit(text, dimension, out double number, out Unit? written))
            return limits;
        Unit? meant = dimension.Units.FirstOrDefault(other => other != written && IsIn(dimension.Convert(number, other, kept)));
        meant = shown != written && IsIn(dimension.Convert(number, shown, kept)) ? shown : meant;
        return meant is null ? limits : $"{limits}; is {Text(number, meant)} meant?";
    }

    private static string Text(double number, Unit unit) =>
        (number.ToString(CultureInfo.InvariantCulture) + (unit.Spelling is "" or "%" or "°" ? unit.Spelling is "%" ? " %" : unit.Spelling : " " + unit.Spelling)).Replace("−", "-", StringComparison.Ordinal);
}
