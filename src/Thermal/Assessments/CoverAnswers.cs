using Thermal.Air;
using Thermal.Envelope;
using Thermal.Zones;

namespace Thermal.Assessments;

/// <summary>Tries every cover of every opening on the cold night.</summary>
internal static class CoverAnswers
{
    internal static IReadOnlyList<CoverAnswer> Of(Case asked, ZoneState usual)
    {
        List<CoverAnswer> answers = [];
        foreach (Surface surface in asked.Vehicle.Surfaces)
            foreach (Opening opening in surface.Openings)
            {
                if (opening.Coverings.Count == 0) continue;
                answers.Add(Try(surface, opening, null));
                foreach (Covering covering in opening.Coverings) answers.Add(Try(surface, opening, covering));
            }
        return answers;

        CoverAnswer Try(Surface surface, Opening opening, Covering? covering)
        {
            bool inUse = covering?.Name == opening.NightCovering?.Name;
            ZoneState state = inUse ? usual : ZoneBalance.Solve(usual.Shell.WithCover(surface, opening, covering), usual.Inputs);
            double glass = 0, elsewhere = 0, temperature = 0, spare = 0, humidity = 0;
            foreach (ColdPlace place in state.Shell.PlaceSpan)
            {
                if (!place.InUse) continue;
                double grams = state.SettlingKgPerS(place) * 3.6e6 * asked.Habits.NightH;
                if (place.Panel != surface.Name || place.Opening != opening.Name || place.Kind is SurfaceKind.Frame or SurfaceKind.Bridge) { elsewhere += grams; continue; }
                temperature = state.PlaceC(place);
                spare = temperature - DewPoint.OfPressureC(state.VapourPa(place.Zone));
                humidity = state.VapourPa(place.Zone) / SaturationPressure.PairPa(state.TemperaturesC[place.Zone]);
                glass = grams;
            }
            return new(surface.Name, opening.Name, covering?.Name, inUse, temperature, spare, glass, elsewhere, humidity, state.HeaterW);
        }
    }
}
