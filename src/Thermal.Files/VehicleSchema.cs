using System.Text.Json;
using System.Text.Json.Nodes;
using Thermal.Files.VehicleKeys;

namespace Thermal.Files;

/// <summary>The JSON Schema of vehicle files, for editors; made from the same table that reads them.</summary>
public static class VehicleSchema
{
    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true, Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The schema, indented, ending with a line feed.</summary>
    public static string Json()
    {
        JsonObject schema = CaseKeys.Map.Schema();
        schema["$defs"] = new JsonObject { [MaterialNode.SchemaName] = MaterialNode.SharedSchema() };
        return Text(schema, "Thermal vehicle file, format 1");
    }

    /// <summary>A schema with its heading as indented text.</summary>
    internal static string Text(JsonObject schema, string title)
    {
        schema.Insert(0, "$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.Insert(1, "title", title);
        return schema.ToJsonString(Indented).ReplaceLineEndings("\n") + "\n";
    }
}
