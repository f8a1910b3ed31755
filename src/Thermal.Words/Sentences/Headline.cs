namespace Thermal.Words.Sentences;

/// <summary>One answer a self-builder uses: a figure, its span and what it means.</summary>
/// <param name="Title">What is answered, such as "Heat needed".</param>
/// <param name="Answer">The figure with its unit, or a place.</param>
/// <param name="Detail">Its span, or what belongs to it.</param>
/// <param name="Trouble">How much trouble it is.</param>
/// <param name="Remark">The trouble in words; "fine" words where there is none.</param>
public sealed record Headline(string Title, string Answer, string Detail, Trouble Trouble, string Remark);
