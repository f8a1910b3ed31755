using Thermal.Air;
using Thermal.Climates;
using Thermal.Envelope;
using Thermal.Envelope.Details;
using Thermal.Materials;
using Thermal.Moisture;
using Thermal.Zones;

namespace Thermal.Assessments;

/// <summary>The twelve months of a case while lived in, for the usual run or the one with least or most damp.</summary>
/// <param name="Lived">Balances, January first.</param>
/// <param name="LivedPa">Vapour pressure of each zone in each month, windows opened in warm months, Pa.</param>
/// <param name="AirBehindLiningM3PerM2S">Air behind the lining of each panel, m³/(m²·s).</param>
internal sealed record Months(IReadOnlyList<ZoneState> Lived, IReadOnlyList<double[]> LivedPa, IReadOnlyDictionary<string, double> AirBehindLiningM3PerM2S)
{
    /// <summary>Monthly mean above which people open windows, °C; at 20 °C the inside is as dry as the outside. Source: OURS, after the humidity classes of ISO-13788.</summary>
    private const double WindowsFromC = 10, WindowsFullyC = 20;

    /// <summary>Balances of twelve mean months; null where the case has no place.</summary>
    /// <param name="asked">The case, already at its end of damp.</param>
    /// <param name="vapour">Which end of the vapour given off.</param>
    /// <param name="known">A shell of the same case, used again where wind and air agree.</param>
    internal static Months? Of(Case asked, Extreme vapour, Shell known)
    {
        if (asked.Place is not { } place) return null;
        double pressure = Atmosphere.PressurePa(place.AltitudeM);
        Shell shell = Balances.MonthShell(asked, pressure, known);
        ZoneState[] lived = [.. place.Months.Select(month => Balances.Month(asked, shell, month, pressure, vapour))];
        return new(lived, [.. lived.Select(Aired)], asked.Vehicle.Surfaces.ToDictionary(surface => surface.Name, surface => surface.AirBehindLiningM3PerM2H.Value / 3600));
    }

    private static double[] Aired(ZoneState state)
    {
        double closed = Math.Clamp((WindowsFullyC - state.Inputs.OutsideC) / (WindowsFullyC - WindowsFromC), 0, 1), outside = state.Inputs.OutsidePa;
        return [.. Enumerable.Range(0, state.TemperaturesC.Count).Select(zone => outside + closed * (state.VapourPa(zone) - outside))];
    }

    /// <summary>Mould on inner surfaces by the months lived in, worst first. Only faces that mould can live on: not glass, frames, edges of openings and bare metal.</summary>
    internal static IReadOnlyList<MouldAnswer> Mould(Case asked, Months? months)
    {
        if (months is null) return [];
        List<MouldAnswer> answers = [];
        IReadOnlyList<ColdPlace> places = months.Lived[0].Shell.Places;
        for (int i = 0; i < places.Count; i++)
        {
            ColdPlace place = places[i];
            if (!place.InUse || !CanHoldMould(asked.Vehicle, place)) continue;
            int worst = -1;
            double humidity = -1;
            for (int m = 0; m < 12; m++)
            {
                if (asked.Habits.NightsLivedInFraction[m] <= 0) continue;
                double now = MouldRisk.SurfaceHumidityFraction(months.LivedPa[m][place.Zone], months.Lived[m].PlaceC(place, forMould: true));
                if (now > humidity) (humidity, worst) = (now, m);
            }
            if (worst >= 0)
                answers.Add(new(place.Name, place.Panel, worst + 1, humidity, place.MouldShareFraction, months.Lived[worst].PlaceC(place, forMould: true)));
        }
        return [.. answers.OrderByDescending(answer => answer.SurfaceHumidityFraction)];
    }

    private static bool CanHoldMould(Vehicle vehicle, ColdPlace place)
    {
        if (place.Kind is SurfaceKind.Glass or SurfaceKind.Frame or SurfaceKind.BehindLining) return false;
        Surface surface = vehicle.Surfaces.First(other => other.Name == place.Panel);
        if (place.Kind == SurfaceKind.Bridge && (place.Opening is not null || IsBareMetal(surface, place))) return false;
        Stack stack = surface.Openings.FirstOrDefault(opening => opening.Name == place.Opening)?.Leaf ?? surface.Stack;
        return stack.Layers[0] is SolidLayer { Material.MouldClass: not null and not MouldClass.Resistant };
    }

    /// <summary>A rib or bolt head that shows in the room.</summary>
    private static bool IsBareMetal(Surface surface, ColdPlace place) =>
        surface.Ribs.Any(rib => rib.Detail is Rib { IsBare: true } && $"{surface.Name}, {rib.Name}" == place.Name)
        || surface.Bolts.Any(bolt => bolt.Detail is Bolt { LayersOver: 0 } && $"{surface.Name}, {bolt.Name}" == place.Name);
}
