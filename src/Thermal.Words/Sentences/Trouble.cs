namespace Thermal.Words.Sentences;

/// <summary>How much trouble an answer is, from none to most.</summary>
public enum Trouble
{
    /// <summary>As it should be.</summary>
    None,
    /// <summary>Worth an eye.</summary>
    Watch,
    /// <summary>Must be changed.</summary>
    Bad,
}
