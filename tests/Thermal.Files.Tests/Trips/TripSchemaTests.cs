using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
using YamlDotNet.RepresentationModel;

namespace Thermal.Files.Tests.Trips;

/// <summary>What editors are told of trip files is what the reader takes.</summary>
public sealed class TripSchemaTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(TripSchema.Json());

    public static TheoryData<string> Names => [.. TripLibrary.Names];

    [Theory, MemberData(nameof(Names))]
    public void A_built_in_trip_fits_the_schema(string name) => Assert.True(Fits(TripLibrary.Text(name)!));

    [Theory]
    [InlineData("people: 0", "people: 13")]
    [InlineData("day: off", "day: of")]
    [InlineData("lasts: 4 h", "lasts: 4")]
    [InlineData("start: 2026-01-10 20:00", "start: tomorrow")]
    [InlineData("name: holding", "title: holding")]
    [InlineData("format: 1", "format: 2")]
    public void What_the_reader_refuses_does_not_fit_either(string old, string bad)
    {
        string text = TripLibrary.Text("cold-chamber")!.Replace(old, bad, StringComparison.Ordinal);
        Assert.NotEmpty(TripFile.Read(text, "trip.yaml").Problems);
        Assert.False(Fits(text));
    }

    /// <summary>Counted in the tables by hand: 11 keys of a trip, 16 of a leg, 19 of habits; every one has words.</summary>
    [Fact]
    public void Every_key_has_a_description()
    {
        JsonNode root = JsonNode.Parse(TripSchema.Json())!["properties"]!;
        JsonObject[] maps = [root.AsObject(), root["legs"]!["items"]!["properties"]!.AsObject(), root["habits"]!["properties"]!.AsObject(), root["legs"]!["items"]!["properties"]!["habits"]!["properties"]!.AsObject()];
        Assert.Equal([11, 16, 19, 19], maps.Select(map => map.Count));
        Assert.All(maps.SelectMany(map => map), key => Assert.False(string.IsNullOrWhiteSpace(key.Value!["description"]?.GetValue<string>()), key.Key));
    }

    [Fact]
    public void A_default_is_told_where_the_whole_trip_has_it_and_not_on_a_leg()
    {
        JsonNode root = JsonNode.Parse(TripSchema.Json())!["properties"]!;
        Assert.EndsWith("When left out: 22:30.", root["habits"]!["properties"]!["bedtime"]!["description"]!.GetValue<string>());
        Assert.DoesNotContain("When left out", root["legs"]!["items"]!["properties"]!["habits"]!["properties"]!["bedtime"]!["description"]!.GetValue<string>());
    }

    private static bool Fits(string text)
    {
        var stream = new YamlStream();
        stream.Load(new StringReader(text));
        return Schema.Evaluate(JsonSerializer.SerializeToElement(Converted(stream.Documents[0].RootNode))).IsValid;
    }

    private static JsonNode? Converted(YamlNode node) => node switch
    {
        YamlMappingNode map => new JsonObject(map.Children.Select(pair => KeyValuePair.Create(((YamlScalarNode)pair.Key).Value!, Converted(pair.Value)))),
        YamlSequenceNode list => new JsonArray([.. list.Children.Select(Converted)]),
        YamlScalarNode { Value: { } value } when double.TryParse(value, System.Globalization.CultureInfo.InvariantCulture, out double number) => JsonValue.Create(number),
        YamlScalarNode { Value: "true" or "false" } flag => JsonValue.Create(flag.Value == "true"),
        YamlScalarNode scalar => JsonValue.Create(scalar.Value),
        _ => throw new InvalidOperationException("Unknown node."),
    };
}
