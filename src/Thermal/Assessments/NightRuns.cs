using Thermal.Climates;
using Thermal.Materials;
using Thermal.Zones;

namespace Thermal.Assessments;

/// <summary>The balances of one night: usual, least and most heat lost, least and most damp.</summary>
internal sealed record NightRuns(ZoneState Usual, ZoneState LeastHeat, ZoneState MostHeat, ZoneState LeastDamp, ZoneState MostDamp)
{
    /// <summary>Balances one night.</summary>
    /// <param name="cases">The case and its ends.</param>
    /// <param name="night">Which night of a case.</param>
    /// <param name="other">Another night of the same cases: its shells are used again where wind and air agree.</param>
    internal static NightRuns Of(CaseRuns cases, Func<Case, NightConditions> night, NightRuns? other = null)
    {
        ZoneState usual = Run(cases.Usual, other?.Usual);
        return cases.IsAlone ? new(usual, usual, usual, usual, usual) : new(usual, Run(cases.LeastHeat, other?.LeastHeat), Run(cases.MostHeat, other?.MostHeat),
            Run(cases.LeastDamp, other?.LeastDamp, Extreme.Low), Run(cases.MostDamp, other?.MostDamp, Extreme.High));

        ZoneState Run(Case asked, ZoneState? known, Extreme vapour = Extreme.Usual) => Balances.Night(asked, night(asked), vapour, known?.Shell);
    }

    /// <summary>Heat the living space needs, W.</summary>
    internal Between HeaterW => OfHeat(state => state.HeaterW);

    /// <summary>A figure of the damp runs.</summary>
    internal Between OfDamp(Func<ZoneState, double> figure) => Between.Spanning(figure(LeastDamp), figure(Usual), figure(MostDamp));

    /// <summary>A figure of the heat runs.</summary>
    internal Between OfHeat(Func<ZoneState, double> figure) => Between.Spanning(figure(LeastHeat), figure(Usual), figure(MostHeat));
}
