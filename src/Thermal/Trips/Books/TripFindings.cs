using Thermal.Zones;

namespace Thermal.Trips.Books;

/// <summary>What a person should know of a trip: every figure over its mark, those the most times over it first; at one ratio in the order of the kinds.</summary>
/// <remarks>Marks are OURS: where a builder would do something about it.</remarks>
internal static class TripFindings
{
    private const double OneHour = 1, GlassG = 50, LiningGPerM2 = 5, InsideGPerM2 = 20, RunOffADayG = 100, MouldFactor = 1, HumidShareFraction = 0.1, StartsADay = 24, IceMarkFraction = 0.1;

    /// <summary>Finds them.</summary>
    internal static IReadOnlyList<TripFinding> Of(TripResult found)
    {
        List<(double Ratio, TripFinding Finding)> list = [];
        TripComfort comfort = found.Comfort;
        TripEnergy energy = found.Energy;
        double days = Math.Max(1, (found.Asked.Trip.EndLocal - found.Asked.Trip.StartLocal).TotalDays);
        string living = found.Asked.Case.Vehicle.Living.Name, heater = found.Asked.Case.Heater.Name;
        Add(TripFindingKind.TooCold, living, comfort.ColdHoursCount, OneHour);
        Add(TripFindingKind.HeaterShort, heater, energy.ShortHoursCount, OneHour);
        Add(TripFindingKind.BatteryFlat, "battery", energy.FlatHoursCount, OneHour, energy.FlatAtLocal, energy.FlatAtLocal is not null);
        if (found.Asked.Case.Power is { } power) Add(TripFindingKind.ChargeRefused, "battery", energy.RefusedAh, power.Battery.UsableAh);
        foreach (TankTrip tank in found.Tanks) Add(TripFindingKind.TankFreezes, tank.Name, tank.MostIceFraction, IceMarkFraction, tank.FreezesAtLocal, tank.MostIceFraction > 0);
        foreach (PipeTrip pipe in found.Pipes) Add(TripFindingKind.PipeFreezes, pipe.Name, pipe.MostIceFraction, IceMarkFraction, pipe.FreezesAtLocal, pipe.MostIceFraction > 0);
        foreach (WetPlace place in found.Wet)
        {
            if (place.Kind is SurfaceKind.Glass or SurfaceKind.Frame) Add(TripFindingKind.WetGlass, place.Name, place.MostG, GlassG, place.MostAtLocal);
            else Add(TripFindingKind.WetLining, place.Name, place.AreaM2 > 0 ? place.MostG / place.AreaM2 : place.MostG, LiningGPerM2, place.MostAtLocal);
        }
        foreach (BuildUpTrip panel in found.BuildUps) Add(TripFindingKind.WetInside, panel.Panel, panel.AtEndGPerM2, InsideGPerM2);
        Add(TripFindingKind.RunOff, "glass and frames", found.Water.RunOffG, RunOffADayG * days);
        foreach (MouldTrip mould in found.Mould) Add(TripFindingKind.Mould, mould.Name, mould.HighestFactor, MouldFactor);
        Add(TripFindingKind.Stuffy, living, comfort.HighestCarbonDioxidePpm, ComfortBook.StuffyPpm);
        Add(TripFindingKind.TooHot, living, comfort.HotHoursCount, OneHour);
        Add(TripFindingKind.Humid, living, comfort.HumidHoursCount, Math.Max(OneHour, HumidShareFraction * comfort.HomeHoursCount));
        Add(TripFindingKind.ManyStarts, heater, energy.StartsCount / days, StartsADay);
        return [.. list.OrderByDescending(one => one.Ratio).ThenBy(one => one.Finding.Kind).Select(one => one.Finding)];

        void Add(TripFindingKind kind, string about, double figure, double mark, DateTime? at = null, bool always = false)
        {
            if (figure >= mark || always) list.Add((figure / mark, new(kind, about, figure, at)));
        }
    }
}
