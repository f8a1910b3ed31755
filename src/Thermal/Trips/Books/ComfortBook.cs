using Thermal.Air;
using Thermal.Trips.Heat;

namespace Thermal.Trips.Books;

/// <summary>Comfort and air with people in and parked, step by step.</summary>
internal sealed class ComfortBook
{
    /// <summary>It counts as cold more than this below what is wanted, K. Source: OURS.</summary>
    internal const double ColdBelowK = 1;
    /// <summary>Air counts as stuffy above this, ppm. Source: PRACTICE.</summary>
    internal const double StuffyPpm = 2000;
    /// <summary>Air counts as humid above this, fraction. Source: PRACTICE, dust mites and musty bedding begin there.</summary>
    internal const double HumidFraction = 0.7;

    private double homeS, coldS, hotS, stuffyS, humidS;
    private double coolestC = double.PositiveInfinity, hottestC = double.NegativeInfinity, coldestC = double.PositiveInfinity, highestPpm;
    private string coldest = "";
    private double? warmUpH;
    private DateTime? cameHome;
    private bool wasHome = true;

    /// <summary>Hottest so far with people in, °C; minus infinity with nobody in.</summary>
    internal double HottestC => hottestC;

    /// <summary>Takes in a step.</summary>
    /// <param name="step">The step.</param>
    internal void Take(StepFacts step)
    {
        bool isHome = step.Doing.IsHome && !step.Doing.IsDriving;
        TakeReturn(step, isHome);
        if (!isHome) return;
        double operativeC = step.OperativeC, seconds = step.StepS, ppm = step.CarbonDioxide.Ppm[step.Living];
        homeS += seconds;
        if (step.IsShort) coldS += seconds;
        if (operativeC > step.Habits.HotC) hotS += seconds;
        if (ppm > StuffyPpm) stuffyS += seconds;
        if (HumidityFraction(step, step.Living) > HumidFraction) humidS += seconds;
        (coolestC, hottestC, highestPpm) = (Math.Min(coolestC, operativeC), Math.Max(hottestC, operativeC), Math.Max(highestPpm, ppm));
        TakeFaces(step);
    }

    /// <summary>Relative humidity of a room over water, fraction.</summary>
    internal static double HumidityFraction(StepFacts step, int room) =>
        VapourPa(step, room) / SaturationPressure.OverWaterUncheckedPa(step.Heat.State.AirC[room]);

    /// <summary>Vapour pressure of a room, Pa.</summary>
    internal static double VapourPa(StepFacts step, int room)
    {
        double ratio = step.Damp.RatioKgPerKg[room];
        return step.Outside.PressurePa * ratio / (MoistAir.MolarMassRatio + ratio);
    }

    /// <summary>Sums it up.</summary>
    internal TripComfort Close() => new(homeS / 3600, coldS / 3600, homeS > 0 ? coolestC : null, hotS / 3600, homeS > 0 ? hottestC : null, warmUpH,
        highestPpm, stuffyS / 3600, humidS / 3600, homeS > 0 ? coldestC : null, homeS > 0 ? coldest : null);

    private void TakeReturn(StepFacts step, bool isHome)
    {
        if (isHome && !wasHome) cameHome = step.Local;
        if (!isHome) cameHome = null;
        wasHome = isHome;
        if (cameHome is not { } since || double.IsNaN(step.Doing.WantedC) || step.IsShort) return;
        double tookH = (step.Local - since).TotalHours;
        warmUpH = Math.Max(warmUpH ?? 0, tookH);
        cameHome = null;
    }

    private void TakeFaces(StepFacts step)
    {
        HeatState heat = step.Heat.State;
        for (int p = 0; p < step.Body.Parts.Length; p++)
            if (step.Body.Parts[p].Zone == step.Living && heat.InnerFaceC[p] < coldestC) (coldestC, coldest) = (heat.InnerFaceC[p], step.Body.Parts[p].Name);
        for (int i = 0; i < step.Body.Ties.Length; i++)
            if (step.Body.Ties[i].Zone == step.Living && heat.TieColdestC[i] < coldestC) (coldestC, coldest) = (heat.TieColdestC[i], step.Body.Ties[i].Name);
    }
}
