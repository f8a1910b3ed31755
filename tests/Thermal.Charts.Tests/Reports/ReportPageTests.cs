using System.Net;
using System.Text.RegularExpressions;
using Thermal.Assessments;
using Thermal.Choices;
using Thermal.Envelope;
using Thermal.Files;
using Thermal.Reports;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Charts.Tests.Reports;

/// <summary>A report is one page that needs nothing beside it, says the verdict first and shows its working.</summary>
public sealed partial class ReportPageTests
{
    private const string Poison = "<script>alert(\"1\")</script>&amp;' onload='x";

    private static readonly Assessment Found = Assess.Of(VehicleLibrary.Find("library-van")!);

    private static readonly Report Page = ReportPage.Of(Found, Advice.Of(Found), Figures.Metric, new DateOnly(2026, 1, 15));

    private static readonly string Text = WebUtility.HtmlDecode(Tag().Replace(Page.Html, " ")).Replace('\u00A0', ' ');

    [Fact]
    public void The_verdict_stands_in_the_first_heading() =>
        Assert.Equal(Verdict.Of(Found, Figures.Metric), WebUtility.HtmlDecode(FirstHeading().Match(Page.Html).Groups[1].Value).Replace('\u00A0', ' '));

    [Fact]
    public void Five_answers_follow_it() => Assert.Equal(5, Count("class=\"tile\""));

    [Fact]
    public void Nothing_is_fetched_and_nothing_runs()
    {
        Assert.DoesNotMatch(Fetches(), Page.Html);
        Assert.DoesNotContain("<script", Page.Html, StringComparison.OrdinalIgnoreCase);
        Assert.All(Address().Matches(Page.Html), address => Assert.StartsWith("http://www.w3.org/", address.Value, StringComparison.Ordinal));
    }

    [Fact]
    public void Every_picture_has_words_for_those_who_cannot_see_it_and_a_caption()
    {
        Assert.Equal(Page.Figures.Count, Count("<svg "));
        Assert.Equal(Page.Figures.Count, Count("<figcaption>"));
        Assert.All(Page.Figures, figure => Assert.NotEmpty(figure.Picture.AltText));
        Assert.Equal(Count("<svg "), Count("role=\"img\" aria-label=\""));
    }

    [Fact]
    public void No_colour_of_one_palette_is_left_in_a_picture_so_that_it_turns_dark_with_the_page() => Assert.All(
        [Palette.Light.Ink, Palette.Light.Muted, Palette.Light.Card, Palette.Light.Line],
        colour => Assert.DoesNotContain($"=\"{colour}\"", Page.Html, StringComparison.OrdinalIgnoreCase));

    [Fact]
    public void Every_build_up_shows_its_working_with_formula_and_clause()
    {
        Assert.All(Found.BuildUps, damp => Assert.Contains($"Working: {damp.Name}", Text, StringComparison.Ordinal));
        Assert.All(["R = d/λ", "U = 1/R_T + ΔU_g", "s_d = μ · d", "p_sat", "ISO 6946", "ISO 13788", "DIN 4108-3"], part => Assert.Contains(part, Text, StringComparison.Ordinal));
    }

    [Fact]
    public void Cautions_assumptions_and_limits_are_all_there() => Assert.All(
        Cautions.Of(Found.Case).Concat(Assumptions.Of(Found, Figures.Metric)).Concat(Assumptions.Limits),
        sentence => Assert.Contains(sentence, Text, StringComparison.Ordinal));

    [Fact]
    public void Every_part_of_the_loss_is_in_the_table() =>
        Assert.All(Found.ColdNight.Losses, loss => Assert.Contains(loss.Name, Text, StringComparison.Ordinal));

    [Fact]
    public void Every_link_on_the_page_leads_somewhere() => Assert.All(
        Link().Matches(Page.Html), link => Assert.Contains($"id=\"{link.Groups[1].Value}\"", Page.Html, StringComparison.Ordinal));

    [Fact]
    public void Names_of_files_are_harmless_and_all_different()
    {
        Assert.All(Page.Figures, figure => Assert.Matches("^[a-z0-9]+(-[a-z0-9]+)*$", figure.Name));
        Assert.Equal(Page.Figures.Count, Page.Figures.Select(figure => figure.Name).Distinct().Count());
    }

    [Fact]
    public void What_a_person_names_is_never_markup()
    {
        Case asked = VehicleLibrary.Find("weekend-van")!;
        Surface first = asked.Vehicle.Surfaces[0];
        Case poisoned = asked with
        {
            Vehicle = asked.Vehicle with
            {
                Name = Poison,
                Description = Poison,
                Surfaces = [first with { Name = Poison, Stack = new Stack([.. first.Stack.Layers.Select(layer => layer with { Name = Poison })]) }, .. asked.Vehicle.Surfaces.Skip(1)],
            },
        };
        Assessment found = Assess.Of(poisoned);
        string html = ReportPage.Of(found, Advice.Of(found), Figures.Metric, new DateOnly(2026, 1, 15)).Html;
        Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("' onload", html, StringComparison.Ordinal);
        Assert.Contains("&lt;script&gt;", html, StringComparison.Ordinal);
    }

    [Fact]
    public void A_case_without_months_has_a_page_too()
    {
        Assessment found = Assess.Of(VehicleLibrary.Find("weekend-van")! with { Place = null });
        string html = ReportPage.Of(found, Advice.Of(found), Figures.Us, new DateOnly(2026, 1, 15)).Html;
        Assert.Contains("nothing can be said of drying", html, StringComparison.Ordinal);
        Assert.DoesNotContain("NaN", html, StringComparison.Ordinal);
    }

    private static int Count(string part) => Regex.Count(Page.Html, Regex.Escape(part));

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Tag();

    [GeneratedRegex("<h1>(.*?)</h1>")]
    private static partial Regex FirstHeading();

    [GeneratedRegex("""\ssrc=|<link|@import|url\((?!#|data:)""", RegexOptions.IgnoreCase)]
    private static partial Regex Fetches();

    [GeneratedRegex("""https?://[^"'\s<]+""")]
    private static partial Regex Address();

    [GeneratedRegex("""href="#([^"]+)""")]
    private static partial Regex Link();
}
