using Thermal.Assessments;
using Thermal.Choices;
using Thermal.Files;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Cli.Json;

/// <summary>The answer of the command detail as JSON: the table, or one in full.</summary>
internal static class DetailJson
{
    internal static void All(JsonText json, Assessment found, Figures figures) => json
        .Text("vehicle", found.Case.Vehicle.Name)
        .Objects("bridges", found.Bridges, (inner, bridge) => BridgeJson.Write(inner, bridge, BridgeWords.Answer(bridge, figures)))
        .Objects("kinds", DetailExamples.All, (inner, example) => inner.Text("kind", example.Kind).Choice<DetailList>("list", example.List).Text("example", example.Text))
        .Texts("limits", BridgeMethod.Limits);

    internal static void One(JsonText json, string? vehicle, BridgeAnswer bridge, string answer, StripTable? strips, FillingTable? fillings, Figures figures)
    {
        json.Text("vehicle", vehicle)
            .Object("bridge", inner => BridgeJson.Write(inner, bridge, answer))
            .Text("reason", BridgeWords.Why(bridge, figures));
        if (strips is null)
            json.Text("strips", null);
        else
            json.Object("strips", inner => BridgeJson.Strips(inner, strips, figures));
        if (fillings is null)
            json.Text("fillings", null);
        else
            json.Object("fillings", inner => BridgeJson.Fillings(inner, fillings, figures));
        json.Texts("method", bridge.Solved is { } solved ? [BridgeWords.Factors(solved, figures), BridgeMethod.Of(solved, bridge.InsideC - bridge.OutsideC, figures), BridgeMethod.Air(bridge, figures)] : [])
            .Texts("limits", BridgeMethod.Limits);
    }
}
