using System.CommandLine;
using Thermal.Assessments;
using Thermal.Files;
using Thermal.Trips;

namespace Thermal.Cli.Commands;

/// <summary>Which trip is asked about, and with which vehicle.</summary>
internal static class TripOptions
{
    internal static Argument<string?> Trip() => SharedOptions.Word("TRIP", $"A trip file, or the name of a built-in trip. Left out: {TripLibrary.UsualName}.");

    /// <summary>The trip with its vehicle, or every problem in both files.</summary>
    /// <param name="trip">A path or a built-in name; null for the usual trip.</param>
    /// <param name="vehicle">A path or a built-in name; null for the vehicle the trip names.</param>
    /// <param name="climates">A folder with the person's own places; null for none.</param>
    internal static Reading<TripCase> Read(string? trip, string? vehicle, string? climates)
    {
        Reading<PlaceLibrary> places = PlacesCommand.PlacesOf(climates);
        if (places.Value is not { } library)
            return new(null, places.Problems);
        Reading<TripRequest> reading = TripLibrary.Open(trip ?? TripLibrary.UsualName, library);
        if (reading.Value is not { } request)
            return new(null, reading.Problems);
        Reading<Case> driven = VehicleLibrary.Open(vehicle ?? request.Vehicle ?? VehicleLibrary.UsualName, library);
        return driven.Value is { } asked ? new(new(asked, request.Trip), []) : new(null, driven.Problems);
    }
}
