using Thermal.Air;
using Thermal.Climates;
using Thermal.Envelope;
using Thermal.Materials;
using Thermal.Moisture;
using Thermal.Zones;

namespace Thermal.Assessments;

/// <summary>The twelve months of a case while lived in, for the usual run or the one with least or most damp.</summary>
internal sealed record Months(IReadOnlyList<ZoneState> Lived, Vehicle Vehicle)
{
    /// <summary>Balances of twelve mean months; null where the case has no place.</summary>
    internal static Months? Of(Case asked, Extreme extreme)
    {
        if (asked.Place is not { } place) return null;
        double pressure = Atmosphere.PressurePa(place.AltitudeM);
        Case moved = Extremes.OfDamp(asked, extreme);
        Shell shell = Balances.MonthShell(moved, pressure);
        return new([.. place.Months.Select(month => Balances.Month(moved, shell, month, pressure, extreme))], moved.Vehicle);
    }

    /// <summary>Vapour pressure in the panel's zone.</summary>
    internal double VapourPa(int month, int zone) => Lived[month].VapourPa(zone);

    /// <summary>Water that air carries behind the panel's lining, kg/(m²·s), with this run's air flow.</summary>
    internal double Wetting(int month, Surface surface, int zone, double faceC)
    {
        double flow = Vehicle.Surfaces.First(other => other.Name == surface.Name).AirBehindLiningM3PerM2H.Value;
        ZoneState state = Lived[month];
        return flow == 0 ? 0 : AirBehindLining.WettingKgPerM2S(flow / 3600, state.TemperaturesC[zone], state.VapourPa(zone), faceC, state.Inputs.AirPressurePa);
    }

    /// <summary>Mould on inner surfaces by the months lived in, worst first. Glass and metal ribs' faces carry none and count by what touches them.</summary>
    internal static IReadOnlyList<MouldAnswer> Mould(Case asked, Months? months)
    {
        if (months is null) return [];
        List<MouldAnswer> answers = [];
        IReadOnlyList<ColdPlace> places = months.Lived[0].Shell.Places;
        for (int i = 0; i < places.Count; i++)
        {
            ColdPlace place = places[i];
            if (!place.InUse || place.Kind is ColdKind.Glass or ColdKind.BehindLining) continue;
            int worst = -1;
            double humidity = -1;
            for (int m = 0; m < 12; m++)
            {
                if (asked.Habits.NightsLivedInFraction[m] <= 0) continue;
                double now = MouldRisk.SurfaceHumidityFraction(months.Lived[m].VapourPa(place.Zone), months.Lived[m].PlaceC(place, forMould: true));
                if (now > humidity) (humidity, worst) = (now, m);
            }
            if (worst >= 0)
                answers.Add(new(place.Name, place.Panel, worst + 1, humidity, place.MouldShareFraction, months.Lived[worst].PlaceC(place, forMould: true)));
        }
        return [.. answers.OrderByDescending(answer => answer.SurfaceHumidityFraction)];
    }
}
