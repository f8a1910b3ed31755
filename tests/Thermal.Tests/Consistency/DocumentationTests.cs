using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Thermal.Tests.Consistency;

/// <summary>Doc comments name their sources by the keys of the list, and every listed source is used.</summary>
public sealed partial class DocumentationTests
{
    private static IEnumerable<(string Member, string Text)> Comments =>
        from member in XDocument.Load(Path.Combine(AppContext.BaseDirectory, "Thermal.xml")).Descendants("member")
        select (member.Attribute("name")!.Value, Spaces().Replace(member.Value, " "));

    /// <summary>After "Source:" the keys, one at the start and one after each semicolon or comma that is followed by a word in capitals.</summary>
    private static IEnumerable<(string Member, string Key)> Keys =>
        from comment in Comments
        from Match cited in Cited().Matches(comment.Text)
        from Match key in KeyForm().Matches(cited.Groups[1].Value)
        select (comment.Member, key.Value);

    [Fact]
    public void Every_source_that_a_comment_names_is_listed() => Ground.NothingOffends(Keys.Where(cited => !Sources.Knows(cited.Key)).Select(cited => $"{cited.Member}: {cited.Key}"));

    [Fact]
    public void Every_citation_begins_with_a_key() => Ground.NothingOffends(
        from comment in Comments
        from Match cited in Cited().Matches(comment.Text)
        where !Sources.All.Any(source => cited.Groups[1].Value.StartsWith(source.Key, StringComparison.Ordinal))
        select $"{comment.Member}: {cited.Value}");

    [Fact]
    public void There_are_citations_to_check() => Assert.InRange(Keys.Count(), 100, 10_000);

    [Fact]
    public void Sources_stand_once_and_in_order()
    {
        string[] keys = [.. Sources.All.Select(source => source.Key)];
        Assert.Equal(keys.Distinct().Order(StringComparer.Ordinal), keys);
    }

    [GeneratedRegex(@"Source: ([^.]*(?:\.\d[^.]*)*)")]
    private static partial Regex Cited();

    /// <summary>A key at the start, or after a semicolon, a comma, "and" or "by": capitals, then capitals, digits and hyphens.</summary>
    [GeneratedRegex(@"(?<=^|; |, |and |by |of |form of )[A-Z]{2,}[A-Z0-9]*(?:-[A-Z0-9]+)*(?![a-z])")]
    private static partial Regex KeyForm();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();
}
