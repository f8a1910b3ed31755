using System.Runtime.InteropServices;
using Thermal.Air;
using Thermal.Envelope;

namespace Thermal.Zones;

/// <summary>A vehicle as its zones see it in one wind: every way heat takes and every cold place. Found once, used for every night and month.</summary>
public sealed class Shell
{
    /// <summary>Air that gets behind furniture and bedding, m³ per m² and hour. Source: OURS.</summary>
    public const double AirBehindThingsM3PerM2H = 1;

    private readonly List<HeatPath> paths;
    private readonly List<ColdPlace> places;
    private readonly double windMPerS, roomDensityKgPerM3;

    private Shell(Vehicle vehicle, double windMPerS, double roomDensityKgPerM3)
    {
        Vehicle = vehicle;
        (paths, places) = ([], []);
        this.windMPerS = windMPerS;
        this.roomDensityKgPerM3 = roomDensityKgPerM3;
        LinkEnds = [.. vehicle.Links.Select(link => (IndexOf(link.From), IndexOf(link.To)))];
        foreach (Surface surface in vehicle.Surfaces) Add(surface);
        foreach (ZoneLink link in vehicle.Links)
            if (link.State == LinkState.Closed)
                paths.Add(new("curtain or door to the " + link.To, "", PathKind.Passage, IndexOf(link.From), IndexOf(link.To), link.AreaM2,
                    link.AreaM2 / (link.ResistanceM2KPerW.Value + 2 * SurfaceResistance.InsideM2KPerW(FlowDirection.Horizontal)), 0));
    }

    private Shell(Shell other)
    {
        (Vehicle, windMPerS, roomDensityKgPerM3, LinkEnds) = (other.Vehicle, other.windMPerS, other.roomDensityKgPerM3, other.LinkEnds);
        (paths, places) = ([.. other.paths], [.. other.places]);
    }

    /// <summary>Ways heat takes, air exchange left out.</summary>
    public IReadOnlyList<HeatPath> Paths => paths;

    /// <summary>The same list without the cost of an interface, for the rounds of the balance.</summary>
    internal ReadOnlySpan<HeatPath> PathSpan => CollectionsMarshal.AsSpan(paths);

    /// <summary>Cold places.</summary>
    public IReadOnlyList<ColdPlace> Places => places;

    /// <summary>The same list without the cost of an interface.</summary>
    internal ReadOnlySpan<ColdPlace> PlaceSpan => CollectionsMarshal.AsSpan(places);

    /// <summary>Zones that each passage joins, in the vehicle's order of passages.</summary>
    internal (int From, int To)[] LinkEnds { get; }

    /// <summary>The vehicle.</summary>
    public Vehicle Vehicle { get; }

    /// <summary>Finds paths and places.</summary>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="windMPerS">Wind, m/s, 0 to 40.</param>
    /// <param name="roomDensityKgPerM3">Density of the room's air, kg/m³, 0.3 to 2.</param>
    /// <exception cref="InvalidOperationException">A described rib, bolt or edge that was not solved.</exception>
    public static Shell Of(Vehicle vehicle, double windMPerS, double roomDensityKgPerM3) =>
        new(vehicle, windMPerS, Guard.InRange(roomDensityKgPerM3, 0.3, 2, "kg/m³"));

    /// <summary>True where this is what <see cref="Of"/> would find again.</summary>
    internal bool HoldsFor(Vehicle vehicle, double wind, double roomDensity) =>
        ReferenceEquals(Vehicle, vehicle) && windMPerS == wind && roomDensityKgPerM3 == roomDensity;

