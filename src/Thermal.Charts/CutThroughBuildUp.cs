using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Charts;

/// <summary>The cut through a build-up as it stands in the vehicle: layers to scale with their temperatures, and beside them how far each place is from dripping.</summary>
public static class CutThroughBuildUp
{
    /// <summary>Draws it.</summary>
    /// <param name="cut">The build-up on one night.</param>
    /// <param name="palette">Colours.</param>
    /// <param name="units">Units to write in.</param>
    /// <param name="width">Width, px, 480 or more; a side with many layers takes more.</param>
    /// <param name="height">Height, px; many layers take more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A width below 480 px.</exception>
    public static Picture Draw(BuildUpCut cut, Palette palette, UnitSet units, int width = 640, int height = 380)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(width, 480);
        Figures figures = Figures.In(units);
        if (cut.Attitude is Attitude.Roof or Attitude.Floor)
        {
            var lying = new LyingCut(cut, figures, width, height);
            return new Picture(width, lying.Height, AltText(cut, figures), Caption(cut, figures), canvas => lying.Draw(new Sheet(canvas, palette)));
        }
        var standing = new StandingCut(cut, figures, width, height);
        return new Picture(standing.Width, standing.Height, AltText(cut, figures), Caption(cut, figures), canvas => standing.Draw(new Sheet(canvas, palette)));
    }

    private static string AltText(BuildUpCut cut, Figures figures)
    {
        string layers = string.Join(", ", cut.Layers.Select(layer => $"{CutWords.Lowered(layer.Name)} {figures.Thickness(layer.ThicknessM)}"));
        string faces = string.Join(", ", cut.TemperaturesAtFacesC.Select(figures.Temperature));
        return string.Concat(
            $"Cut through {Grammar.The(cut.Name)}, from the room outwards: {layers}. ",
            $"{Grammar.Capital(CutWords.Inside(cut, figures))}; {CutWords.Outside(cut, figures)}. ",
            $"Temperatures at the faces from the room outwards: {faces}. {Caption(cut, figures)}",
            cut.Rib is { } rib ? $" {Grammar.Capital(rib.Name)} every {figures.Thickness(rib.SpacingM)}." : "",
            cut.RibsNotDrawn.Length > 0 ? $" Not drawn: {cut.RibsNotDrawn}." : "");
    }

    private static string Caption(BuildUpCut cut, Figures figures)
    {
        double spareK = cut.SpareAtFaceK(cut.WorstFace)!.Value;
        string place = $"{Grammar.Capital(CutWords.FaceName(cut, cut.WorstFace))} is at {figures.Temperature(cut.TemperaturesAtFacesC[cut.WorstFace])}";
        string verdict = spareK >= 0
            ? $"{figures.Difference(spareK)} above the dew point of the air that gets there."
            : $"{figures.Difference(-spareK)} below the dew point of the air that gets there: it {CutWords.Wetting(cut, cut.WorstFace)}.";
        return $"{place}, {verdict} {Grammar.Capital(CutWords.AirStops(cut))}.";
    }
}
