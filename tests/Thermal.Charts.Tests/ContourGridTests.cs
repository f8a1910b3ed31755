using SkiaSharp;

namespace Thermal.Charts.Tests;

/// <summary>Lines and areas of a level on a grid, against fields whose contours are known.</summary>
public class ContourGridTests
{
    private static ContourGrid Of(Func<float, float, double> field, Func<int, bool> isIn)
    {
        SKPoint[] at = [.. from y in Enumerable.Range(0, 5) from x in Enumerable.Range(0, 5) select new SKPoint(x * 10, y * 10)];
        return new ContourGrid(at, 5, [.. at.Select(point => field(point.X, point.Y))], [.. Enumerable.Range(0, 16).Select(isIn)]);
    }

    [Fact]
    public void A_slope_has_one_straight_line_at_its_level()
    {
        SKPoint[] line = Assert.Single(Of((x, _) => x, _ => true).Lines(13));
        Assert.Equal(2, line.Length);
        Assert.All(line, point => Assert.Equal(13, point.X, 1e-4f));
    }

    [Fact]
    public void Above_a_level_lies_the_rest_of_the_field()
    {
        Assert.Equal(27 * 40, Math.Abs(Of((x, _) => x, _ => true).Areas(13).Sum(Area)), 1e-2f);
        Assert.Equal(1600, Math.Abs(Of((x, _) => x, _ => true).Areas(double.NegativeInfinity).Sum(Area)), 1e-2f);
    }

    [Fact]
    public void A_hole_in_the_field_is_taken_off() =>
        Assert.Equal(1500, Math.Abs(Of((x, _) => x, cell => cell != 5).Areas(double.NegativeInfinity).Sum(Area)), 1e-2f);

    [Fact]
    public void A_level_beyond_the_field_has_no_line_and_no_area()
    {
        Assert.Empty(Of((x, _) => x, _ => true).Lines(41));
        Assert.Empty(Of((x, _) => x, _ => true).Areas(41));
    }

    [Fact]
    public void The_line_round_a_hilltop_is_closed()
    {
        SKPoint[] line = Assert.Single(Of((x, y) => -Math.Abs(x - 20) - Math.Abs(y - 20), _ => true).Lines(-15));
        Assert.Equal(line[0], line[^1]);
    }

    private static float Area(SKPoint[] outline) =>
        Enumerable.Range(0, outline.Length).Sum(i => outline[i].X * outline[(i + 1) % outline.Length].Y - outline[(i + 1) % outline.Length].X * outline[i].Y) / 2;
}
