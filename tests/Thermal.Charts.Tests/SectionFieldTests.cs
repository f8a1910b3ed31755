using SkiaSharp;
using Thermal.Bridges;
using Thermal.Words;

namespace Thermal.Charts.Tests;

/// <summary>A section shows the field it was solved for: all its heat, its dew point, its attitude.</summary>
public class SectionFieldTests
{
    // The drawn field lets through what the bounds allow above their middle, one per cent, and what lumping adds on a coarse grid.
    private const double FlowTolerance = 0.02;

    private static readonly Dictionary<string, SectionOnNight> Nights = new()
    {
        ["hat"] = SectionSamples.Hat, ["zed"] = SectionSamples.ZedLeft, ["bolt"] = SectionSamples.Bolt, ["edge"] = SectionSamples.Edge, ["bare"] = SectionSamples.Bare, ["corner"] = SectionSamples.Corner,
    };

    public static TheoryData<string> Names => [.. Nights.Keys];

    [Theory, MemberData(nameof(Names))]
    public void All_heat_of_the_section_flows_between_its_outermost_ways(string name)
    {
        SectionOnNight night = Nights[name];
        SectionCells cells = SectionCells.Of(night.Solved.Loss, night.TemperaturesC, night.IsHalf);
        ContourGrid ways = HeatWays.Of(cells, (x, y) => new SKPoint((float)x, (float)y), [.. cells.Pieces.Select(piece => piece is not null)]);
        double flowW = night.Solved.Loss.CouplingWPerK(DetailSection.Room, DetailSection.Outside) * (night.InsideC - night.OutsideC) * (night.IsHalf ? 2 : 1);
        Assert.InRange((ways.Span().High - ways.Span().Low) / flowW, 1 - FlowTolerance, 1 + FlowTolerance);
    }

    [Fact]
    public void The_dew_point_is_labelled_where_the_picture_has_it_and_only_there()
    {
        Assert.Contains(Words(SectionSamples.Hat), word => word.Text == "dew point 9.6 °C");
        Assert.DoesNotContain(Words(SectionSamples.Dry), word => word.Text.StartsWith("dew point −19", StringComparison.Ordinal));
        Assert.Contains("Nothing the picture shows is as cold", Caption(SectionSamples.Dry));
        Assert.Contains("All the picture shows is colder", Caption(SectionSamples.NoDifference));
    }

    [Fact]
    public void A_wet_coldest_point_above_freezing_drips_and_one_below_freezes()
    {
        Assert.Contains("it drips there", Caption(SectionSamples.Bolt));
        Assert.Contains("it freezes there", Caption(SectionSamples.Frost));
        Assert.Contains("above the dew point", Caption(SectionSamples.Hat));
    }

    [Theory]
    [InlineData(Attitude.Roof, true)]
    [InlineData(Attitude.Floor, false)]
    public void A_roof_has_the_sky_above_and_a_floor_the_room(Attitude attitude, bool isOutsideAbove)
    {
        IReadOnlyList<Drawn.Word> words = Words(SectionSamples.Hat with { Attitude = attitude });
        Assert.Equal(isOutsideAbove, words.First(word => word.Text == "Steel skin").Baseline < words.First(word => word.Text == "Birch ply lining").Baseline);
        Assert.Equal(isOutsideAbove, words.First(word => word.Text.StartsWith("sky and air", StringComparison.Ordinal)).Baseline < words.First(word => word.Text.StartsWith("room,", StringComparison.Ordinal)).Baseline);
    }

    [Theory]
    [InlineData(Attitude.OutsideLeft, true)]
    [InlineData(Attitude.OutsideRight, false)]
    public void A_side_has_its_outside_where_it_is(Attitude attitude, bool isOutsideLeft)
    {
        IReadOnlyList<Drawn.Word> words = Words(SectionSamples.ZedLeft with { Attitude = attitude });
        Assert.Equal(isOutsideLeft, words.First(word => word.Text.StartsWith("outside air", StringComparison.Ordinal)).Left < words.First(word => word.Text.StartsWith("room,", StringComparison.Ordinal)).Left);
    }

    [Fact]
    public void Where_a_side_stands_on_the_floor_the_floor_is_below()
    {
        SectionOnNight roofAbove = SectionSamples.CornerBelow with { OtherAttitude = Attitude.Roof };
        Assert.True(Coldest(SectionSamples.CornerBelow) > Skin(SectionSamples.CornerBelow));
        Assert.True(Coldest(roofAbove) < Skin(roofAbove));

        static double Coldest(SectionOnNight night) => Words(night).First(word => word.Text.StartsWith("coldest", StringComparison.Ordinal)).Baseline;
        static double Skin(SectionOnNight night) => Words(night).First(word => word.Text == "Steel skin").Baseline;
    }

    private static IReadOnlyList<Drawn.Word> Words(SectionOnNight night) => Drawn.Words(SectionField.Draw(night, Palette.Light, UnitSet.Metric));

    private static string Caption(SectionOnNight night) => SectionField.Draw(night, Palette.Light, UnitSet.Metric).Caption;
}
