namespace Thermal.Words.Units;

/// <summary>One unit that a person may write.</summary>
/// <param name="Spelling">How we write it, such as W/(m·K).</param>
/// <param name="AlsoWritten">Other spellings that are read; dots, spaces, brackets and raised digits need no entry of their own.</param>
/// <param name="Converter">The unit of UnitsNet that converts it.</param>
public sealed record Unit(string Spelling, IReadOnlyList<string> AlsoWritten, Enum Converter)
{
    /// <summary>A spelling without what people leave out: dots, spaces, brackets, the caret; raised digits come down.</summary>
    /// <param name="spelling">Text of a unit, such as W/(m²·K).</param>
    /// <returns>The bare spelling, such as W/m2K.</returns>
    public static string Bare(string spelling)
    {
        Span<char> bare = stackalloc char[spelling.Length];
        int length = 0;
        foreach (char letter in spelling)
        {
            if (letter is ' ' or '\u00A0' or '\u202F' or '·' or '⋅' or '*' or '(' or ')' or '^' or '_')
                continue;
            bare[length++] = letter switch { '²' => '2', '³' => '3', 'º' or '˚' => '°', 'μ' => 'µ', _ => letter };
        }
        return bare[..length].ToString();
    }

    /// <summary>All spellings, bare.</summary>
    internal IEnumerable<string> BareSpellings => AlsoWritten.Append(Spelling).Select(Bare);
}
