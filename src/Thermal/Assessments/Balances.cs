using Thermal.Air;
using Thermal.Climates;
using Thermal.Materials;
using Thermal.Moisture;
using Thermal.People;
using Thermal.Zones;

namespace Thermal.Assessments;

/// <summary>Steady balances of a case: one night, or one mean month.</summary>
internal static class Balances
{
    /// <summary>Outside air a heater on fresh air blows in, m³/h. Source: PRACTICE, from memory.</summary>
    internal const double HeaterFreshAirM3PerH = 40;

    /// <summary>Wind of a mean month, m/s. Source: OURS, as on the nights.</summary>
    private const double MonthWindMPerS = NightConditions.UsualWindMPerS;

    private static Shell ShellOf(Case asked, double windMPerS, double airPressurePa, Shell? known)
    {
        double density = MoistAir.DryAirDensityKgPerM3(asked.Habits.SetPointC, 0, airPressurePa);
        return known is not null && known.HoldsFor(asked.Vehicle, windMPerS, density) ? known : Shell.Of(asked.Vehicle, windMPerS, density);
    }

    /// <summary>One night, inputs as the case says; a known shell is used again where it holds.</summary>
    internal static ZoneState Night(Case asked, NightConditions night, Extreme vapour = Extreme.Usual, Shell? known = null)
    {
        double pressure = Atmosphere.PressurePa(night.AltitudeM);
        return ZoneBalance.Solve(ShellOf(asked, night.WindMPerS, pressure, known),
            Inputs(asked, night.OutsideC, night.RelativeHumidityFraction * SaturationPressure.OverWaterPa(night.OutsideC), pressure,
                night.WindMPerS, night.SkyBelowAirK, vapour));
    }

    /// <summary>One mean month while someone lives in it.</summary>
    internal static ZoneState Month(Case asked, Shell shell, MonthNormals month, double airPressurePa, Extreme vapour) =>
        ZoneBalance.Solve(shell, Inputs(asked, month.MeanC, month.VapourPressurePa, airPressurePa, MonthWindMPerS, 0, vapour));

    internal static Shell MonthShell(Case asked, double airPressurePa, Shell known) => ShellOf(asked, MonthWindMPerS, airPressurePa, known);

    private static ZoneInputs Inputs(Case asked, double outsideC, double outsidePa, double pressurePa, double windMPerS, double skyK, Extreme vapour)
    {
        Habits habits = asked.Habits;
        double living = Math.Max(habits.SetPointC, outsideC);
        return new()
        {
            OutsideC = outsideC,
            OutsidePa = outsidePa,
            AirPressurePa = pressurePa,
            WindMPerS = windMPerS,
            SkyBelowAirK = skyK,
            LivingC = living,
            FanM3PerH = habits.FanAtNightM3PerH,
            HeaterFreshAirM3PerH = asked.HeaterOnFreshAir ? HeaterFreshAirM3PerH : 0,
            VapourKgPerS = BodyLoads.VapourGPerH(habits, vapour) / 3.6e6,
            HeldVapourPa = habits.Humidity switch
            {
                HumidityRule.Fixed => (habits.FixedHumidityFraction ?? throw new ArgumentException("A fixed humidity needs its figure: FixedHumidityFraction.", nameof(asked))) * SaturationPressure.PairPa(living),
                HumidityRule.Class => outsidePa + HumidityClass.ExcessPa(habits.HumidityClass ?? throw new ArgumentException("A humidity class needs its number: HumidityClass.", nameof(asked)), outsideC),
                _ => null,
            },
        };
    }
}
