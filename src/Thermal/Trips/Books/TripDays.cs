namespace Thermal.Trips.Books;

/// <summary>Adds hours up to days of the calendar.</summary>
internal static class TripDays
{
    /// <summary>The days.</summary>
    /// <param name="hours">The hours.</param>
    /// <param name="coolestHomeC">Coolest operative temperature of each hour with people in, °C; infinite with nobody in.</param>
    /// <param name="living">Index of the living space.</param>
    /// <param name="lastHourS">Length of the last hour, s.</param>
    internal static IReadOnlyList<TripDay> Of(TripHours hours, double[] coolestHomeC, int living, double lastHourS)
    {
        List<TripDay> days = [];
        for (int from = 0, to; from < hours.Count; from = to)
        {
            DateOnly date = DateOnly.FromDateTime(hours.StartLocal.AddHours(from));
            for (to = from + 1; to < hours.Count && DateOnly.FromDateTime(hours.StartLocal.AddHours(to)) == date;) to++;
            days.Add(OneDay(hours, coolestHomeC, living, date, from, to, lastHourS));
        }
        return days;
    }

    private static TripDay OneDay(TripHours hours, double[] coolestHomeC, int living, DateOnly date, int from, int to, double lastHourS)
    {
        double coolest = double.PositiveInfinity, humid = 0, wet = 0, heat = 0, fuel = 0, drawn = 0, charged = 0, low = double.PositiveInfinity, high = double.NegativeInfinity;
        double charge = double.PositiveInfinity, tank = double.PositiveInfinity;
        for (int i = from; i < to; i++)
        {
            double length = i == hours.Count - 1 ? lastHourS / 3600 : 1;
            (low, high) = (Math.Min(low, hours.OutsideC[i]), Math.Max(high, hours.OutsideC[i]));
            coolest = Math.Min(coolest, coolestHomeC[i]);
            humid = Math.Max(humid, hours.Rooms[living].HumidityFraction[i]);
            wet = Math.Max(wet, hours.OnGlassG[i] + hours.OnLiningsG[i]);
            heat += hours.HeaterW[i] * length;
            fuel += hours.FuelAmount[i];
            drawn += hours.DrawnA[i] * length;
            charged += hours.ChargedA[i] * length;
            if (hours.ChargeFraction.Count > 0) charge = Math.Min(charge, hours.ChargeFraction[i]);
            foreach (TankHours one in hours.Tanks) tank = Math.Min(tank, one.WaterC[i]);
        }
        return new(date, to - from, low, high, Found(coolest), humid, wet, heat, fuel, drawn, charged, Found(charge), Found(tank));
    }

    private static double? Found(double value) => double.IsFinite(value) ? value : null;
}
