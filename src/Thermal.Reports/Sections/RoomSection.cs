using Thermal.Assessments;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Reports.Sections;

/// <summary>Air and humidity of the rooms, and the inner surfaces that get wet.</summary>
internal static class RoomSection
{
    internal static void Write(ReportContext report)
    {
        report.Open("air", "Air, humidity and cold surfaces");
        Rooms(report);
        Air(report);
        Covers(report);
        report.Html.Add($"<details><summary>Every inner surface on the cold night</summary>\n");
        Surfaces(report);
        report.Html.Add($"</details>\n");
        report.Close();
    }

    private static void Rooms(ReportContext report)
    {
        Figures figures = report.Figures;
        var nights = new[] { ("cold night", report.Found.ColdNight), ("mild night", report.Found.MildNight) };
        report.Html.Table("Rooms on both nights; dew point below freezing is the frost point",
            ["Room", "Night", ">temperature", ">humidity", ">dew point", ">fresh air", ">air changes an hour", ">settling"],
            nights.SelectMany(night => night.Item2.Zones.Select(zone => (IReadOnlyList<string>)
            [
                zone.Zone, night.Item1, figures.Temperature(zone.TemperatureC), figures.Percent(zone.RelativeHumidityFraction),
                figures.Temperature(zone.DewPointC), figures.AirPerHour(zone.OutsideAirM3PerH),
                figures.Number(Shown.AirChange, zone.AirChangesPerH), figures.GramsPerHour(zone.SettlingGPerH),
            ])));
    }

    private static void Air(ReportContext report)
    {
        Figures figures = report.Figures;
        Assessment found = report.Found;
        report.Html.Add($"<p>People, cooking, washing and drying give off {figures.GramsPerHour(found.ColdNight.VapourSourceGPerH)} of vapour over the hours at home. ");
        report.Html.Add($"Humidity of the living space runs from {Range(found.ColdNight, figures)} on the cold night and from {Range(found.MildNight, figures)} on the mild one. ");
        report.Html.Add($"{Needed("cold", found.AirNeededCold, figures)} {Needed("mild", found.AirNeededMild, figures)} ");
        report.Html.Add($"Carbon dioxide at dawn: {figures.Ppm(found.ColdNight.CarbonDioxideAtDawnPpm)} on the cold night, {figures.Ppm(found.MildNight.CarbonDioxideAtDawnPpm)} on the mild one.</p>\n");
    }

    private static string Range(Night night, Figures figures) =>
        figures.Range(Shown.Percent, night.HumidityRangeFraction.Low, night.HumidityRangeFraction.High);

    private static void Covers(ReportContext report)
    {
        Figures figures = report.Figures;
        if (report.Found.Covers.Count == 0)
            return;
        report.Html.Table("Covers on the cold night: each state tried, with the whole balance repeated; a cover inside makes the glass colder, and the water it saves may settle elsewhere",
            ["Opening", "Cover", $">glass {figures.Unit(Shown.Temperature)}", $">to spare {figures.Unit(Shown.Difference)}", ">on the glass", ">elsewhere", ">humidity of the room", ">heat needed"],
            report.Found.Covers.Select(tried => (IReadOnlyList<string>)
            [
                tried.Opening, $"{tried.Cover ?? "none"}{(tried.InUse ? ", in use" : "")}",
                figures.Number(Shown.Temperature, tried.GlassC), figures.Number(Shown.Difference, tried.ToSpareK),
                figures.Grams(tried.GlassG), figures.Grams(tried.ElsewhereG), figures.Percent(tried.RoomHumidityFraction), figures.Power(tried.LossW),
            ]));
    }

    private static string Needed(string night, AirNeeded air, Figures figures) => air.AirM3PerH is { } needed
        ? needed <= air.NowM3PerH ? $"On the {night} night the fresh air there is, {figures.AirPerHour(air.NowM3PerH)}, keeps {figures.Percent(air.AimFraction)} or less." : $"On the {night} night {figures.AirPerHour(needed)} of fresh air would keep {figures.Percent(air.AimFraction)} (now {figures.AirPerHour(air.NowM3PerH)}){(air.HeatW is { } heatW ? $", at {figures.Power(heatW)} of heat" : "")}."
        : $"On the {night} night {figures.Percent(air.AimFraction)} cannot be kept by ventilating (now {figures.AirPerHour(air.NowM3PerH)}): heat or dry.";

    private static void Surfaces(ReportContext report)
    {
        Figures figures = report.Figures;
        report.Html.Table("Inner surfaces on the cold night, coldest first; covers that are not in place are shown for comparison",
            ["Surface", "Kind", "Cover", "Room", $">{figures.Unit(Shown.Temperature)}", $">to spare {figures.Unit(Shown.Difference)}", ">humidity there", ">in the night", ""],
            report.Found.ColdNight.Surfaces.OrderBy(surface => surface.TemperatureC).Select(surface => (IReadOnlyList<string>)
            [
                surface.Name, Names.Of(surface.Kind), Cover(surface), surface.Zone,
                figures.Number(Shown.Temperature, surface.TemperatureC), figures.Number(Shown.Difference, surface.ToSpareK),
                figures.Percent(Math.Min(1, surface.SurfaceHumidityRatio)),
                surface.SettledG > 0 ? figures.Grams(surface.SettledG) : "",
                surface.ToSpareK >= 0 ? "dry" : surface.IsFrost ? "frost" : "drips",
            ]));
    }

    private static string Cover(SurfaceNight surface) => (surface.Cover, surface.InUse) switch
    {
        (null, true) => "",
        (null, false) => "none, for comparison",
        ({ } cover, true) => cover,
        ({ } cover, false) => $"{cover}, for comparison",
    };
}
