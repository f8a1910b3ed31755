namespace Thermal.Zones;

/// <summary>A balance that did not settle: its last change and how many rounds it took.</summary>
public sealed class NotConvergedException : Exception
{
    /// <summary>Makes one without a figure.</summary>
    public NotConvergedException() { }
    /// <summary>Makes one with what happened.</summary>
    public NotConvergedException(string message) : base(message) { }
    /// <summary>Makes one with what happened and why.</summary>
    public NotConvergedException(string message, Exception inner) : base(message, inner) { }
}
