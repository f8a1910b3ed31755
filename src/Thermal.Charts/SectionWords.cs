using Thermal.Bridges;
using Thermal.Envelope.Details;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Charts;

/// <summary>What is said of a section: its title, what stands on both sides, what a reader should take from it.</summary>
internal sealed class SectionWords(SectionOnNight night, Figures figures)
{
    // No error is said to be smaller than what can be written.
    private const double FinestK = 0.1;

    internal string Title => $"{Grammar.Capital(night.Name)}{(night.Panel == night.Name ? "" : $", {CutWords.Lowered(night.Panel)}")}: temperatures in the section";

    /// <summary>The words above a lying section or at the left of a standing one.</summary>
    internal string Left => night.Attitude is Attitude.Roof or Attitude.OutsideLeft ? Outside : Inside;

    /// <summary>The words below a lying section or at the right of a standing one.</summary>
    internal string Right => night.Attitude is Attitude.Roof or Attitude.OutsideLeft ? Inside : Outside;

    private string Inside => $"{night.InsideName}, {figures.Temperature(night.InsideC)}, dew point {figures.Temperature(night.DewPointC)}";

    private string Outside => $"{night.OutsideName}, {figures.Temperature(night.OutsideC)}";

    internal string Caption(SectionLayout layout, SectionDrawing drawing) => string.Concat(
        $"{Grammar.Capital(night.Name)}: {Coldest()} {Loss()} ",
        drawing.HasDewLine
            ? $"On the cold side of the thick dashed line, {figures.Temperature(night.DewPointC)}, air from the room would {Wetting(night.DewPointC)} if it got there."
            : night.DewPointC < night.ColdestC ? "Nothing the picture shows is as cold as the dew point of the room's air." : "All the picture shows is colder than the dew point of the room's air.",
        drawing.HasWays ? " Heat flows along the fine lines, as much between any two neighbours: where they crowd, it gets through." : "",
        night.IsHalf && night.Solved.Detail is not Bolt ? " One half is solved and shown with its mirror image." : night.Solved.Detail is Bolt ? " It is round: the picture cuts through its axis." : "",
        layout.IsCropped ? " Only the part around it is drawn." : "",
        night.Solved.Loss.IsConverged ? "" : " The solution did not reach the accuracy asked for.");

    internal string AltText(SectionLayout layout, SectionDrawing drawing) => string.Concat(
        $"Section through {Grammar.The(night.Name)} in {Grammar.The(night.Panel)}, to scale: {Outside}; {Inside}. ",
        $"Layers from the outside inwards: {string.Join(", ", night.Solved.Place.Stack.Layers.Reverse().Select(layer => $"{CutWords.Lowered(layer.Name)} {figures.Thickness(layer.ThicknessM)}"))}. ",
        Caption(layout, drawing));

    private string Coldest()
    {
        double spareK = night.ColdestC - night.DewPointC, errorK = Math.Max(FinestK, night.Solved.ColdestErrorFactor * Math.Abs(night.InsideC - night.OutsideC));
        string point = $"the {night.ColdestName} inner point is at {figures.Temperature(night.ColdestC)} (within {figures.Difference(errorK)})";
        return spareK >= 0
            ? $"{point}, {figures.Difference(spareK)} above the dew point of the room's air."
            : $"{point}, {figures.Difference(-spareK)} below the dew point of the room's air: it {(night.ColdestC < 0 ? "freezes" : "drips")} there.";
    }

    private string Loss() => night.Solved switch
    {
        SolvedLine line => $"It adds ψ = {Bounds(Shown.LinearTransmittance, line.PsiWPerMK)}.",
        SolvedPoint point => $"Each adds χ = {Bounds(Shown.PointTransmittance, point.ChiWPerK)}.",
        _ => throw new InvalidOperationException($"{night.Solved.GetType().Name} has no words."),
    };

    private string Bounds(Shown shown, Materials.Bounded value)
    {
        string range = figures.Range(shown, value.Low, value.High), single = figures.Write(shown, value.Value);
        return range == single ? single : $"{single}, solved between {figures.Number(shown, value.Low)} and {figures.Number(shown, value.High)}";
    }

    private static string Wetting(double temperatureC) => temperatureC < 0 ? "leave frost" : "drip";
}
