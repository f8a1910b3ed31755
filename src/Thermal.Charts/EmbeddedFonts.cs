using ScottPlot;
using SkiaSharp;

namespace Thermal.Charts;

/// <summary>Lends the typeface of the pictures from this assembly, so that a machine without fonts draws the same letters.</summary>
internal sealed class EmbeddedFonts : IFontResolver
{
    /// <summary>The typeface's own family name, which a page must serve under the same name.</summary>
    internal const string Family = "Inter";

    private static readonly Lazy<SKTypeface> RegularFace = new(() => Load("Inter-Regular.ttf"));
    private static readonly Lazy<SKTypeface> SemiBoldFace = new(() => Load("Inter-SemiBold.ttf"));

    internal static SKTypeface Regular => RegularFace.Value;

    internal static SKTypeface SemiBold => SemiBoldFace.Value;

    /// <summary>Makes this typeface the one of every plot; harmless when called again.</summary>
    internal static void Use() => _ = Registered.Value;

    // The plotting library keeps its resolvers in one list for the process.
    private static readonly Lazy<bool> Registered = new(() =>
    {
        Fonts.FontResolvers.Insert(0, new EmbeddedFonts());
        Fonts.Default = Family;
        return true;
    });

    public SKTypeface? CreateTypeface(string fontName, bool bold, bool italic) =>
        fontName == Family ? (bold ? SemiBold : Regular) : null;

    public SKTypeface? CreateTypeface(string fontName, FontWeight weight, FontSlant slant, FontSpacing spacing) =>
        CreateTypeface(fontName, weight >= FontWeight.SemiBold, false);

    private static SKTypeface Load(string resource)
    {
        using Stream stream = typeof(EmbeddedFonts).Assembly.GetManifestResourceStream(resource)
            ?? throw new InvalidOperationException($"The typeface {resource} is not embedded.");
        return SKTypeface.FromStream(stream);
    }
}
