using Thermal.Words;

namespace Thermal.Charts.Tests;

/// <summary>Every picture of ordinary and awkward results, by name.</summary>
internal static class Gallery
{
    internal static IReadOnlyDictionary<string, Func<Palette, UnitSet, Picture>> All { get; } = new Dictionary<string, Func<Palette, UnitSet, Picture>>
    {
        ["cut: roof"] = (palette, units) => CutThroughBuildUp.Draw(Samples.Roof, palette, units),
        ["cut: floor with battens"] = (palette, units) => CutThroughBuildUp.Draw(Samples.Floor, palette, units),
        ["cut: left side"] = (palette, units) => CutThroughBuildUp.Draw(Samples.LeftSide, palette, units),
        ["cut: right side"] = (palette, units) => CutThroughBuildUp.Draw(Samples.RightSide, palette, units),
        ["cut: one layer standing"] = (palette, units) => CutThroughBuildUp.Draw(Samples.OneLayer, palette, units),
        ["cut: one layer lying"] = (palette, units) => CutThroughBuildUp.Draw(Samples.OneLayerRoof, palette, units),
        ["cut: dry"] = (palette, units) => CutThroughBuildUp.Draw(Samples.MildRoof, palette, units),
        ["cut: twelve layers lying"] = (palette, units) => CutThroughBuildUp.Draw(Samples.TwelveLayers(Attitude.Floor), palette, units),
        ["cut: twelve layers standing"] = (palette, units) => CutThroughBuildUp.Draw(Samples.TwelveLayers(Attitude.OutsideLeft), palette, units),
        ["dew point: roof"] = (palette, units) => TemperatureAndDewPoint.Draw(Samples.Roof, palette, units),
        ["dew point: one layer"] = (palette, units) => TemperatureAndDewPoint.Draw(Samples.OneLayer, palette, units),
        ["dew point: dry"] = (palette, units) => TemperatureAndDewPoint.Draw(Samples.MildRoof, palette, units),
        ["dew point: twelve layers"] = (palette, units) => TemperatureAndDewPoint.Draw(Samples.TwelveLayers(Attitude.Roof), palette, units),
        ["vapour: roof"] = (palette, units) => VapourPressureOverDiffusion.Draw(Samples.Roof, palette, units),
        ["vapour: one layer"] = (palette, units) => VapourPressureOverDiffusion.Draw(Samples.OneLayer, palette, units),
        ["vapour: dry"] = (palette, units) => VapourPressureOverDiffusion.Draw(Samples.MildRoof, palette, units),
        ["vapour: twelve layers"] = (palette, units) => VapourPressureOverDiffusion.Draw(Samples.TwelveLayers(Attitude.Roof), palette, units),
        ["loss: cold night"] = (palette, units) => LossByPart.Draw(Samples.ColdNight, palette, units),
        ["loss: many parts"] = (palette, units) => LossByPart.Draw(Samples.ManyParts, palette, units),
        ["loss: none"] = (palette, units) => LossByPart.Draw(Samples.NoLoss, palette, units),
        ["loss: a gain"] = (palette, units) => LossByPart.Draw(Samples.WithGain, palette, units),
        ["year: wet winter"] = (palette, units) => WettingAndDrying.Draw("Roof", Samples.WetWinter, palette, units),
        ["year: never dries"] = (palette, units) => WettingAndDrying.Draw("Roof", Samples.NeverDries, palette, units),
        ["year: dry"] = (palette, units) => WettingAndDrying.Draw("Roof", Samples.DryYear, palette, units),
        ["heater: enough"] = (palette, units) => HeaterOutput.Draw(Samples.Need, palette, units),
        ["heater: too small"] = (palette, units) => HeaterOutput.Draw(Samples.TooSmall, palette, units),
        ["thickness: headroom"] = (palette, units) => ThicknessCurve.Draw(Samples.Thicknesses, palette, units),
        ["thickness: crowded"] = (palette, units) => ThicknessCurve.Draw(Samples.CrowdedThicknesses, palette, units),
    };

    internal static IReadOnlyList<Palette> Palettes { get; } = [Palette.Light, Palette.Dark, Palette.Print];

    public static TheoryData<string, UnitSet> InBothUnits()
    {
        var rows = new TheoryData<string, UnitSet>();
        foreach (string name in All.Keys)
        {
            rows.Add(name, UnitSet.Metric);
            rows.Add(name, UnitSet.Us);
        }
        return rows;
    }

    public static TheoryData<string> Names() => [.. All.Keys];

    /// <summary>One of each kind, for what costs pixels.</summary>
    public static TheoryData<string> Kinds() => [.. All.Keys.DistinctBy(name => name.Split(':')[0]), "cut: right side"];
}
