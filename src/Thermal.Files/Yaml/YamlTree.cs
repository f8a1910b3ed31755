using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Thermal.Files.Yaml;

/// <summary>Builds the tree of a YAML text, or says why it cannot: one document, no anchors, no type tags, no deep nesting.</summary>
/// <remarks>The parser's events are taken, not its ready tree: that one stops at the first duplicate key and recurses without limit.</remarks>
internal sealed class YamlTree
{
    /// <summary>Deepest nesting; a vehicle needs eight. Limit chosen by us.</summary>
    internal const int DeepestLevel = 24;

    private readonly Parser parser;
    private readonly Scope scope;

    private YamlTree(string text, Scope scope)
    {
        parser = new Parser(new StringReader(text));
        this.scope = scope;
    }

    /// <summary>The root, or null and at least one problem.</summary>
    internal static WrittenNode? Read(string text, Scope scope)
    {
        var tree = new YamlTree(text, scope);
        try
        {
            return tree.ReadDocument();
        }
        catch (YamlException fault)
        {
            scope.Add((int)fault.Start.Line, (int)fault.Start.Column, "file", $"this cannot be read as YAML ({Sentence(fault.Message)}); check colons, indents, quotes and brackets here");
        }
        catch (Exception fault) when (fault is ArgumentException or InvalidOperationException)
        {
            // Two kinds of text make the parser throw these instead of its own exception, such as "!!]" and "b:({c: N}" before "]".
            scope.Add(tree.Line, tree.Column, "file", "this cannot be read as YAML; check quotes, brackets and exclamation marks here");
        }
        return null;
    }

    private int Line => (int)(parser.Current?.Start.Line ?? 1);
    private int Column => (int)(parser.Current?.Start.Column ?? 1);

    private WrittenNode? ReadDocument()
    {
        parser.Consume<StreamStart>();
        if (!parser.TryConsume<DocumentStart>(out _))
        {
            scope.Add(1, 1, "file", "nothing is written here; begin with \"format: 1\"");
            return null;
        }
        WrittenNode? root = ReadNode(1);
        parser.Consume<DocumentEnd>();
        if (parser.Accept<DocumentStart>(out _))
            scope.Add(Line, Column, "file", "a second document begins here; write one vehicle a file");
        return root;
    }

    private WrittenNode? ReadNode(int level)
    {
        if (level > DeepestLevel)
            throw new YamlException(parser.Current!.Start, parser.Current.End, $"nested more than {DeepestLevel} levels deep, a vehicle needs eight");
        if (parser.TryConsume<AnchorAlias>(out var alias))
        {
            Refuse(alias, "references with * are not read; write the values out");
            return null;
        }
        if (parser.Accept<NodeEvent>(out var node))
            RefuseDecoration(node);
        if (parser.TryConsume<Scalar>(out var scalar))
            return Scalar(scalar);
        return parser.TryConsume<SequenceStart>(out var list) ? ReadList(list, level) : ReadMap(parser.Consume<MappingStart>(), level);
    }

    private WrittenList ReadList(SequenceStart start, int level)
    {
        List<WrittenNode> items = [];
        while (!parser.TryConsume<SequenceEnd>(out _))
            if (ReadNode(level + 1) is { } item)
                items.Add(item);
        return new((int)start.Start.Line, (int)start.Start.Column, items);
    }

    private WrittenMap ReadMap(MappingStart start, int level)
    {
        List<WrittenEntry> entries = [];
        while (!parser.TryConsume<MappingEnd>(out _))
        {
            int line = Line, column = Column;
            WrittenNode? key = ReadNode(level + 1);
            WrittenNode? value = ReadNode(level + 1);
            if (key is WrittenScalar name && value is not null)
                entries.Add(new(name, value));
            else if (key is not (null or WrittenScalar))
                scope.Add(line, column, "file", "a key must be a plain word");
        }
        return new((int)start.Start.Line, (int)start.Start.Column, entries);
    }

    private static WrittenScalar Scalar(Scalar scalar) => new((int)scalar.Start.Line, (int)scalar.Start.Column, scalar.Value,
        scalar.Style is not ScalarStyle.Plain, (int)scalar.Start.Index, (int)scalar.End.Index);

    private void RefuseDecoration(NodeEvent node)
    {
        if (!node.Anchor.IsEmpty)
            Refuse(node, "anchors with & are not read; write the values out where they belong");
        if (!node.Tag.IsEmpty)
            Refuse(node, "type tags with ! are not read; write the value alone");
    }

    private void Refuse(ParsingEvent at, string what) => scope.Add((int)at.Start.Line, (int)at.Start.Column, "file", what);

    private static string Sentence(string message)
    {
        // The parser puts "(Line: 1, Col: 1, Idx: 0) - " before its words; the place is said once already.
        int dash = message.LastIndexOf("): ", StringComparison.Ordinal);
        return (dash < 0 ? message : message[(dash + 3)..]).TrimEnd('.');
    }
}
