using Thermal.Bridges;

namespace Thermal.Trips;

/// <summary>Reckons a trip hour by hour.</summary>
public static class TripRun
{
    /// <summary>Runs the whole trip.</summary>
    /// <param name="asked">Vehicle and journey.</param>
    /// <param name="cache">Solved ribs, bolts and edges; null for a cache of its own.</param>
    /// <param name="progress">Told the share done, fraction, now and then; null for nobody.</param>
    /// <param name="cancel">Stops it between steps.</param>
    /// <returns>Hours, days, and what they add up to.</returns>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    /// <exception cref="ArgumentException">Weather that does not cover a leg; a zone that does not exist.</exception>
    public static TripResult Of(TripCase asked, BridgeCache? cache = null, IProgress<double>? progress = null, CancellationToken cancel = default) =>
        throw new NotImplementedException();
}
