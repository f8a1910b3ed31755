namespace Thermal;

/// <summary>One document that a number or a formula comes from.</summary>
/// <param name="Key">The short key that comments, data files and reports use.</param>
/// <param name="Title">Title and edition.</param>
public sealed record Source(string Key, string Title);
