using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Thermal.Files.Yaml;
using Thermal.Materials;
using YamlDotNet.RepresentationModel;

namespace Thermal.Files.Keys;

/// <summary>A value that may be given alone or with the span it lies in: {usual, low, high}.</summary>
internal sealed class SpanNode : Node<Bounded>
{
    private static readonly Bounded Plain = Bounded.Stated(0);
    private readonly Node<double> single;
    private readonly Map<Bounded> span;

    internal SpanNode(Node<double> single)
    {
        this.single = single;
        Field<Bounded, double> usual = new("usual", "The value to use.", single, value => value.Value) { IsRequired = true };
        Field<Bounded, double> low = new("low", "The lowest it may be.", single, value => value.Low) { IsRequired = true };
        Field<Bounded, double> high = new("high", "The highest it may be.", single, value => value.High) { IsRequired = true };
        Field<Bounded, string> source = new("source", "Key of the project's source list.", SourceKey, value => value.Source) { Default = Plain.Source };
        Field<Bounded, string> note = new("note", "Where it comes from, such as a data sheet.", new TextNode(300), value => value.Place) { Default = Plain.Place };
        span = new("a value with its span", [usual, low, high, source, note], values =>
        {
            var read = new Bounded(values.Of(low), values.Of(usual), values.Of(high), values.Of(source), values.Of(note));
            if (read.Low <= read.Value && read.Value <= read.High)
                return read;
            values.Spot.Problem("low must not exceed usual, nor usual exceed high; write the smallest as low and the largest as high");
            return null;
        }) { IsShort = true };
    }

    private static ChoiceNode<string> SourceKey { get; } = new([.. Sources.All.Select(source => source.Key)], [.. Sources.All.Select(source => source.Key)]);

    internal override bool TryRead(Spot spot, [MaybeNullWhen(false)] out Bounded value)
    {
        if (spot.Node is WrittenMap)
            return span.TryRead(spot, out value);
        value = single.TryRead(spot, out double stated) ? Bounded.Stated(stated) : null;
        return value is not null;
    }

    internal override YamlNode Write(Bounded value) => value == Bounded.Stated(value.Value) ? single.Write(value.Value) : span.Write(value);

    internal override JsonObject Schema() => new() { ["anyOf"] = new JsonArray(single.Schema(), span.Schema()) };
}

/// <summary>A word that stands for a value, or the value itself.</summary>
/// <typeparam name="T">What either becomes.</typeparam>
/// <param name="words">The words.</param>
/// <param name="value">How the value is read.</param>
internal sealed class WordOrNode<T>(ChoiceNode<T> words, Node<T> value) : Node<T>
{
    internal override bool TryRead(Spot spot, [MaybeNullWhen(false)] out T read) =>
        spot.Node is WrittenScalar { Text: { Length: > 0 } text } && char.IsLetter(text.Trim().FirstOrDefault())
            ? words.TryRead(spot, out read)
            : value.TryRead(spot, out read);

    internal override YamlNode Write(T written) => words.Knows(written) ? words.Write(written) : value.Write(written);

    internal override JsonObject Schema() => new() { ["anyOf"] = new JsonArray(words.Schema(), value.Schema()) };
}
