namespace Thermal.Files;

/// <summary>One thing wrong in a person's file, placed where the reader can see it.</summary>
/// <param name="File">Name of the file as the person gave it.</param>
/// <param name="Line">Line, counted from 1.</param>
/// <param name="Column">Column, counted from 1.</param>
/// <param name="Where">Address in the file's own terms, such as "roof / layer 3 / thickness".</param>
/// <param name="What">What is wrong and what would be right, in one sentence.</param>
public sealed record Problem(string File, int Line, int Column, string Where, string What)
{
    /// <summary>The line that editors and terminals turn into a link.</summary>
    public override string ToString() => $"{File}:{Line}:{Column}: {Where}: {What}";
}
