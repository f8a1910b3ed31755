using Thermal.Assessments;
using Thermal.Charts;
using Thermal.Materials;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Reports.Sections;

/// <summary>The heater: what is needed, what it does, what a night costs.</summary>
internal static class HeatingSection
{
    internal static void Write(ReportContext report)
    {
        report.Open("heater", "Heater, fuel and current");
        Need(report);
        report.Show("heater-output", HeaterOutput.Draw(HeaterNeed.Of(report.Found), Palette.Light, report.Figures.Set));
        Nights(report);
        Grades(report);
        report.Close();
    }

    private static void Need(ReportContext report)
    {
        HeatingAnswer heating = report.Found.Heating;
        Case assessed = report.Found.Case;
        Figures figures = report.Figures;
        string decides = heating.WarmUpDecides ? "warming up decides" : "holding the temperature decides";
        report.Html.Add($"<p>Needed is the larger of both, never the sum: {decides}. ");
        report.Html.Add($"The {assessed.Heater.Name} gives {figures.HeaterPower(heating.LowestOutputW)} to {figures.HeaterPower(heating.HighestOutputW)} here; thin air leaves it {figures.Percent(heating.AltitudeFactor)} of its output at sea level. ");
        report.Html.Add($"{(heating.WarmUpH is { } hours ? $"At full output it warms the cold vehicle in {figures.Hours(hours)}." : "At full output it never reaches the wanted temperature from cold.")}</p>\n");
        report.Html.Table("Power needed on the cold night", ["What for", $">low {figures.Unit(Shown.Power)}", ">usual", ">high"],
        [
            Row($"hold {figures.Temperature(assessed.Habits.SetPointC)}", heating.SteadyW, figures),
            Row($"warm up in {figures.Hours(assessed.WarmUpH)}", heating.WarmUpW, figures),
            Row("needed", heating.NeedW, figures),
        ]);
    }

    private static string[] Row(string what, Between powerW, Figures figures) =>
        [what, figures.Number(Shown.Power, powerW.Low), figures.Number(Shown.Power, powerW.Value), figures.Number(Shown.Power, powerW.High)];

    private static void Nights(ReportContext report)
    {
        HeatingAnswer heating = report.Found.Heating;
        Figures figures = report.Figures;
        Fuel fuel = report.Found.Case.Heater.Fuel;
        report.Html.Table($"One night of {figures.Hours(report.Found.Case.Habits.NightH)}, people's warmth taken off",
            ["", ">cold night", ">mild night"],
            [
                ["heat from the heater", figures.Power(heating.Cold.HeatW.Value), figures.Power(heating.Mild.HeatW.Value)],
                ["share of its highest output", figures.Percent(heating.Cold.OutputFraction), figures.Percent(heating.Mild.OutputFraction)],
                ["temperature at its lowest output", figures.Temperature(heating.Cold.AtLowestOutputC), figures.Temperature(heating.Mild.AtLowestOutputC)],
                ["starts", figures.Write(Shown.Factor, heating.Cold.StartsCount), figures.Write(Shown.Factor, heating.Mild.StartsCount)],
                [$"{Names.Of(fuel)}", Spread(figures.FuelAmount(fuel, heating.Cold.FuelAmount.Value), figures.FuelAmount(fuel, heating.Cold.FuelAmount)), Spread(figures.FuelAmount(fuel, heating.Mild.FuelAmount.Value), figures.FuelAmount(fuel, heating.Mild.FuelAmount))],
                ["charge at 12.8 V", Spread(figures.Ah(heating.Cold.ChargeAh.Value), figures.Ah(heating.Cold.ChargeAh)), Spread(figures.Ah(heating.Mild.ChargeAh.Value), figures.Ah(heating.Mild.ChargeAh))],
            ]);
        report.Html.Add($"<p>With the heater off all night it is {figures.Range(Shown.Temperature, heating.DawnHeaterOffC.Low, heating.DawnHeaterOffC.High)} inside at dawn. ");
        report.Html.Add($"Hot water for showers takes {figures.KWh(heating.HotWater.HeatKWhPerDay)} a day, {figures.FuelAmount(fuel, heating.HotWater.FuelAmountPerDay)} of {Names.Of(fuel)}.</p>\n");
    }

    private static string Spread(string usual, string span) => usual == span ? usual : $"{usual} ({span})";

    private static void Grades(ReportContext report)
    {
        Figures figures = report.Figures;
        if (report.Found.Heating.Grades.Count == 0)
            return;
        report.Html.Table("Cold-chamber grades, vents open and nobody inside, full output (EN 1646-1 by secondary sources; computed, not tested)",
            ["Grade", ">chamber", $">time to {figures.Temperature(20)}", ">allowed", "Result"],
            report.Found.Heating.Grades.Select(grade => (IReadOnlyList<string>)
            [
                $"grade {grade.Grade.ToString(System.Globalization.CultureInfo.InvariantCulture)}",
                figures.Temperature(grade.OutsideC),
                grade.ReachedAfterH is { } hours ? figures.Hours(hours) : "never",
                figures.Hours(grade.LimitH),
                grade.IsReached ? "reached" : "not reached",
            ]));
    }
}
