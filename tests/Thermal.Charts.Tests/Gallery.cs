using Thermal.Words;

namespace Thermal.Charts.Tests;

/// <summary>Every picture of ordinary and awkward results, by name.</summary>
internal static class Gallery
{
    internal static IReadOnlyDictionary<string, Func<Palette, UnitSet, int, Picture>> All { get; } = new Dictionary<string, Func<Palette, UnitSet, int, Picture>>
    {
        ["cut: roof"] = (palette, units, width) => CutThroughBuildUp.Draw(Samples.Roof, palette, units, width),
        ["cut: floor with battens"] = (palette, units, width) => CutThroughBuildUp.Draw(Samples.Floor, palette, units, width),
        ["cut: left side"] = (palette, units, width) => CutThroughBuildUp.Draw(Samples.LeftSide, palette, units, width),
        ["cut: right side"] = (palette, units, width) => CutThroughBuildUp.Draw(Samples.RightSide, palette, units, width),
        ["cut: one layer standing"] = (palette, units, width) => CutThroughBuildUp.Draw(Samples.OneLayer, palette, units, width),
        ["cut: one layer lying"] = (palette, units, width) => CutThroughBuildUp.Draw(Samples.OneLayerRoof, palette, units, width),
        ["cut: dry"] = (palette, units, width) => CutThroughBuildUp.Draw(Samples.MildRoof, palette, units, width),
        ["cut: twelve layers lying"] = (palette, units, width) => CutThroughBuildUp.Draw(Samples.TwelveLayers(Attitude.Floor), palette, units, width),
        ["cut: twelve layers standing"] = (palette, units, width) => CutThroughBuildUp.Draw(Samples.TwelveLayers(Attitude.OutsideLeft), palette, units, width),
        ["cut: long names, roof"] = (palette, units, width) => CutThroughBuildUp.Draw(Samples.LongNames(Attitude.Roof), palette, units, width),
        ["cut: long names, floor"] = (palette, units, width) => CutThroughBuildUp.Draw(Samples.LongNames(Attitude.Floor), palette, units, width),
        ["cut: long names, left"] = (palette, units, width) => CutThroughBuildUp.Draw(Samples.LongNames(Attitude.OutsideLeft), palette, units, width),
        ["cut: long names, right"] = (palette, units, width) => CutThroughBuildUp.Draw(Samples.LongNames(Attitude.OutsideRight), palette, units, width),
        ["cut: roof with bows"] = (palette, units, width) => CutThroughBuildUp.Draw(Samples.RoofWithBows, palette, units, width),
        ["cut: floor with runners"] = (palette, units, width) => CutThroughBuildUp.Draw(Samples.RoofWithBows with { Name = "Floor", Attitude = Attitude.Floor }, palette, units, width),
        ["cut: left side with ribs"] = (palette, units, width) => CutThroughBuildUp.Draw(Samples.SideWithRibs(Attitude.OutsideLeft), palette, units, width),
        ["cut: right side with ribs"] = (palette, units, width) => CutThroughBuildUp.Draw(Samples.SideWithRibs(Attitude.OutsideRight), palette, units, width),
        ["dew point: long names"] = (palette, units, width) => TemperatureAndDewPoint.Draw(Samples.LongNames(Attitude.Roof), palette, units, width),
        ["vapour: long names"] = (palette, units, width) => VapourPressureOverDiffusion.Draw(Samples.LongNames(Attitude.Roof), palette, units, width),
        ["thickness: long names"] = (palette, units, width) => ThicknessCurve.Draw(Samples.LongThicknesses, palette, units, width),
        ["dew point: roof"] = (palette, units, width) => TemperatureAndDewPoint.Draw(Samples.Roof, palette, units, width),
        ["dew point: one layer"] = (palette, units, width) => TemperatureAndDewPoint.Draw(Samples.OneLayer, palette, units, width),
        ["dew point: dry"] = (palette, units, width) => TemperatureAndDewPoint.Draw(Samples.MildRoof, palette, units, width),
        ["dew point: twelve layers"] = (palette, units, width) => TemperatureAndDewPoint.Draw(Samples.TwelveLayers(Attitude.Roof), palette, units, width),
        ["vapour: roof"] = (palette, units, width) => VapourPressureOverDiffusion.Draw(Samples.Roof, palette, units, width),
        ["vapour: one layer"] = (palette, units, width) => VapourPressureOverDiffusion.Draw(Samples.OneLayer, palette, units, width),
        ["vapour: dry"] = (palette, units, width) => VapourPressureOverDiffusion.Draw(Samples.MildRoof, palette, units, width),
        ["vapour: twelve layers"] = (palette, units, width) => VapourPressureOverDiffusion.Draw(Samples.TwelveLayers(Attitude.Roof), palette, units, width),
        ["loss: cold night"] = (palette, units, width) => LossByPart.Draw(Samples.ColdNight, palette, units, width),
        ["loss: many parts"] = (palette, units, width) => LossByPart.Draw(Samples.ManyParts, palette, units, width),
        ["loss: none"] = (palette, units, width) => LossByPart.Draw(Samples.NoLoss, palette, units, width),
        ["loss: a gain"] = (palette, units, width) => LossByPart.Draw(Samples.WithGain, palette, units, width),
        ["year: wet winter"] = (palette, units, width) => WettingAndDrying.Draw("Roof", Samples.WetWinter, palette, units, width),
        ["year: never dries"] = (palette, units, width) => WettingAndDrying.Draw("Roof", Samples.NeverDries, palette, units, width),
        ["year: damp"] = (palette, units, width) => WettingAndDrying.Draw("Roof", Samples.DampYear, palette, units, width),
        ["year: dry"] = (palette, units, width) => WettingAndDrying.Draw("Roof", Samples.DryYear, palette, units, width),
        ["heater: enough"] = (palette, units, width) => HeaterOutput.Draw(Samples.Need, palette, units, width),
        ["heater: too small"] = (palette, units, width) => HeaterOutput.Draw(Samples.TooSmall, palette, units, width),
        ["section: roof bow"] = (palette, units, width) => SectionField.Draw(SectionSamples.Hat, palette, units, width),
        ["section: floor runner"] = (palette, units, width) => SectionField.Draw(SectionSamples.FloorHat, palette, units, width),
        ["section: left side"] = (palette, units, width) => SectionField.Draw(SectionSamples.ZedLeft, palette, units, width),
        ["section: right side"] = (palette, units, width) => SectionField.Draw(SectionSamples.ZedRight, palette, units, width),
        ["section: deep bow"] = (palette, units, width) => SectionField.Draw(SectionSamples.DeepBow, palette, units, width),
        ["section: thin strip"] = (palette, units, width) => SectionField.Draw(SectionSamples.ThinStrip, palette, units, width),
        ["section: frost"] = (palette, units, width) => SectionField.Draw(SectionSamples.Frost, palette, units, width),
        ["section: nearly isothermal"] = (palette, units, width) => SectionField.Draw(SectionSamples.Isothermal, palette, units, width),
        ["section: no difference"] = (palette, units, width) => SectionField.Draw(SectionSamples.NoDifference, palette, units, width),
        ["section: dry"] = (palette, units, width) => SectionField.Draw(SectionSamples.Dry, palette, units, width),
        ["section: summer"] = (palette, units, width) => SectionField.Draw(SectionSamples.Summer, palette, units, width),
        ["section: long names"] = (palette, units, width) => SectionField.Draw(SectionSamples.LongNames, palette, units, width),
        ["section: bolt"] = (palette, units, width) => SectionField.Draw(SectionSamples.Bolt, palette, units, width),
        ["section: covered bolt, side"] = (palette, units, width) => SectionField.Draw(SectionSamples.CoveredBolt, palette, units, width),
        ["section: bare rib"] = (palette, units, width) => SectionField.Draw(SectionSamples.Bare, palette, units, width),
        ["section: batten"] = (palette, units, width) => SectionField.Draw(SectionSamples.Batten, palette, units, width),
        ["section: edge of a window"] = (palette, units, width) => SectionField.Draw(SectionSamples.Edge, palette, units, width),
        ["section: corner below"] = (palette, units, width) => SectionField.Draw(SectionSamples.CornerBelow, palette, units, width),
        ["section: corner"] = (palette, units, width) => SectionField.Draw(SectionSamples.Corner, palette, units, width),
        ["strip: dries"] = (palette, units, width) => StripChart.Draw(Samples.Strips, palette, units, width),
        ["strip: dry already"] = (palette, units, width) => StripChart.Draw(Samples.DryStrips, palette, units, width),
        ["strip: frost, two only"] = (palette, units, width) => StripChart.Draw(Samples.FrostStrips, palette, units, width),
        ["filling: three"] = (palette, units, width) => FillingChart.Draw(Samples.Fillings, palette, units, width),
        ["filling: wet, long names"] = (palette, units, width) => FillingChart.Draw(Samples.WetFillings, palette, units, width),
        ["thickness: headroom"] = (palette, units, width) => ThicknessCurve.Draw(Samples.Thicknesses, palette, units, width),
        ["thickness: with ribs"] = (palette, units, width) => ThicknessCurve.Draw(Samples.RibThicknesses, palette, units, width),
        ["months: alpine"] = (palette, units, width) => MonthsOfPlace.Draw(ClimateSamples.Alpine, palette, units, width),
        ["months: means alone"] = (palette, units, width) => MonthsOfPlace.Draw(ClimateSamples.MeansAlone, palette, units, width),
        ["hours: alpine"] = (palette, units, width) => HoursColder.Draw(ClimateSamples.AlpineYear, ClimateSamples.Alpine.Designs, palette, units, width),
        ["hours: four designs"] = (palette, units, width) => HoursColder.Draw(ClimateSamples.ArcticYear, ClimateSamples.Arctic.Designs, palette, units, width),
        ["hours: mild, no design"] = (palette, units, width) => HoursColder.Draw(ClimateSamples.MildYear, [], palette, units, width),
        ["sun path: alpine"] = (palette, units, width) => SunOverDirection.Draw("Alpine valley", ClimateSamples.PathsAt(46.8), 10, palette, units, width),
        ["sun path: arctic"] = (palette, units, width) => SunOverDirection.Draw("Arctic", ClimateSamples.PathsAt(69), 0, palette, units, width),
        ["sun path: south"] = (palette, units, width) => SunOverDirection.Draw("South island", ClimateSamples.PathsAt(-45), 5, palette, units, width),
        ["sun path: tropics"] = (palette, units, width) => SunOverDirection.Draw("Tropics", ClimateSamples.PathsAt(5), 0, palette, units, width),
        ["sun path: deep valley"] = (palette, units, width) => SunOverDirection.Draw("Deep valley", ClimateSamples.PathsAt(60), 40, palette, units, width),
        ["sun: heading south"] = (palette, units, width) => SunOnSides.Draw(ClimateSamples.HeadingSouth, palette, units, width),
        ["sun: any heading"] = (palette, units, width) => SunOnSides.Draw(ClimateSamples.AnyHeading, palette, units, width),
        ["thickness: crowded"] = (palette, units, width) => ThicknessCurve.Draw(Samples.CrowdedThicknesses, palette, units, width),
    };

    internal static IReadOnlyList<Palette> Palettes { get; } = [Palette.Light, Palette.Dark, Palette.Print];

    /// <summary>As wide as a page shows one alone, two side by side, and the narrowest allowed.</summary>
    internal static IReadOnlyList<int> WidthsPx { get; } = [640, 530, 480];

    internal static Picture Draw(string name, UnitSet units = UnitSet.Metric, int widthPx = 640) => All[name](Palette.Light, units, widthPx);

    public static TheoryData<string, UnitSet, int> InBothUnitsAndAllWidths() =>
        [.. from name in All.Keys from units in Enum.GetValues<UnitSet>() from width in WidthsPx select new TheoryDataRow<string, UnitSet, int>(name, units, width)];

    public static TheoryData<string> Names() => [.. All.Keys];

    /// <summary>One of each kind, for what costs pixels.</summary>
    public static TheoryData<string> Kinds() => [.. All.Keys.DistinctBy(name => name.Split(':')[0]), "cut: right side"];
}
