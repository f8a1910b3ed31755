using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
using YamlDotNet.RepresentationModel;

namespace Thermal.Files.Tests.Vehicles;

/// <summary>The schema that editors get agrees with what is read.</summary>
public sealed class SchemaTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(VehicleSchema.Json());

    public static TheoryData<string> Texts => [.. VehicleLibrary.Names.Select(name => VehicleLibrary.Text(name)!), VehicleFile.Starter(), DetailVan.Text, VehicleFile.Write(VehicleLibrary.Find("library-van")!)];

    [Theory, MemberData(nameof(Texts))]
    public void Every_vehicle_that_is_read_fits_the_schema(string text)
    {
        Assert.Empty(VehicleFile.Read(text, "van.yaml").Problems);
        EvaluationResults results = Schema.Evaluate(JsonSerializer.SerializeToElement(JsonOf(text)), new EvaluationOptions { OutputFormat = OutputFormat.List });
        Assert.True(results.IsValid, string.Join('\n', (results.Details ?? []).Where(detail => detail.Errors is not null).SelectMany(detail => detail.Errors!.Select(error => $"{detail.InstanceLocation}: {error.Value}"))));
    }

    /// <summary>An example that would be refused teaches nonsense.</summary>
    [Fact]
    public void Every_example_of_a_quantity_fits_its_own_pattern_and_limits()
    {
        int count = 0;
        foreach (JsonObject value in Objects(JsonNode.Parse(VehicleSchema.Json())!).Where(value => value["pattern"] is not null && value["examples"] is JsonArray))
        {
            string example = value["examples"]![0]!.GetValue<string>();
            Assert.Matches(value["pattern"]!.GetValue<string>(), example);
            if (value["minimum"] is { } lowest && double.TryParse(example, System.Globalization.CultureInfo.InvariantCulture, out double number))
                Assert.InRange(number, lowest.GetValue<double>(), value["maximum"]!.GetValue<double>());
            count++;
        }
        Assert.InRange(count, 50, 500); // there are some eighty kinds of value; none found would prove nothing
    }

    private static IEnumerable<JsonObject> Objects(JsonNode node) => node switch
    {
        JsonArray array => array.OfType<JsonNode>().SelectMany(Objects),
        JsonObject map => map.Select(pair => pair.Value).OfType<JsonNode>().SelectMany(Objects).Append(map),
        _ => [],
    };

    [Theory]
    [InlineData("thickness: 25 mm", "thickness: 25")]
    [InlineData("thickness: 25 mm", "thicknes: 25 mm")]
    [InlineData("lining: taped", "lining: tapped")]
    [InlineData("sleepers: 2", "sleepers: 13")]
    [InlineData("format: 1", "format: 2")]
    public void What_is_refused_does_not_fit_the_schema(string old, string bad)
    {
        string text = VehicleLibrary.Text("weekend-van")!.Replace(old, bad, StringComparison.Ordinal);
        Assert.NotEmpty(VehicleFile.Read(text, "van.yaml").Problems);
        Assert.False(Schema.Evaluate(JsonSerializer.SerializeToElement(JsonOf(text))).IsValid);
    }

    [Fact]
    public void Every_key_of_the_schema_is_one_that_is_read_and_has_a_description()
    {
        List<string> keys = [];
        Collect(JsonNode.Parse(VehicleSchema.Json())!, keys);
        Assert.Contains("given_for", keys);
        Assert.Contains("wheel_arches", keys);
        Assert.All(keys, key => Assert.Matches("^[a-z][a-z0-9_]*$", key));
        // A key the reader does not know is offered the nearest; one it knows never is. The reader is asked at the root.
        JsonObject root = JsonNode.Parse(VehicleSchema.Json())!["properties"]!.AsObject();
        Assert.All(root, property => Assert.DoesNotContain(VehicleFile.Read($"{property.Key}: 1", "x").Problems, problem => problem.What.Contains("no such key", StringComparison.Ordinal)));
    }

    /// <summary>What editors offer under ribs, bolts and edges is what the reader knows there, and nothing else.</summary>
    [Theory]
    [InlineData("surfaces: [{{ribs: [{{{0}: x}}]}}]", "surfaces/items/properties/ribs/items/properties", 22)]
    [InlineData("surfaces: [{{bolts: [{{{0}: x}}]}}]", "surfaces/items/properties/bolts/items/properties", 12)]
    [InlineData("surfaces: [{{openings: [{{edge: {{{0}: x}}}}]}}]", "surfaces/items/properties/openings/items/properties/edge/properties", 10)]
    [InlineData("surfaces: [{{ribs: [{{over: {{{0}: x}}}}]}}]", "surfaces/items/properties/ribs/items/properties/over/properties", 3)]
    public void Every_key_offered_for_a_detail_is_known_to_the_reader(string text, string path, int count)
    {
        JsonNode keys = path.Split('/').Aggregate(JsonNode.Parse(VehicleSchema.Json())!["properties"]!, (node, step) => node[step]!);
        Assert.Equal(count, keys.AsObject().Count);
        Assert.All(keys.AsObject(), key => Assert.DoesNotContain(Problems(key.Key), problem => problem.What.Contains("no such key", StringComparison.Ordinal)));
        Assert.Contains(Problems("xyzzy"), problem => problem.What.Contains("no such key", StringComparison.Ordinal) && keys.AsObject().Take(12).All(key => problem.What.Contains(key.Key, StringComparison.Ordinal)));

        IReadOnlyList<Problem> Problems(string key) => VehicleFile.Read(string.Format(System.Globalization.CultureInfo.InvariantCulture, text, key), "x").Problems;
    }

    private static void Collect(JsonNode node, List<string> keys)
    {
        if (node is JsonArray array)
        {
            foreach (JsonNode? item in array.Where(item => item is JsonObject))
                Collect(item!, keys);
        }
        else if (node is JsonObject map)
        {
            if (map["properties"] is JsonObject properties)
                foreach ((string key, JsonNode? value) in properties)
                {
                    keys.Add(key);
                    Assert.False(string.IsNullOrWhiteSpace(value!["description"]?.GetValue<string>()), $"{key} has no description.");
                }
            foreach ((string _, JsonNode? value) in map.Where(pair => pair.Value is not null))
                Collect(value!, keys);
        }
    }

    private static JsonNode JsonOf(string text)
    {
        var stream = new YamlStream();
        stream.Load(new StringReader(text));
        return Converted(stream.Documents[0].RootNode)!;
    }

    private static JsonNode? Converted(YamlNode node) => node switch
    {
        YamlMappingNode map => new JsonObject(map.Children.Select(pair => KeyValuePair.Create(((YamlScalarNode)pair.Key).Value!, Converted(pair.Value)))),
        YamlSequenceNode list => new JsonArray([.. list.Children.Select(Converted)]),
        YamlScalarNode { Style: YamlDotNet.Core.ScalarStyle.Plain, Value: { } value } when double.TryParse(value, System.Globalization.CultureInfo.InvariantCulture, out double number) => JsonValue.Create(number),
        YamlScalarNode { Style: YamlDotNet.Core.ScalarStyle.Plain, Value: "true" or "false" } flag => JsonValue.Create(flag.Value == "true"),
        YamlScalarNode scalar => JsonValue.Create(scalar.Value),
        _ => throw new InvalidOperationException("Unknown node."),
    };
}
