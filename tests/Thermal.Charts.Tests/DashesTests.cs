using SkiaSharp;

namespace Thermal.Charts.Tests;

/// <summary>Dashes are cut by length, round corners too.</summary>
public class DashesTests
{
    [Fact]
    public void Dashes_take_their_share_of_a_line_with_a_corner()
    {
        // 100 px long with a corner at 37: ten periods of 6 drawn and 4 left out.
        using SKPath path = Dashes.Of([new SKPoint(0, 0), new SKPoint(37, 0), new SKPoint(37, 63)], dash: 6, gap: 4);
        using var measure = new SKPathMeasure(path);
        float drawn = 0;
        int pieces = 0;
        do
        {
            drawn += measure.Length;
            pieces++;
        }
        while (measure.NextContour());
        Assert.Equal(60, drawn, 0.01f); // single precision over 100 px
        Assert.Equal(10, pieces);
    }
}
