using Thermal.Climates;
using Thermal.Envelope;
using Thermal.Materials;
using Thermal.Zones;

namespace Thermal.Assessments;

/// <summary>The balances of one night: usual, least and most heat lost, least and most damp.</summary>
internal sealed record NightRuns(ZoneState Usual, ZoneState LeastHeat, ZoneState MostHeat, ZoneState LeastDamp, ZoneState MostDamp)
{
    internal static NightRuns Of(Case asked, Case least, Case most, NightConditions night, NightConditions calm, NightConditions windy) => new(
        Balances.Night(asked, night), Balances.Night(least, calm), Balances.Night(most, windy),
        Balances.Night(Extremes.OfDamp(asked, Extreme.Low), night, Extreme.Low), Balances.Night(Extremes.OfDamp(asked, Extreme.High), night, Extreme.High));

    /// <summary>Heat the living space needs, W.</summary>
    internal Between HeaterW => new(LeastHeat.HeaterW, Usual.HeaterW, MostHeat.HeaterW);

    /// <summary>A figure of the damp runs.</summary>
    internal Between OfDamp(Func<ZoneState, double> figure) => Between.Spanning(figure(LeastDamp), figure(Usual), figure(MostDamp));

    /// <summary>A figure of the heat runs.</summary>
    internal Between OfHeat(Func<ZoneState, double> figure) => Between.Spanning(figure(LeastHeat), figure(Usual), figure(MostHeat));
}
