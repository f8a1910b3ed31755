using Thermal.Words.Sentences;

namespace Thermal.Files.Keys;

/// <summary>One shape that a map can describe, such as a hat among ribs: the keys it needs, those it may have besides, and what they become.</summary>
/// <typeparam name="TOwner">The record that the map becomes.</typeparam>
/// <typeparam name="TDetail">The record that the shape becomes.</typeparam>
/// <param name="word">The word in the file.</param>
/// <param name="noun">The same with its article.</param>
/// <param name="needs">Keys it cannot do without.</param>
/// <param name="may">Keys it may have besides.</param>
/// <param name="build">Makes the record; adds a problem and returns null where the values do not fit together.</param>
internal sealed class Shape<TOwner, TDetail>(string word, string noun, Field<TOwner>[] needs, Field<TOwner>[] may, Func<Values<TOwner>, TDetail?> build) where TDetail : class
{
    /// <summary>The word in the file.</summary>
    internal string Word { get; } = word;

    /// <summary>Ranges that are narrower for this shape than for its key.</summary>
    internal (Field<TOwner, double> Field, QuantityNode Range)[] Ranges { get; init; } = [];

    /// <summary>What is described; null where at least one problem was added.</summary>
    /// <param name="values">What was read.</param>
    /// <param name="all">All keys that any shape has.</param>
    internal TDetail? Read(Values<TOwner> values, IReadOnlyList<Field<TOwner>> all)
    {
        int problemsBefore = values.Spot.Scope.ProblemCount;
        foreach (Field<TOwner> field in needs.Where(field => !values.Has(field)))
            values.Spot.Problem($"{field.Key} is missing; {noun} needs {List(needs)}");
        foreach (Field<TOwner> field in all.Where(field => values.Has(field) && !needs.Contains(field) && !may.Contains(field)))
            values.Problem(field, $"{noun} has no {field.Key}; its keys are {List([.. needs, .. may])}");
        foreach ((Field<TOwner, double> field, QuantityNode range) in Ranges.Where(narrow => values.Has(narrow.Field)))
            range.IsInside(values.SpotOf(field), values.Of(field));
        return values.Spot.Scope.ProblemCount == problemsBefore ? build(values) : null;
    }

    private static string List(IEnumerable<Field<TOwner>> fields) => Grammar.List([.. fields.Select(field => field.Key)]);
}
