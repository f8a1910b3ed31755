namespace Thermal.Power;

/// <summary>Current that could be charged, by where it comes from; used in the order sun, shore, alternator.</summary>
/// <param name="SunA">From the panels, A at 12.8 V.</param>
/// <param name="ShoreA">From the shore charger, A at 12.8 V.</param>
/// <param name="AlternatorA">While driving, A at 12.8 V.</param>
public readonly record struct ChargeOffer(double SunA, double ShoreA, double AlternatorA)
{
    /// <summary>Of the site's power, what the charger passes on, fraction. Source: PRACTICE, from memory.</summary>
    public const double ChargerFraction = 0.9;

    /// <summary>All together, A.</summary>
    public double AllA => SunA + ShoreA + AlternatorA;

    /// <summary>What is offered now.</summary>
    /// <param name="power">Battery and what charges it.</param>
    /// <param name="sunW">Power of all panels at the battery, W, 0 to 100 000.</param>
    /// <param name="shoreW">Power the site has left for the charger, W, 0 to 7400; null without shore power.</param>
    /// <param name="isDriving">True while the engine runs.</param>
    /// <remarks>The charger gives its own current or what the site's power is enough for, whichever is less. Source: OURS.</remarks>
    public static ChargeOffer Of(BoardPower power, double sunW, double? shoreW, bool isDriving) => new(
        Guard.InRange(sunW, 0, 100_000, "W") / Battery.NominalV,
        shoreW is { } site ? Math.Min(power.ShoreChargerA, ChargerFraction * Guard.InRange(site, 0, 7400, "W", nameof(shoreW)) / Battery.NominalV) : 0,
        isDriving ? power.AlternatorA : 0);
}
