namespace Thermal.Bridges;

/// <summary>A section that cannot be solved, with all its problems.</summary>
public sealed class SectionException : ArgumentException
{
    /// <param name="section">Name of the section.</param>
    /// <param name="problems">Everything wrong.</param>
    public SectionException(string section, IReadOnlyList<SectionProblem> problems)
        : this($"{section} cannot be solved: {string.Join("; ", problems.Select(problem => $"{problem.Fault} ({problem.Name}{(problem.Other is { } other ? $", {other}" : "")})"))}.") =>
        Problems = problems;

    /// <summary>Without problems of its own.</summary>
    public SectionException()
    {
    }

    /// <summary>With a message.</summary>
    /// <param name="message">What is wrong.</param>
    public SectionException(string message) : base(message)
    {
    }

    /// <summary>With a message and a cause.</summary>
    /// <param name="message">What is wrong.</param>
    /// <param name="innerException">The cause.</param>
    public SectionException(string message, Exception innerException) : base(message, innerException)
    {
    }

    /// <summary>Everything wrong.</summary>
    public IReadOnlyList<SectionProblem> Problems { get; } = [];
}