    /// <summary>The same shell with another cover on one opening, or none.</summary>
    internal Shell WithCover(Surface surface, Opening opening, Covering? covering)
    {
        OpeningTransmittance found = OpeningTransmittance.Of(opening, covering, surface.TiltDeg, SurfaceResistance.InsideM2KPerW(surface.Direction), surface.OutsideFilmM2KPerW(windMPerS));
        Shell changed = new(this);
        for (int i = 0; i < paths.Count; i++)
            if (paths[i] is { Kind: PathKind.Opening } path && path.Panel == surface.Name && path.Name == opening.Name)
                changed.paths[i] = path with { CoefficientWPerK = found.MeanUWPerM2K * opening.AreaM2 };
        for (int i = 0; i < places.Count; i++)
            if (places[i] is { } place && place.Panel == surface.Name && place.Opening == opening.Name && place.Kind != SurfaceKind.Bridge)
                changed.places[i] = place with { InUse = place.Cover == covering?.Name };
        return changed;
    }

    /// <summary>How much colder than the air the outside of a panel acts, per kelvin that the sky is below the air.</summary>
    /// <param name="surface">The panel.</param>
    /// <param name="windMPerS">Wind, m/s, 0 to 40.</param>
    public static double SkyShareRatio(Surface surface, double windMPerS) =>
        surface.Outside == OuterSide.Air ? SurfaceResistance.SkyChillK(windMPerS, surface.TiltDeg, 1) : 0;

    private int IndexOf(string zone)
    {
        for (int i = 0; i < Vehicle.Zones.Count; i++)
            if (Vehicle.Zones[i].Name == zone) return i;
        throw new ArgumentException($"There is no zone called {zone}.", nameof(zone));
    }

    private void Add(Surface surface)
    {
        int zone = IndexOf(surface.Zone), other = surface.Outside == OuterSide.OtherZone ? IndexOf(surface.OtherZone ?? $"(none given for {surface.Name})") : -1;
        double inside = SurfaceResistance.InsideM2KPerW(surface.Direction), outside = surface.OutsideFilmM2KPerW(windMPerS);
        double sky = SkyShareRatio(surface, windMPerS), opaque = surface.OpaqueAreaM2;
        if (opaque < -1e-9) throw new ArgumentException($"The openings of {surface.Name} are larger than the panel.", nameof(surface));
        double still = AirBehindThingsM3PerM2H / 3600 * roomDensityKgPerM3;
        double bare = SurfaceResistance.InsideConvectiveWPerM2K(surface.Direction) / MoistAir.DryAirSpecificHeatJPerKgK;
        double covered = 0;
        foreach (Against thing in surface.Against)
        {
            covered += thing.AreaFraction;
            Part($"{surface.Name}, behind {thing.Name}", SurfaceKind.Behind, thing.AreaFraction * opaque, thing.AddedResistanceM2KPerW, 1 / (1 / still + 1 / bare));
        }
        if (covered < 1) Part(surface.Name, SurfaceKind.Bare, (1 - covered) * opaque, 0, bare);
        AddLining(surface, zone, other, inside, outside, sky);
        foreach (LinearBridge rib in surface.Ribs) Bridge(rib.Name, rib.LossWPerK, rib.ColdestFactor, rib.MouldFactor);
        foreach (PointBridge bolt in surface.Bolts) Bridge(bolt.Name, bolt.LossWPerK, bolt.ColdestFactor, bolt.MouldFactor);
        foreach (Opening opening in surface.Openings) AddOpening(surface, opening, zone, other, inside, outside, sky, bare);

        void Part(string name, SurfaceKind kind, double area, double added, double transferKgPerM2S)
        {
            if (area <= 0) return;
            double u = Transmittance.Of(surface.Stack, surface.Direction, inside + added, outside).UWPerM2K;
            double mould = Transmittance.Of(surface.Stack, surface.Direction, SurfaceResistance.MouldOpaqueM2KPerW + added, outside).UWPerM2K;
            paths.Add(new(name, surface.Name, PathKind.Panel, zone, other, area, u * area, sky));
            places.Add(new(name, surface.Name, null, null, kind, true, zone, other, area,
                1 - u * (inside + added), 1 - mould * (SurfaceResistance.MouldOpaqueM2KPerW + added), sky, transferKgPerM2S * area));
        }

        void Bridge(string name, double coefficient, double? factor, double? mouldFactor)
        {
            paths.Add(new($"{surface.Name}, {name}", surface.Name, PathKind.Bridge, zone, other, 0, coefficient, sky));
            if (factor is { } share)
                places.Add(new($"{surface.Name}, {name}", surface.Name, null, null, SurfaceKind.Bridge, true, zone, other, 0, share, mouldFactor ?? share, sky, 0));
        }
    }

