using Thermal.Climates;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Cli;

/// <summary>One place as lines on a screen.</summary>
internal static class PlacePrint
{
    internal static void Write(PlaceAnswer found, IReadOnlyList<string> written, Figures figures, Terminal terminal)
    {
        Place place = found.Place;
        terminal.Paragraph(PlaceWords.Verdict(place, figures), isHeading: true);
        terminal.Answers.WriteLine();
        terminal.Paragraph($"{place.Name}, {PlaceWords.Where(place, figures)}. {place.Source}; {place.Period}; {place.Licence}.");
        Body(found, figures, terminal);
        Files("Pictures", written, terminal);
    }

    /// <summary>Months, cold to plan for, cold hours and sun.</summary>
    internal static void Body(PlaceAnswer found, Figures figures, Terminal terminal)
    {
        Place place = found.Place;
        Heading("Months", terminal);
        Months(found.Months, figures, terminal);
        Heading("Cold to plan for", terminal);
        Designs(place, figures, terminal);
        if (found.Year is { } year)
        {
            Heading(found.Seed is { } seed ? $"Hours colder than, in a generated year (seed {seed})" : "Hours colder than", terminal);
            Hours(year, figures, terminal);
            Sun(found, figures, terminal);
        }
        else
        {
            terminal.Answers.WriteLine();
            terminal.Paragraph(PlaceWords.NoHours(place)!);
        }
    }

    /// <summary>Files that were written, if any.</summary>
    internal static void Files(string title, IReadOnlyList<string> paths, Terminal terminal)
    {
        if (paths.Count == 0)
            return;
        Heading(title, terminal);
        foreach (string path in paths)
            terminal.Answers.WriteLine(path);
    }

    internal static void Heading(string title, Terminal terminal)
    {
        terminal.Answers.WriteLine();
        terminal.Heading(title);
    }

    private static void Months(IReadOnlyList<FilledMonth> months, Figures figures, Terminal terminal)
    {
        var table = new TextTable("Month", $">Mean {figures.Unit(Shown.Temperature)}", ">Daily lowest", ">Daily highest", $">Day means ± {figures.Unit(Shown.Difference)}", ">Humidity",
            $">Vapour {figures.Unit(Shown.VapourPressure)}", $">Wind {figures.Unit(Shown.WindSpeed)}", $">Sun {figures.Unit(Shown.SunPerArea)} a day");
        for (int i = 0; i < months.Count; i++)
        {
            FilledMonth filled = months[i];
            MonthNormals month = filled.Normals;
            table.Row(Grammar.ShortMonth(i + 1),
                Marked(month.MeanIsEstimated, figures.Number(Shown.Temperature, month.MeanC)),
                month.MinC is { } lowC ? figures.Number(Shown.Temperature, lowC) : "",
                month.MaxC is { } highC ? figures.Number(Shown.Temperature, highC) : "",
                filled.DayMeanSdK is { } spreadK ? Marked(filled.DayMeanSdIsEstimated, figures.Number(Shown.Difference, spreadK)) : "",
                Marked(month.HumidityIsEstimated, figures.Percent(month.RelativeHumidityFraction)),
                Marked(filled.VapourPressureIsEstimated, figures.Number(Shown.VapourPressure, month.VapourPressurePa)),
                Marked(filled.WindIsAssumed, figures.Number(Shown.WindSpeed, filled.WindMPerS)),
                filled.GlobalIrradianceWPerM2 is { } sunWPerM2 ? Marked(filled.SunIsEstimated, figures.SunNumber(sunWPerM2)) : "");
        }
        table.WriteTo(terminal);
        if (PlaceWords.Estimates(months) is { } estimates)
            terminal.Paragraph(estimates);
    }

    private static string Marked(bool isEstimated, string figure) => isEstimated ? PlaceWords.EstimateMark + figure : figure;

    private static void Designs(Place place, Figures figures, Terminal terminal)
    {
        var table = new TextTable("What it measures", ">Temperature", ">±", "Known how");
        foreach (DesignTemperature design in place.Designs)
            table.Row(Names.Of(design.Measure), Marked(design.Kind == DesignKind.Estimated, figures.Temperature(design.TemperatureC)),
                design.PlusMinusK > 0 ? figures.Difference(design.PlusMinusK) : "", Names.Of(design.Kind));
        table.WriteTo(terminal);
        foreach (DesignTemperature design in place.Designs)
            terminal.Paragraph($"{Names.Of(design.Measure)}: {design.Note}.", "· ");
    }

    /// <summary>Hours colder than the usual limits, and what a generated year cannot say.</summary>
    internal static void Hours(Weather weather, Figures figures, Terminal terminal)
    {
        var table = new TextTable(">Colder than", ">Hours", ">Share");
        double all = weather.Count * weather.StepS / 3600;
        foreach (double limitC in ColdHours.UsualLimitsC)
        {
            double hours = ColdHours.BelowH(weather, limitC);
            table.Row(figures.Temperature(limitC), hours > 0 ? figures.Hours(hours) : "none", hours > 0 ? figures.Write(Shown.FinePercent, hours / all) : "");
        }
        table.WriteTo(terminal);
        if (weather.Kind != WeatherKind.Generated)
            return;
        terminal.Paragraph(WeatherWords.ColdHoursLimit(weather, figures), "· ");
        foreach (WeatherGap gap in weather.Gaps.Where(gap => gap != WeatherGap.SpreadEstimated))
            terminal.Paragraph(WeatherWords.Of(gap, figures), "· ");
        terminal.Paragraph(WeatherWords.NeverCount, "· ");
    }

    private static void Sun(PlaceAnswer found, Figures figures, Terminal terminal)
    {
        if (found.Sun.Count + found.SunAnyHeading.Count == 0)
            return;
        Heading($"Sun on a parked vehicle, {figures.Unit(Shown.SunPerArea)} a day", terminal);
        terminal.Paragraph(PlaceWords.Stand(found.HeadingDeg, found.HorizonDeg, found.GroundFractions, figures));
        if (found.HeadingDeg is null)
        {
            var table = new TextTable("Month", ">Roof", ">Sunniest side", "looking", ">Darkest side", "looking");
            foreach (SunAnyHeadingMonth month in found.SunAnyHeading)
                table.Row(Grammar.ShortMonth(month.Month), figures.SunNumber(month.RoofWPerM2), figures.SunNumber(month.MostWPerM2), PlaceWords.Direction(month.MostAzimuthDeg),
                    figures.SunNumber(month.LeastWPerM2), PlaceWords.Direction(month.LeastAzimuthDeg));
            table.WriteTo(terminal);
        }
        else
        {
            var table = new TextTable("Month", ">Roof", ">Left side", ">Right side", ">Front", ">Rear");
            foreach (SunOnVehicleMonth month in found.Sun)
                table.Row(Grammar.ShortMonth(month.Month), figures.SunNumber(month.RoofWPerM2), figures.SunNumber(month.LeftWPerM2), figures.SunNumber(month.RightWPerM2),
                    figures.SunNumber(month.FrontWPerM2), figures.SunNumber(month.RearWPerM2));
            table.WriteTo(terminal);
        }
    }
}
