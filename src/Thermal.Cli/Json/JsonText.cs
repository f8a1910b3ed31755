using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using Thermal.Assessments;
using Thermal.Materials;

namespace Thermal.Cli.Json;

/// <summary>Writes one JSON document, key by key: no reflection, numbers to the last bit.</summary>
/// <remarks>A number that is not one is refused by the writer: it must not reach a reader as text.</remarks>
internal sealed class JsonText(Utf8JsonWriter writer)
{
    /// <summary>Writes a document with one object at its top.</summary>
    internal static void Write(TextWriter target, Action<JsonText> content)
    {
        using var stream = new MemoryStream();
        using (var writer = new Utf8JsonWriter(stream, new JsonWriterOptions { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            writer.WriteStartObject();
            content(new JsonText(writer));
            writer.WriteEndObject();
        }
        target.WriteLine(System.Text.Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length));
    }

    internal JsonText Text(string key, string? value)
    {
        writer.WriteString(key, value);
        return this;
    }

    internal JsonText Texts(string key, IEnumerable<string> values)
    {
        writer.WriteStartArray(key);
        foreach (string value in values)
            writer.WriteStringValue(value);
        writer.WriteEndArray();
        return this;
    }

    internal JsonText Number(string key, double? value)
    {
        if (value is { } number)
            writer.WriteNumber(key, number);
        else
            writer.WriteNull(key);
        return this;
    }

    internal JsonText Numbers(string key, IEnumerable<double> values)
    {
        writer.WriteStartArray(key);
        foreach (double value in values)
            writer.WriteNumberValue(value);
        writer.WriteEndArray();
        return this;
    }

    /// <summary>Numbers with null where there is none.</summary>
    internal JsonText NumbersOrNull(string key, IEnumerable<double?> values)
    {
        writer.WriteStartArray(key);
        foreach (double? value in values)
            if (value is { } number)
                writer.WriteNumberValue(number);
            else
                writer.WriteNullValue();
        writer.WriteEndArray();
        return this;
    }

    /// <summary>A moment of local standard time; null where there is none.</summary>
    internal JsonText Local(string key, DateTime? at) => Text(key, at?.ToString("yyyy-MM-ddTHH:mm:ss", CultureInfo.InvariantCulture));

    internal JsonText Truth(string key, bool value)
    {
        writer.WriteBoolean(key, value);
        return this;
    }

    /// <summary>The name of a choice in snake_case.</summary>
    internal JsonText Choice<T>(string key, T? value) where T : struct, Enum =>
        Text(key, value is { } choice ? JsonNamingPolicy.SnakeCaseLower.ConvertName(choice.ToString()) : null);

    internal JsonText Between(string key, Between value) =>
        Object(key, inner => inner.Number("low", value.Low).Number("value", value.Value).Number("high", value.High));

    internal JsonText Bounded(string key, Bounded? value) => value is null ? Text(key, null) : Object(key, inner => inner
        .Number("low", value.Low).Number("value", value.Value).Number("high", value.High).Text("source", value.Source).Text("place", value.Place));

    internal JsonText Object(string key, Action<JsonText> content)
    {
        writer.WriteStartObject(key);
        content(this);
        writer.WriteEndObject();
        return this;
    }

    internal JsonText Objects<T>(string key, IEnumerable<T> items, Action<JsonText, T> content)
    {
        writer.WriteStartArray(key);
        foreach (T item in items)
        {
            writer.WriteStartObject();
            content(this, item);
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
        return this;
    }
}
