using Thermal.Envelope;
using Thermal.Zones;

namespace Thermal.Trips.Heat;

/// <summary>Takes a vehicle apart into parts and ties.</summary>
internal sealed class BodyParts
{
    /// <summary>Share of the sun that passes one clear pane, fraction. Source: PRACTICE, clear glass of 4 to 6 mm, across its face.</summary>
    internal const double SunThroughPaneFraction = 0.82;
    /// <summary>Share of the sun that glass takes up in all, fraction. Source: PRACTICE, clear glass.</summary>
    internal const double SunInGlassFraction = 0.1;

    private readonly Vehicle vehicle;
    private readonly double cellS;

    internal BodyParts(Vehicle vehicle, double cellS)
    {
        (this.vehicle, this.cellS) = (vehicle, cellS);
        for (int i = 0; i < vehicle.Surfaces.Count; i++) Add(vehicle.Surfaces[i], i);
    }

    internal List<Part> Parts { get; } = [];
    internal List<Tie> Ties { get; } = [];

    internal int IndexOf(string zone)
    {
        for (int i = 0; i < vehicle.Zones.Count; i++)
            if (vehicle.Zones[i].Name == zone) return i;
        throw new ArgumentException($"There is no zone called {zone}.", nameof(zone));
    }

    private int OtherOf(Surface surface) =>
        surface.Outside == OuterSide.OtherZone ? IndexOf(surface.OtherZone ?? $"(none given for {surface.Name})") : -1;

    private void Add(Surface surface, int index)
    {
        double opaque = surface.OpaqueAreaM2, covered = 0;
        if (opaque < -1e-9) throw new ArgumentException($"The openings of {surface.Name} are larger than the panel.", nameof(surface));
        foreach (Against thing in surface.Against)
        {
            covered += thing.AreaFraction;
            AddOpaque(surface, index, $"{surface.Name}, behind {thing.Name}", SurfaceKind.Behind, thing.AreaFraction * opaque, thing.AddedResistanceM2KPerW);
        }
        if (covered < 1) AddOpaque(surface, index, surface.Name, SurfaceKind.Bare, (1 - covered) * opaque, 0);
        foreach (LinearBridge rib in surface.Ribs) AddTie(surface, index, -1, $"{surface.Name}, {rib.Name}", rib.LossWPerK, rib.ColdestFactor);
        foreach (PointBridge bolt in surface.Bolts) AddTie(surface, index, -1, $"{surface.Name}, {bolt.Name}", bolt.LossWPerK, bolt.ColdestFactor);
        for (int i = 0; i < surface.Openings.Count; i++) AddOpening(surface, index, surface.Openings[i], i);
    }

    private void AddOpaque(Surface surface, int index, string name, SurfaceKind kind, double areaM2, double againstM2KPerW)
    {
        if (areaM2 <= 0) return;
        double inside = SurfaceResistance.InsideM2KPerW(surface.Direction), outside = surface.OutsideFilmM2KPerW(Body.BattenWindMPerS);
        StackTransmittance found = Transmittance.Of(surface.Stack, surface.Direction, inside + againstM2KPerW, outside);
        PartFilms films = FilmsOf(surface, found) with { AgainstM2KPerW = againstM2KPerW };
        Parts.Add(new(name, index, -1, kind, IndexOf(surface.Zone), OtherOf(surface), areaM2, surface.TiltDeg, surface.FacingDeg,
            films.Outer == OuterFilm.Weather ? vehicle.PaintSunFraction.Value : 0, 0, surface.Stack)
        { Chain = ChainCut.Of(surface.Stack, found, cellS), Films = films });
    }

    private void AddOpening(Surface surface, int index, Opening opening, int openingIndex)
    {
        double body = opening.AreaM2 * (1 - opening.FrameFraction), frame = opening.AreaM2 * opening.FrameFraction;
        Parts.Add(opening.Glazing is { } glazing ? Glass(surface, index, opening, openingIndex, glazing, body) : Leaf(surface, index, opening, openingIndex, body));
        if (frame > 0) Parts.Add(Frame(surface, index, opening, openingIndex, frame));
        if (opening.EdgeLossWPerK != 0) AddTie(surface, index, openingIndex, $"{opening.Name}, edge", opening.EdgeLossWPerK, opening.EdgeColdestFactor);
    }

