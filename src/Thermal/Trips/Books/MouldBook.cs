using Thermal.Air;
using Thermal.Envelope;
using Thermal.Materials;
using Thermal.Moisture;
using Thermal.Trips.Damp;
using Thermal.Trips.Heat;

namespace Thermal.Trips.Books;

/// <summary>Mould index of inner faces and of the faces between layers, by the hour.</summary>
/// <remarks>
/// The more sensitive of the two materials at a face counts; where neither can grow anything the face is left out. Humidity over water of the
/// room's vapour at an inner face, of the account's at a face between layers, at most 1. Glass and frames are left out.
/// </remarks>
internal sealed class MouldBook
{
    /// <summary>Index from which a spot is told, factor. Source: OURS, a tenth of the way to the first growth under a microscope.</summary>
    internal const double ToldFromFactor = 0.1;

    private readonly Body body;
    private readonly List<Spot> spots = [];

    /// <param name="body">The vehicle's faces.</param>
    /// <param name="accounts">Accounts of its build-ups.</param>
    internal MouldBook(Body body, IReadOnlyList<BuildUpAccount> accounts)
    {
        this.body = body;
        for (int p = 0; p < body.Parts.Length; p++)
            if (body.Parts[p].Layers is { } layers && ClassOf(layers.Layers[0]) is { } first) spots.Add(new(p, 0, null, first));
        foreach (BuildUpAccount account in accounts)
        {
            IReadOnlyList<StackLayer> layers = body.Parts[account.PartIndex].Layers!.Layers;
            for (int face = 1; face < layers.Count; face++)
                if (MoreSensitive(ClassOf(layers[face - 1]), ClassOf(layers[face])) is { } between) spots.Add(new(account.PartIndex, face, account, between));
        }
    }

    /// <summary>Takes in an hour that was closed.</summary>
    internal void Close(HourMeans means)
    {
        foreach (Spot spot in spots)
        {
            double faceC = spot.Account is null ? means.InnerC[spot.Part] : means.LayerFacesC[spot.Part][spot.Face];
            double pressurePa = spot.Account is { } account ? account.VapourAtFacePa(spot.Face) : means.VapourPa[body.Parts[spot.Part].Zone];
            spot.Take(faceC, Math.Min(1, pressurePa / SaturationPressure.OverWaterUncheckedPa(faceC)), means.Hours);
        }
    }

    /// <summary>Where growth is under way, highest index first; of a build-up the worst face between layers.</summary>
    internal IReadOnlyList<MouldTrip> Mould() => [.. spots.Where(spot => spot.Highest >= ToldFromFactor)
        .GroupBy(spot => (spot.Part, spot.Account is null)).Select(group => group.MaxBy(spot => spot.Highest)!)
        .OrderByDescending(spot => spot.Highest).ThenBy(spot => spot.Part)
        .Select(spot => new MouldTrip(NameOf(spot), body.Vehicle.Surfaces[body.Parts[spot.Part].Surface].Name, spot.Class, spot.Highest, spot.State.IndexFactor, spot.MeanHumidityFraction))];

    private string NameOf(Spot spot)
    {
        Part part = body.Parts[spot.Part];
        return spot.Account is null ? part.Name : $"{part.Name}, between {part.Layers!.Layers[spot.Face - 1].Name} and {part.Layers.Layers[spot.Face].Name}";
    }

    private static MouldClass? ClassOf(StackLayer layer) =>
        layer is SolidLayer solid ? MoreSensitive(solid.Material.MouldClass, solid.Battens?.Material.MouldClass) : null;

    /// <summary>The classes stand from very sensitive to resistant.</summary>
    private static MouldClass? MoreSensitive(MouldClass? a, MouldClass? b) => a is null ? b : b is null ? a : (MouldClass)Math.Min((int)a, (int)b);

    private sealed class Spot(int part, int face, BuildUpAccount? account, MouldClass sensitivity)
    {
        private double humidityH, countedH;

        internal int Part { get; } = part;
        internal int Face { get; } = face;
        internal BuildUpAccount? Account { get; } = account;
        internal MouldClass Class { get; } = sensitivity;
        internal MouldState State { get; private set; }
        internal double Highest { get; private set; }
        internal double MeanHumidityFraction => humidityH / countedH;

        internal void Take(double faceC, double humidityFraction, double hours)
        {
            State = MouldIndex.Next(State, faceC, humidityFraction, hours, Class);
            Highest = Math.Max(Highest, State.IndexFactor);
            humidityH += hours * humidityFraction;
            countedH += hours;
        }
    }
}
