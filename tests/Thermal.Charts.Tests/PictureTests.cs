using System.Text.RegularExpressions;
using SkiaSharp;
using Thermal.Words;

namespace Thermal.Charts.Tests;

/// <summary>What holds for every picture, whatever it shows.</summary>
public partial class PictureTests
{
    // Nothing smaller reads on a phone or on paper.
    private const double LeastTextPx = 11.5;

    public static TheoryData<string> Names() => Gallery.Names();

    public static TheoryData<string> Kinds() => Gallery.Kinds();

    public static TheoryData<string, UnitSet, int> InBothUnitsAndAllWidths() => Gallery.InBothUnitsAndAllWidths();

    [Theory, MemberData(nameof(Names))]
    public void The_vector_text_is_one_labelled_svg_element_without_dashes(string name)
    {
        Picture picture = Gallery.Draw(name);
        Assert.StartsWith("<svg xmlns=\"http://www.w3.org/2000/svg\"", picture.Svg);
        Assert.Equal("img", Drawn.Root(picture).Attribute("role")!.Value);
        Assert.Equal(picture.AltText, Drawn.Root(picture).Attribute("aria-label")!.Value);
        Assert.Equal($"0 0 {picture.Width} {picture.Height}", Drawn.Root(picture).Attribute("viewBox")!.Value);
        Assert.DoesNotContain("stroke-dasharray", picture.Svg);
    }

    [Theory, MemberData(nameof(InBothUnitsAndAllWidths))]
    public void No_text_leaves_the_picture_or_is_too_small(string name, UnitSet units, int widthPx)
    {
        Picture picture = Gallery.Draw(name, units, widthPx);
        IReadOnlyList<Drawn.Word> words = Drawn.Words(picture);
        Assert.True(words.Count > 3, $"{words.Count} texts: the letters are missing.");
        Assert.DoesNotContain(words, word => word.Left < 0 || word.Left + word.Length > picture.Width || word.Baseline - word.Size < 0 || word.Baseline > picture.Height - 2);
        Assert.DoesNotContain(words, word => word.Size < LeastTextPx);
    }

    [Theory, MemberData(nameof(InBothUnitsAndAllWidths))]
    public void No_text_stands_on_another(string name, UnitSet units, int widthPx)
    {
        IReadOnlyList<Drawn.Word> words = Drawn.Words(Gallery.Draw(name, units, widthPx));
        Assert.Empty(
            from first in Enumerable.Range(0, words.Count)
            from second in Enumerable.Range(first + 1, words.Count - first - 1)
            where words[first].Meets(words[second])
            select $"{words[first].Text} / {words[second].Text}");
    }

    [Theory, MemberData(nameof(InBothUnitsAndAllWidths))]
    public void The_words_for_the_blind_hold_numbers_and_the_minus_is_a_true_one(string name, UnitSet units, int widthPx)
    {
        Picture picture = Gallery.Draw(name, units, widthPx);
        Assert.Matches(@"[0-9].*\.$", picture.AltText);
        Assert.EndsWith(".", picture.Caption);
        Assert.DoesNotMatch(@"(^|[\s(])-[0-9]|−0(\.0+)?(?![0-9.])", picture.AltText + " " + string.Join(" ", Drawn.Words(picture).Select(word => word.Text)));
    }

    [Theory, MemberData(nameof(Kinds))]
    public void Pixels_are_sharp_and_the_same_each_time_and_never_blank(string name)
    {
        Picture picture = Gallery.Draw(name);
        byte[] png = picture.ToPng();
        Assert.Equal(png, Gallery.Draw(name).ToPng());
        using SKBitmap bitmap = SKBitmap.Decode(png);
        Assert.Equal(picture.Width * 2, bitmap.Width);
        // Letters alone cover about one in a hundred pixels.
        Assert.InRange(Share(bitmap, colour => colour != SKColors.White), 0.01, 0.99);
    }

    [Theory, MemberData(nameof(Kinds))]
    public void All_palettes_draw_on_their_own_ground_with_their_own_ink(string name)
    {
        foreach (Palette palette in Gallery.Palettes)
        {
            using SKBitmap bitmap = SKBitmap.Decode(Gallery.All[name](palette, UnitSet.Metric, 640).ToPng());
            Assert.Equal(SKColor.Parse(palette.Card), bitmap.GetPixel(2, 2));
            Assert.InRange(Share(bitmap, colour => colour == SKColor.Parse(palette.Ink)), 0.001, 0.5);
        }
    }

