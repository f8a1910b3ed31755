using Thermal.Files.Keys;

namespace Thermal.Files.VehicleKeys;

/// <summary>The two ways to tell a bridge: by a figure from elsewhere, with the build-up it was found for, or by a description. Never both.</summary>
/// <typeparam name="TOwner">The record of the bridge.</typeparam>
/// <param name="Noun">What is told, with its article.</param>
/// <param name="Figure">Key of the figure.</param>
/// <param name="For">Key of the build-up it was found for.</param>
/// <param name="Beside">Keys that stand only beside a figure, since they are computed for a described one.</param>
/// <param name="Description">Key that begins a description.</param>
/// <param name="Describe">How to describe it, such as "shape (hat, plate) with its numbers".</param>
/// <param name="Described">All other keys of a description.</param>
internal sealed record Told<TOwner>(
    string Noun, Field<TOwner> Figure, Field<TOwner> For, Field<TOwner>[] Beside, Field<TOwner> Description, string Describe, IReadOnlyList<Field<TOwner>> Described)
{
    /// <summary>True for a description, false for a figure; null where at least one problem was added.</summary>
    internal bool? IsDescribed(Values<TOwner> values)
    {
        int problemsBefore = values.Spot.Scope.ProblemCount;
        bool isDescribed = values.Has(Description);
        if (isDescribed && values.Has(Figure))
            values.Problem(Figure, $"{Figure.Key} and {Description.Key} both stand here; keep {Figure.Key} with {For.Key}, or describe it by {Describe}, and remove the other");
        else if (!isDescribed && !values.Has(Figure))
            values.Spot.Problem($"{Noun} needs {Describe}, or a {Figure.Key} found elsewhere with {For.Key}; write one of them");
        else if (isDescribed)
            Refuse(values, [For, .. Beside], $"this is computed for what {Description.Key} describes; remove it");
        else
            CheckFigure(values);
        return values.Spot.Scope.ProblemCount == problemsBefore ? isDescribed : null;
    }

    private void CheckFigure(Values<TOwner> values)
    {
        if (!values.Has(For))
            values.Spot.Problem($"{For.Key} is missing; {char.ToLowerInvariant(For.Words[0])}{For.Words[1..].TrimEnd('.')}");
        Refuse(values, Described, $"this belongs to a description, and {Figure.Key} is given; remove it, or write {Description.Key} in place of {Figure.Key}");
    }

    private static void Refuse(Values<TOwner> values, IEnumerable<Field<TOwner>> fields, string what)
    {
        foreach (Field<TOwner> field in fields.Where(values.Has))
            values.Problem(field, what);
    }
}
