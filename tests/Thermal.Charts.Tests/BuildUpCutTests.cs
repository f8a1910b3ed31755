using Thermal.Words;

namespace Thermal.Charts.Tests;

/// <summary>The cut says where it drips and where the room's air ends.</summary>
public class BuildUpCutTests
{
    [Fact]
    public void Degrees_to_spare_are_temperature_minus_dew_point_where_room_air_gets()
    {
        BuildUpCut cut = Samples.Roof with { TemperaturesAtFacesC = [16, 15, 0, -11, -11], ReachingDewPointsC = [9.5, 9.5, 9.5, null, null] };
        Assert.Equal([6.5, 5.5, -9.5, null, null], Enumerable.Range(0, 5).Select(cut.SpareAtFaceK));
        Assert.Equal(2, cut.WorstFace);
        Assert.Equal(2, cut.LastReachedFace);
    }

    [Fact]
    public void A_wet_face_above_freezing_drips_and_one_below_freezes()
    {
        BuildUpCut warm = Samples.Roof with { TemperaturesAtFacesC = [16, 15, 0.5, -11, -11], ReachingDewPointsC = [9.5, 9.5, 9.5, null, null] };
        BuildUpCut cold = warm with { TemperaturesAtFacesC = [16, 15, -0.5, -11, -11] };
        Assert.Contains("9.0 K below the dew point of the air that gets there: it drips", Caption(warm));
        Assert.Contains("10.0 K below the dew point of the air that gets there: it freezes", Caption(cold));
    }

    [Theory]
    [InlineData(Attitude.Roof, true)]
    [InlineData(Attitude.Floor, false)]
    public void A_roof_has_the_sky_above_and_a_floor_the_road_below(Attitude attitude, bool isOutsideAbove)
    {
        IReadOnlyList<Drawn.Word> words = Drawn.Words(CutThroughBuildUp.Draw(Samples.Roof with { Attitude = attitude }, Palette.Light, UnitSet.Metric));
        double skin = words.First(word => word.Text == "Steel skin").Baseline, lining = words.First(word => word.Text == "Birch ply lining").Baseline;
        Assert.Equal(isOutsideAbove, skin < lining);
        Assert.Equal(isOutsideAbove, words.First(word => word.Text.StartsWith("sky and air", StringComparison.Ordinal)).Baseline < skin);
    }

    [Theory]
    [InlineData(Attitude.OutsideLeft, true)]
    [InlineData(Attitude.OutsideRight, false)]
    public void A_side_has_its_outside_where_it_is(Attitude attitude, bool isOutsideLeft)
    {
        IReadOnlyList<Drawn.Word> words = Drawn.Words(CutThroughBuildUp.Draw(Samples.Roof with { Attitude = attitude }, Palette.Light, UnitSet.Metric));
        double skin = words.First(word => word.Text == "Steel skin").Left, lining = words.First(word => word.Text == "Birch ply lining").Left;
        Assert.Equal(isOutsideLeft, skin < lining);
    }

    [Fact]
    public void Names_come_down_inside_a_sentence_unless_they_are_abbreviations()
    {
        Assert.Equal("closed-cell foam", CutWords.Lowered("Closed-cell foam"));
        Assert.Equal("GRP skin", CutWords.Lowered("GRP skin"));
    }

    private static string Caption(BuildUpCut cut) => CutThroughBuildUp.Draw(cut, Palette.Light, UnitSet.Metric).Caption;
}