    [Fact]
    public void Drawing_equal_content_again_gives_equal_text_and_different_pictures_share_no_id()
    {
        string[] first = [.. Gallery.All.Keys.Select(name => Gallery.Draw(name).Svg)];
        string[] second = [.. Gallery.All.Keys.Reverse().Select(name => Gallery.Draw(name).Svg).Reverse()];
        Assert.Equal(first, second);
        string[] ids = [.. first.SelectMany(svg => Id().Matches(svg).Select(match => match.Groups[1].Value))];
        Assert.NotEmpty(ids);
        Assert.Equal(ids.Length, ids.Distinct().Count());
    }

    [Fact]
    public void Every_kind_of_picture_refuses_to_be_too_narrow_to_read()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => CutThroughBuildUp.Draw(Samples.Roof, Palette.Light, UnitSet.Metric, width: 300));
        Assert.Throws<ArgumentOutOfRangeException>(() => TemperatureAndDewPoint.Draw(Samples.Roof, Palette.Light, UnitSet.Metric, width: 300));
        Assert.Throws<ArgumentOutOfRangeException>(() => VapourPressureOverDiffusion.Draw(Samples.Roof, Palette.Light, UnitSet.Metric, width: 300));
        Assert.Throws<ArgumentOutOfRangeException>(() => LossByPart.Draw(Samples.ColdNight, Palette.Light, UnitSet.Metric, width: 300));
        Assert.Throws<ArgumentOutOfRangeException>(() => WettingAndDrying.Draw("Roof", Samples.WetWinter, Palette.Light, UnitSet.Metric, width: 300));
        Assert.Throws<ArgumentOutOfRangeException>(() => HeaterOutput.Draw(Samples.Need, Palette.Light, UnitSet.Metric, width: 300));
        Assert.Throws<ArgumentOutOfRangeException>(() => SectionField.Draw(SectionSamples.Hat, Palette.Light, UnitSet.Metric, width: 300));
        Assert.Throws<ArgumentOutOfRangeException>(() => StripChart.Draw(Samples.Strips, Palette.Light, UnitSet.Metric, width: 300));
        Assert.Throws<ArgumentOutOfRangeException>(() => FillingChart.Draw(Samples.Fillings, Palette.Light, UnitSet.Metric, width: 300));
        Assert.Throws<ArgumentOutOfRangeException>(() => ThicknessCurve.Draw(Samples.Thicknesses, Palette.Light, UnitSet.Metric, width: 300));
        Assert.Throws<ArgumentOutOfRangeException>(() => MonthsOfPlace.Draw(ClimateSamples.Alpine, Palette.Light, UnitSet.Metric, width: 300));
        Assert.Throws<ArgumentOutOfRangeException>(() => HoursColder.Draw(ClimateSamples.AlpineYear, [], Palette.Light, UnitSet.Metric, width: 300));
        Assert.Throws<ArgumentOutOfRangeException>(() => SunOverDirection.Draw("x", ClimateSamples.PathsAt(47), 0, Palette.Light, UnitSet.Metric, width: 300));
        Assert.Throws<ArgumentOutOfRangeException>(() => SunOnSides.Draw(ClimateSamples.AnyHeading, Palette.Light, UnitSet.Metric, width: 300));
        Assert.Throws<ArgumentOutOfRangeException>(() => TripTemperatures.Draw(TripSamples.SkiWeek, Palette.Light, UnitSet.Metric, width: 300));
        Assert.Throws<ArgumentOutOfRangeException>(() => TripWater.Draw(TripSamples.SkiWeek, Palette.Light, UnitSet.Metric, width: 300));
        Assert.Throws<ArgumentOutOfRangeException>(() => TripEnergyPicture.Draw(TripSamples.SkiWeek, Palette.Light, UnitSet.Metric, width: 300));
        Assert.Throws<ArgumentOutOfRangeException>(() => TripWaterBook.Draw(TripSamples.SkiWeek, Palette.Light, UnitSet.Metric, width: 300));
        Assert.Throws<ArgumentOutOfRangeException>(() => TripTanks.Draw(TripSamples.SkiWeek, Palette.Light, UnitSet.Metric, width: 300));
        Assert.Throws<ArgumentOutOfRangeException>(() => TripTanks.Draw(TripSamples.Bare, Palette.Light, UnitSet.Metric));
    }

    private static double Share(SKBitmap bitmap, Func<SKColor, bool> counts) => (double)bitmap.Pixels.Count(counts) / bitmap.Pixels.Length;

    [GeneratedRegex("id=\"([^\"]+)\"")]
    private static partial Regex Id();
}
