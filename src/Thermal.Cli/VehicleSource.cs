using Thermal.Assessments;
using Thermal.Cli.Commands;
using Thermal.Files;

namespace Thermal.Cli;

/// <summary>Finds the vehicle a command is asked about: a file of the person's, or one that is built in.</summary>
internal static class VehicleSource
{
    /// <summary>The case, or every problem in the file and in the person's place files.</summary>
    /// <param name="file">A path or a built-in name; null for the usual vehicle.</param>
    /// <param name="climates">A folder with the person's own places; null for none.</param>
    internal static Reading<Case> Read(string? file, string? climates)
    {
        Reading<PlaceLibrary> places = PlacesCommand.PlacesOf(climates);
        return places.Value is { } library
            ? VehicleLibrary.Open(file ?? VehicleLibrary.UsualName, library)
            : new(null, places.Problems);
    }
}
