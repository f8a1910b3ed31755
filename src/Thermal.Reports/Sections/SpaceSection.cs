using Thermal.Assessments;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Reports.Sections;

/// <summary>Room left, weight, water tanks and the body's mean transmittance.</summary>
internal static class SpaceSection
{
    internal static void Write(ReportContext report)
    {
        Figures figures = report.Figures;
        Space space = report.Found.Space;
        MeanK mean = report.Found.MeanK;
        report.Open("space", "Room, weight and water tanks");
        report.Html.Table("Room and weight", ["What", ">Figure"],
        [
            ["headroom inside", space.HeadroomM is { } headroom ? figures.Length(headroom) : "the file gives no height"],
            ["width inside", space.InnerWidthM is { } width ? figures.Length(width) : "the file gives no width"],
            ["build-ups, skins included", figures.Mass(space.BuildUpMassKg)],
            ["of it added inside the skins", figures.Mass(space.LiningMassKg)],
            ["mean transmittance K of the body, without air, cab included", figures.Transmittance(mean.MeanKWPerM2K)],
            ["mean area it refers to, √(inside · outside)", figures.Area(mean.MeanAreaM2)],
        ]);
        report.Html.Add($"<p>Insulated bodies that carry food are marked at a K of {figures.Transmittance(0.7)}, heavily insulated ones at {figures.Transmittance(0.4)}; this is a comparison, not a target for a camper.</p>\n");
        if (report.Found.Tanks.Count > 0)
            report.Html.Table($"Water tanks on the cold night, starting at {figures.Temperature(10)}",
                ["Tank", ">air round it", $">time to {figures.Temperature(0)}", ">until a tenth is ice", ">power to hold it", "Its pad"],
                report.Found.Tanks.Select(tank => (IReadOnlyList<string>)
                [
                    tank.Name, figures.Temperature(tank.SurroundingsC),
                    tank.HoursToZeroH is { } zero ? figures.Hours(zero) : "never",
                    tank.HoursToTenPercentIceH is { } ice ? $"{figures.Hours(ice)} more" : "never",
                    figures.Write(Shown.ElectricPower, tank.HoldW), tank.PadIsEnough ? "enough, or not needed" : "too small",
                ]));
        report.Close();
    }
}