    private Part Glass(Surface surface, int index, Opening opening, int openingIndex, Glazing glazing, double areaM2)
    {
        bool sun = surface.Outside == OuterSide.Air;
        return new(opening.Name, index, openingIndex, SurfaceKind.Glass, IndexOf(surface.Zone), OtherOf(surface), areaM2, surface.TiltDeg, surface.FacingDeg,
            sun ? SunInGlassFraction : 0, sun ? Math.Pow(SunThroughPaneFraction, glazing.Panes.Count) : 0, null)
        { Chain = ChainCut.Of(glazing, surface.TiltDeg, cellS), Films = FilmsOf(surface, null), Coverings = opening.Coverings };
    }

    private Part Leaf(Surface surface, int index, Opening opening, int openingIndex, double areaM2)
    {
        StackTransmittance found = Transmittance.Of(opening.Leaf!, surface.Direction, SurfaceResistance.InsideM2KPerW(surface.Direction),
            surface.OutsideFilmM2KPerW(Body.BattenWindMPerS));
        PartFilms films = FilmsOf(surface, found);
        return new(opening.Name, index, openingIndex, SurfaceKind.Leaf, IndexOf(surface.Zone), OtherOf(surface), areaM2, surface.TiltDeg, surface.FacingDeg,
            films.Outer == OuterFilm.Weather ? vehicle.PaintSunFraction.Value : 0, 0, opening.Leaf)
        { Chain = ChainCut.Of(opening.Leaf!, found, cellS), Films = films, Coverings = opening.Coverings };
    }

    private Part Frame(Surface surface, int index, Opening opening, int openingIndex, double areaM2)
    {
        Chain chain = ChainCut.OfFrame(opening.FrameUWPerM2K, out double factor);
        return new($"{opening.Name}, frame", index, openingIndex, SurfaceKind.Frame, IndexOf(surface.Zone), OtherOf(surface), areaM2, surface.TiltDeg, surface.FacingDeg,
            surface.Outside == OuterSide.Air ? vehicle.PaintSunFraction.Value : 0, 0, null)
        {
            Chain = chain,
            Films = FilmsOf(surface, null) with
            {
                FaceFactor = factor, LumpedInsideM2KPerW = ChainCut.FrameInsideM2KPerW, LumpedOutsideM2KPerW = ChainCut.FrameOutsideM2KPerW,
            },
            Coverings = opening.Coverings,
        };
    }

    /// <summary>Films of a panel; a ventilated layer in the build-up adds to the outer one or shelters it altogether.</summary>
    private static PartFilms FilmsOf(Surface surface, StackTransmittance? found)
    {
        double inside = SurfaceResistance.InsideM2KPerW(surface.Direction), outside = surface.OutsideFilmM2KPerW(Body.BattenWindMPerS);
        double more = (found?.OutsideFilmM2KPerW ?? outside) - outside;
        bool sheltered = more != 0 && found!.LayersM2KPerW[^1] == 0;
        OuterFilm outer = surface.Outside == OuterSide.OtherZone ? OuterFilm.Room
            : surface.Outside == OuterSide.Road || sheltered ? OuterFilm.Still : OuterFilm.Weather;
        double still = outer == OuterFilm.Still ? sheltered ? found!.OutsideFilmM2KPerW : outside : 0;
        return new()
        {
            Outer = outer,
            StillM2KPerW = still,
            VentilatedM2KPerW = sheltered ? 0 : more,
            LumpedInsideM2KPerW = inside,
            LumpedOutsideM2KPerW = outer switch { OuterFilm.Still => still, OuterFilm.Room => outside, _ => null },
        };
    }

    private void AddTie(Surface surface, int index, int opening, string name, double lossWPerK, double? coldestFactor) =>
        Ties.Add(new(name, index, opening, IndexOf(surface.Zone), OtherOf(surface), lossWPerK, coldestFactor)
        {
            FromAirFraction = SurfaceResistance.InsideConvectiveWPerM2K(surface.Direction) * SurfaceResistance.InsideM2KPerW(surface.Direction),
            SeesSky = surface.Outside == OuterSide.Air,
        });
}