    private void AddLining(Surface surface, int zone, int other, double inside, double outside, double sky)
    {
        int face = surface.Stack.FaceAirReaches(surface.LiningFit);
        if (face == 0 || surface.AirBehindLiningM3PerM2H.Value == 0 || surface.OpaqueAreaM2 <= 0) return;
        StackTransmittance found = Transmittance.Of(surface.Stack, surface.Direction, inside, outside);
        double share = FaceTemperatures.AtFacesC(found, 1, 0)[face];
        places.Add(new($"{surface.Name}, behind the lining", surface.Name, null, null, SurfaceKind.BehindLining, true, zone, other,
            surface.OpaqueAreaM2, share, share, sky, surface.AirBehindLiningM3PerM2H.Value / 3600 * roomDensityKgPerM3 * surface.OpaqueAreaM2));
    }

    private void AddOpening(Surface surface, Opening opening, int zone, int other, double inside, double outside, double sky, double bare)
    {
        double mouldFilm = opening.Glazing is null ? SurfaceResistance.MouldOpaqueM2KPerW : SurfaceResistance.MouldGlassM2KPerW;
        double core = OpeningTransmittance.CoreM2KPerW(opening, surface.TiltDeg, inside, outside);
        double mouldCore = opening.Glazing is null ? OpeningTransmittance.CoreM2KPerW(opening, surface.TiltDeg, mouldFilm, outside) : core;
        OpeningTransmittance used = OpeningTransmittance.AroundCore(opening, opening.NightCovering, core, inside, outside);
        paths.Add(new(opening.Name, surface.Name, PathKind.Opening, zone, other, opening.AreaM2, used.MeanUWPerM2K * opening.AreaM2, sky));
        if (opening.EdgeColdestFactor is { } edge)
            places.Add(new($"{opening.Name}, edge", surface.Name, opening.Name, null, SurfaceKind.Bridge, true, zone, other, 0, edge, opening.EdgeMouldFactor ?? edge, sky, 0));
        Place(null);
        foreach (Covering covering in opening.Coverings) Place(covering);

        void Place(Covering? covering)
        {
            OpeningTransmittance found = OpeningTransmittance.AroundCore(opening, covering, core, inside, outside);
            OpeningTransmittance mould = OpeningTransmittance.AroundCore(opening, covering, mouldCore, mouldFilm, outside);
            bool inUse = covering?.Name == opening.NightCovering?.Name;
            double transfer = covering is { Side: CoveringSide.Inside }
                ? 1 / (1 / bare + 1 / Math.Max(covering.EdgeLeakM3PerM2H / 3600 * roomDensityKgPerM3, 1e-12)) : bare;
            double body = opening.AreaM2 * (1 - opening.FrameFraction), frame = opening.AreaM2 * opening.FrameFraction;
            places.Add(new(opening.Name, surface.Name, opening.Name, covering?.Name, opening.Glazing is null ? SurfaceKind.Leaf : SurfaceKind.Glass, inUse,
                zone, other, body, found.BodyInsideShareFraction, mould.BodyInsideShareFraction, sky, transfer * body));
            if (frame > 0)
                places.Add(new($"{opening.Name}, frame", surface.Name, opening.Name, covering?.Name, SurfaceKind.Frame, inUse,
                    zone, other, frame, found.FrameInsideShareFraction, mould.FrameInsideShareFraction, sky, transfer * frame));
        }
    }
}
