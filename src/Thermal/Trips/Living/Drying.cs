namespace Thermal.Trips.Living;

/// <summary>Clothes and kit hung up to dry: they give their water off fast at first, then ever slower.</summary>
/// <remarks>Source: OURS, an exponential with a time constant of four hours: 63 % in the first four, 95 % in twelve (spun or shaken out, in a warm van).</remarks>
internal sealed class Drying
{
    /// <summary>Time constant, h.</summary>
    internal const double TimeH = 4;

    /// <summary>Water still in them, kg.</summary>
    internal double HeldKg { get; private set; }

    /// <summary>Goes through one step.</summary>
    /// <param name="hours">Length, h.</param>
    /// <param name="hungUpKg">Water of what is hung up in the step, kg.</param>
    /// <param name="afterH">When in the step that is, h from its begin.</param>
    /// <returns>Water given off, kg.</returns>
    internal double Step(double hours, double hungUpKg, double afterH)
    {
        double beforeKg = HeldKg + hungUpKg;
        HeldKg = HeldKg * Math.Exp(-hours / TimeH) + hungUpKg * Math.Exp(-(hours - afterH) / TimeH);
        return beforeKg - HeldKg;
    }
}
