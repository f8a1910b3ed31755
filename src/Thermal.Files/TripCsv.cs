using System.Globalization;
using System.Text;
using Thermal.Materials;
using Thermal.Trips;

namespace Thermal.Files;

/// <summary>The hours of a trip as a table with commas, for spreadsheets and scripts.</summary>
public static class TripCsv
{
    private const string TimeForm = "yyyy-MM-dd'T'HH:mm";

    /// <summary>One row of column names with their units, then one row an hour.</summary>
    /// <param name="asked">What was asked: names of legs, kind of fuel.</param>
    /// <param name="hours">Its hours.</param>
    /// <returns>
    /// Text with line feeds. Times are the begin of the hour in local standard time; an empty cell means that there is none, such as a wanted temperature with
    /// the heater off. Columns of rooms, panels and tanks say whose they are behind a colon.
    /// </returns>
    public static string Text(TripCase asked, TripHours hours)
    {
        Column[] columns = [.. ColumnsOf(asked, hours)];
        StringBuilder text = new((hours.Count + 1) * (columns.Length * 7 + 30));
        text.Append("time,leg");
        foreach (Column column in columns)
            text.Append(',').Append(Quoted(column.Name));
        text.Append('\n');
        for (int hour = 0; hour < hours.Count; hour++)
        {
            int leg = hours.Legs[hour];
            text.Append(hours.StartLocal.AddHours(hour).ToString(TimeForm, CultureInfo.InvariantCulture)).Append(',')
                .Append(Quoted(string.Create(CultureInfo.InvariantCulture, $"{leg + 1}: {asked.Trip.Legs[leg].Name}")));
            foreach (Column column in columns)
                text.Append(',').Append(Cell(column.Values[hour], column.DigitCount));
            text.Append('\n');
        }
        return text.ToString();
    }

    private static IEnumerable<Column> ColumnsOf(TripCase asked, TripHours hours) => new Column[]
    {
        new("outside_c", 2, hours.OutsideC), new("sky_c", 2, hours.SkyC), new("air_past_m_s", 2, hours.AirPastMPerS), new("sun_on_flat_w_m2", 1, hours.SunOnFlatWPerM2),
        new("wanted_c", 2, hours.WantedC), new("operative_c", 2, hours.OperativeC), new("carbon_dioxide_ppm", 0, hours.CarbonDioxidePpm),
        new("heater_w", 1, hours.HeaterW), new("heater_starts", 2, hours.StartsCount), new("fuel_" + FuelData.Of(asked.Case.Heater.Fuel).UnitName.ToLowerInvariant(), 4, hours.FuelAmount),
        new("drawn_a", 3, hours.DrawnA), new("charged_a", 3, hours.ChargedA), new("charge_fraction", 4, hours.ChargeFraction), new("battery_c", 2, hours.BatteryC),
        new("on_glass_g", 1, hours.OnGlassG), new("frost_on_glass_g", 1, hours.FrostOnGlassG), new("on_linings_g", 1, hours.OnLiningsG), new("in_build_ups_g", 1, hours.InBuildUpsG),
    }.Concat(hours.Rooms.SelectMany(room => new Column[]
    {
        new($"air_c: {room.Zone}", 2, room.AirC), new($"humidity_fraction: {room.Zone}", 4, room.HumidityFraction), new($"vapour_pa: {room.Zone}", 1, room.VapourPa),
        new($"outside_air_m3_h: {room.Zone}", 2, room.OutsideAirM3PerH), new($"coldest_c: {room.Zone}", 2, room.ColdestC),
    })).Concat(hours.Panels.SelectMany(panel => new Column[] { new($"inner_face_c: {panel.Panel}", 2, panel.InnerC), new($"outer_face_c: {panel.Panel}", 2, panel.OuterC) }))
        .Concat(hours.Tanks.SelectMany(tank => new Column[] { new($"water_c: {tank.Name}", 2, tank.WaterC), new($"ice_fraction: {tank.Name}", 4, tank.IceFraction), new($"pad_w: {tank.Name}", 1, tank.PadW) }))
        .Where(column => column.Values.Count > 0);

    // Adding nothing makes a negative nothing a plain one.
    private static string Cell(double value, int digitCount) =>
        double.IsFinite(value) ? (Math.Round(value, digitCount) + 0.0).ToString("0.####", CultureInfo.InvariantCulture) : "";

    // A name of a person's own may hold commas, quotes and line ends.
    private static string Quoted(string text) => text.AsSpan().IndexOfAny(",\"\n\r") < 0 ? text : $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal).ReplaceLineEndings(" ")}\"";

    private sealed record Column(string Name, int DigitCount, IReadOnlyList<double> Values);
}
