using System.Text.Json.Nodes;
using Thermal.Files.TripKeys;

namespace Thermal.Files;

/// <summary>The JSON Schema of trip files, for editors; made from the same table that reads them.</summary>
public static class TripSchema
{
    /// <summary>The schema, indented, ending with a line feed.</summary>
    public static string Json() => VehicleSchema.Text(TripTable.Map.Schema(), "Thermal trip file, format 1");
}
