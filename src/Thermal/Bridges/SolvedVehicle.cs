using Thermal.Envelope;
using Thermal.Envelope.Details;
using Thermal.Materials;

namespace Thermal.Bridges;

/// <summary>The one step from a described vehicle to an evaluated one.</summary>
public static class SolvedVehicle
{
    /// <summary>The vehicle with ψ, χ and coldest points of every described rib, bolt and edge of an opening.</summary>
    /// <param name="vehicle">The vehicle; given ψ and χ stay as they are.</param>
    /// <param name="windMPerS">Wind of the loss films outside, m/s, 0 to 40.</param>
    /// <param name="cache">Sections solved before: equal details in equal build-ups are solved once.</param>
    /// <param name="accuracy">How closely; null for the standard's one per cent.</param>
    /// <returns>The same record where it has no described detail; else descriptions are kept, so that it can be changed and evaluated again.</returns>
    /// <exception cref="ArgumentException">A detail does not fit its panel (<see cref="Unfit"/> tells which), or a corner names no panel.</exception>
    /// <remarks>Values found before are replaced, whatever they were: none can go stale. What stands against a panel is left out of its sections.</remarks>
    public static Vehicle Of(Vehicle vehicle, double windMPerS, BridgeCache cache, Accuracy? accuracy = null) => Changed(vehicle, windMPerS, (detail, place) =>
    {
        if (detail is PointDetail point)
        {
            SolvedPoint bolt = DetailSolver.Solve(point, place, cache, accuracy);
            return (bolt.ChiWPerK, bolt.ColdestFactor, bolt.MouldFactor);
        }
        SolvedLine line = DetailSolver.Solve((LineDetail)detail, place, cache, accuracy);
        return (line.PsiWPerMK, line.ColdestFactor, line.MouldFactor);
    });

    /// <summary>Every described detail that does not fit the build-up it stands in.</summary>
    /// <param name="vehicle">The vehicle.</param>
    /// <returns>Empty where it can be evaluated.</returns>
    /// <exception cref="ArgumentException">A corner names no panel of the vehicle.</exception>
    public static IReadOnlyList<UnfitDetail> Unfit(Vehicle vehicle) =>
    [
        .. from surface in vehicle.Surfaces
           from described in Described(surface)
           from problem in DetailFit.Problems(described.Detail, surface.Stack, described.SpacingM, DetailPlace.OtherPanel(vehicle, described.Detail)?.Stack, described.Opening)
           select new UnfitDetail(surface.Name, described.Name, described.Detail, problem),
    ];

    /// <summary>The vehicle for its heat alone: without the films for mould, each ψ and χ at one end of the bounds of its solution.</summary>
    internal static Vehicle ForHeat(Vehicle vehicle, double windMPerS, BridgeCache cache, Extreme bound = Extreme.Usual) => Changed(vehicle, windMPerS, (detail, place) =>
    {
        (Bounded added, double coldest, _) = DetailSolver.Loss(detail, place, cache);
        return (added.MovedTo(bound), coldest, null);
    });

    private static Vehicle Changed(Vehicle vehicle, double windMPerS, Func<Detail, DetailPlace, (Bounded Added, double ColdestFactor, double? MouldFactor)> solve)
    {
        return vehicle.Surfaces.Any(surface => Described(surface).Any())
            ? vehicle with { Surfaces = [.. vehicle.Surfaces.Select(surface => Described(surface).Any() ? Panel(surface) : surface)] }
            : vehicle;

        Surface Panel(Surface surface) => surface with
        {
            Ribs = [.. surface.Ribs.Select(rib => rib.Detail is { } detail ? Line(surface, rib, detail) : rib)],
            Bolts = [.. surface.Bolts.Select(bolt => bolt.Detail is { } detail ? Point(surface, bolt, detail) : bolt)],
            Openings = [.. surface.Openings.Select(opening => opening.Edge is { } edge ? Edged(surface, opening, edge) : opening)],
        };

        LinearBridge Line(Surface surface, LinearBridge rib, LineDetail detail)
        {
            (Bounded psi, double coldest, double? mould) = solve(detail, DetailPlace.In(vehicle, surface, detail, windMPerS, rib.SpacingM));
            return rib with { PsiWPerMK = psi, ColdestFactor = coldest, MouldFactor = mould };
        }

        PointBridge Point(Surface surface, PointBridge bolt, PointDetail detail)
        {
            (Bounded chi, double coldest, double? mould) = solve(detail, DetailPlace.In(vehicle, surface, detail, windMPerS));
            return bolt with { ChiWPerK = chi, ColdestFactor = coldest, MouldFactor = mould };
        }

        Opening Edged(Surface surface, Opening opening, LineDetail edge)
        {
            (Bounded psi, double coldest, double? mould) = solve(edge, DetailPlace.In(vehicle, surface, edge, windMPerS, null, opening));
            return opening with { EdgePsiWPerMK = psi.Value, EdgeColdestFactor = coldest, EdgeMouldFactor = mould };
        }
    }

    private static IEnumerable<(string Name, Detail Detail, double? SpacingM, Opening? Opening)> Described(Surface surface)
    {
        foreach (LinearBridge rib in surface.Ribs)
            if (rib.Detail is { } line) yield return (rib.Name, line, rib.SpacingM, null);
        foreach (PointBridge bolt in surface.Bolts)
            if (bolt.Detail is { } point) yield return (bolt.Name, point, null, null);
        foreach (Opening opening in surface.Openings)
            if (opening.Edge is { } edge) yield return (opening.Name, edge, null, opening);
    }
}

/// <summary>A described detail that does not fit.</summary>
/// <param name="Panel">The panel.</param>
/// <param name="Name">The rib, the bolt, or the opening whose edge it is.</param>
/// <param name="Detail">Its description.</param>
/// <param name="Problem">What does not fit.</param>
public sealed record UnfitDetail(string Panel, string Name, Detail Detail, DetailProblem Problem);
