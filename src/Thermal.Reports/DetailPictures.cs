using Thermal.Assessments;
using Thermal.Bridges;
using Thermal.Charts;
using Thermal.Choices;
using Thermal.Words;

namespace Thermal.Reports;

/// <summary>The pictures of one rib, edge or bolt: its section with temperatures, and what strips and fillings buy.</summary>
public static class DetailPictures
{
    /// <summary>Those of a part of a vehicle.</summary>
    /// <param name="found">The assessment.</param>
    /// <param name="bridge">One of its ribs, edges or bolts.</param>
    /// <param name="strips">What strips buy; null where none can lie there.</param>
    /// <param name="fillings">What fillings buy; null where it has no hollow.</param>
    /// <param name="figures">Metric or US.</param>
    /// <returns>In the order in which they are read; no section where nothing was solved or the solution is a body.</returns>
    public static IReadOnlyList<Figure> Of(Assessment found, BridgeAnswer bridge, StripTable? strips, FillingTable? fillings, Figures figures)
    {
        string name = FileName.Of($"{bridge.Panel} {bridge.Name}");
        List<Figure> pictures = [];
        if (bridge.Solved is { Loss.Section.Shape: not SectionShape.Solid } && SectionOnNight.Of(found, bridge) is { } night)
            pictures.Add(new($"{name}-section", SectionField.Draw(night, Palette.Light, figures.Set, BuildUpPictures.PairPx)));
        if (strips is { Rows.Count: > 1 })
            pictures.Add(new($"{name}-strips", StripChart.Draw(strips, Palette.Light, figures.Set, BuildUpPictures.PairPx)));
        if (fillings is not null)
            pictures.Add(new($"{name}-fillings", FillingChart.Draw(fillings, Palette.Light, figures.Set, BuildUpPictures.PairPx)));
        return pictures;
    }

    /// <summary>The section of one without a vehicle.</summary>
    /// <param name="night">The detail between its temperatures.</param>
    /// <param name="figures">Metric or US.</param>
    public static IReadOnlyList<Figure> Of(SectionOnNight night, Figures figures) =>
        [new($"{FileName.Of(night.Name)}-section", SectionField.Draw(night, Palette.Light, figures.Set, BuildUpPictures.PairPx))];
}
