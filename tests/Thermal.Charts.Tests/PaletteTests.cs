using SkiaSharp;

namespace Thermal.Charts.Tests;

/// <summary>Text can be read and neighbouring areas told apart, in colour and in grey print.</summary>
public class PaletteTests
{
    // WCAG 2.1, success criteria 1.4.3 (text) and 1.4.11 (what carries meaning).
    private const double TextContrast = 4.5, ShapeContrast = 3;

    // Two areas side by side have a line of ink between them or stand apart; this difference still shows on a poor printer.
    private const double StepContrast = 1.2;

    public static TheoryData<string> Names => [.. Gallery.Palettes.Select(palette => palette.Name)];

    private static Palette Named(string name) => Gallery.Palettes.First(palette => palette.Name == name);

    [Theory, MemberData(nameof(Names))]
    public void Text_stands_out_from_every_ground_it_is_written_on(string name)
    {
        Palette palette = Named(name);
        foreach (string ground in (string[])[palette.Card, palette.Paper])
            foreach (string text in (string[])[palette.Ink, palette.Muted, palette.Better, palette.Worse])
                Assert.True(Contrast(text, ground) >= TextContrast, $"{text} on {ground}: {Contrast(text, ground):F2}");
    }

    [Theory, MemberData(nameof(Names))]
    public void What_carries_a_message_stands_out_from_the_ground_in_grey(string name)
    {
        Palette palette = Named(name);
        foreach (string shape in (string[])[palette.Ink, palette.Water[3], palette.Heat[3], palette.Metal])
            Assert.True(Contrast(shape, palette.Card) >= ShapeContrast, $"{shape} on {palette.Card}: {Contrast(shape, palette.Card):F2}");
    }

    [Theory, MemberData(nameof(Names))]
    public void Neighbouring_steps_stay_apart_in_grey(string name)
    {
        Palette palette = Named(name);
        foreach (IReadOnlyList<string> steps in (IReadOnlyList<string>[])[palette.Heat, palette.Water])
            for (int i = 1; i < steps.Count; i++)
                Assert.True(Contrast(steps[i - 1], steps[i]) >= StepContrast, $"{steps[i - 1]} beside {steps[i]}: {Contrast(steps[i - 1], steps[i]):F2}");
    }

    [Theory, MemberData(nameof(Names))]
    public void The_areas_of_one_picture_stay_apart_in_grey(string name)
    {
        Palette palette = Named(name);
        (string First, string Second)[] neighbours =
        [
            (palette.Water[1], palette.Water[3]), // water at all faces and at the wettest
            (palette.Water[0], palette.Water[2]), // where it would drip and where it does
            (palette.Heat[2], palette.Line), // heat needed and what the heater gives
            (palette.Heat[2], palette.Card), // a bar and the ground
        ];
        Assert.All(neighbours, pair => Assert.True(Contrast(pair.First, pair.Second) >= StepContrast, $"{pair}: {Contrast(pair.First, pair.Second):F2}"));
    }

    /// <summary>Ratio of relative luminances, 1 to 21, which is what a grey print keeps.</summary>
    private static double Contrast(string one, string other)
    {
        double a = Luminance(one), b = Luminance(other);
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    private static double Luminance(string colour)
    {
        SKColor c = SKColor.Parse(colour);
        return 0.2126 * Linear(c.Red) + 0.7152 * Linear(c.Green) + 0.0722 * Linear(c.Blue);
    }

    private static double Linear(byte channel)
    {
        double v = channel / 255.0;
        return v <= 0.04045 ? v / 12.92 : Math.Pow((v + 0.055) / 1.055, 2.4);
    }
}
