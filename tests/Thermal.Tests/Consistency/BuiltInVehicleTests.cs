using Thermal.Assessments;
using Thermal.Envelope;
using Thermal.Files;
using Thermal.Materials;

namespace Thermal.Tests.Consistency;

/// <summary>The built-in vehicles obey the laws of the balances, and lie where such vehicles lie (plausibility, not proof).</summary>
public class BuiltInVehicleTests
{
    public static TheoryData<string> Names => [.. VehicleLibrary.Names];

    private static Assessment Of(string name) => Assess.Of(VehicleLibrary.Find(name)!);

    [Theory, MemberData(nameof(Names))]
    public void Losses_add_up_part_by_part_and_panel_by_panel(string name)
    {
        Assessment found = Of(name);
        Assert.Equal(found.ColdNight.LossW, found.ColdNight.Losses.Sum(part => part.LossW), 1e-6);
        Assert.Equal(found.MildNight.LossW, found.MildNight.Losses.Sum(part => part.LossW), 1e-6);
        Assert.Equal(found.ColdNight.LossW, found.ColdNight.Losses.Where(part => part.Panel is null).Sum(part => part.LossW)
            + found.Panels.Where(panel => panel.Surface.Outside != OuterSide.OtherZone).Sum(panel => panel.LossW), 1e-6);
    }

    [Theory, MemberData(nameof(Names))]
    public void A_trial_run_gives_the_usual_figures_of_the_whole_one_to_the_bit(string name)
    {
        Assessment whole = Of(name), trial = Assess.UsualOf(VehicleLibrary.Find(name)!);
        Assert.Equal(whole.ColdNight.LossW, trial.ColdNight.LossW);
        Assert.Equal(whole.Heating.Cold.FuelAmount.Value, trial.Heating.Cold.FuelAmount.Value);
        Assert.Equal(whole.Heating.NeedW.Value, trial.Heating.NeedW.Value);
        Assert.Equal(whole.ColdNight.Zones, trial.ColdNight.Zones);
        Assert.Equal(whole.BuildUps.Select(damp => (damp.Verdict, damp.Year!.PeakGPerM2)), trial.BuildUps.Select(damp => (damp.Verdict, damp.Year!.PeakGPerM2)));
        Assert.Equal(whole.Findings, trial.Findings);
        Assert.Equal(trial.ColdNight.LossRangeW, new(trial.ColdNight.LossW, trial.ColdNight.LossW, trial.ColdNight.LossW));
    }

    /// <summary>More vapour and more air behind linings never make a build-up drier, and without months the runs judge by their own nights.</summary>
    [Fact]
    public void Without_months_the_damper_run_is_judged_by_its_own_night()
    {
        Assessment found = Assess.Of(VehicleLibrary.Find("library-van")! with { Place = null });
        Assert.All(found.BuildUps, damp => Assert.True(IsWet(damp.HighVerdict) || !IsWet(damp.LowVerdict), damp.Name));
        Assert.Contains(found.BuildUps, damp => IsWet(damp.HighVerdict) != IsWet(damp.LowVerdict));

        static bool IsWet(DampVerdict verdict) => verdict != DampVerdict.Dry;
    }

    /// <summary>What people give off leaves with the air or settles: in all zones together, outside air in and out by mass.</summary>
    [Theory, MemberData(nameof(Names))]
    public void Vapour_leaves_with_the_air_or_settles(string name)
    {
        Case read = VehicleLibrary.Find(name)!;
        Case asked = read with { Vehicle = Bridges.SolvedVehicle.Of(read.Vehicle, read.ColdNight.WindMPerS, new()) };
        Zones.ZoneState state = Balances.Night(asked, asked.ColdNight);
        double leaves = 0, settles = 0;
        for (int zone = 0; zone < state.TemperaturesC.Count; zone++)
            leaves += state.OutsideAirM3PerH[zone] / 3600 * state.OutsideDensityKgPerM3 * (state.HumidityRatiosKgPerKg[zone] - state.OutsideRatioKgPerKg);
        foreach (Zones.ColdPlace place in state.Shell.Places)
            if (place.InUse) settles += state.SettlingKgPerS(place);
        Assert.Equal(state.Inputs.VapourKgPerS, leaves + settles, 1e-9 * state.Inputs.VapourKgPerS);
    }

    [Theory, MemberData(nameof(Names))]
    public void Every_surface_lies_between_the_living_space_and_the_sky_cooled_outside(string name)
    {
        Assessment found = Of(name);
        double lowestC = found.Case.ColdNight.OutsideC - SurfaceResistance.SkyChillK(found.Case.ColdNight.WindMPerS, 0, found.Case.ColdNight.SkyBelowAirK);
        Assert.All(found.ColdNight.Surfaces, surface => Assert.InRange(surface.TemperatureC, lowestC, found.Case.Habits.SetPointC));
        Assert.All(found.Panels.SelectMany(panel => panel.TemperaturesAtFacesC), faceC => Assert.InRange(faceC, lowestC, found.Case.Habits.SetPointC));
    }

    /// <summary>Vans of 5 to 8 m in frost: 0.5 to 6 kW; bodies between 0.7 (insulated) and 3.5 W/(m²·K); air changes 0.3 to 4 an hour; litres or kilograms of a night 0.5 to 6.</summary>
    [Theory, MemberData(nameof(Names))]
    public void Headlines_lie_where_vehicles_lie(string name)
    {
        Assessment found = Of(name);
        Assert.InRange(found.ColdNight.LossW, 500, 6000);
        Assert.InRange(found.MeanK.MeanKWPerM2K, 0.5, 3.5);
        Assert.InRange(found.ColdNight.Zones[0].AirChangesPerH, 0.3, 4);
        Assert.InRange(found.Heating.Cold.FuelAmount.Value, 0.5, 6);
        Assert.InRange(found.Heating.NeedW.High / found.Heating.NeedW.Low, 1.2, 3);
        Assert.InRange(found.ColdNight.Zones[0].RelativeHumidityFraction, 0.1, 1);
        Assert.InRange(found.Heating.DawnHeaterOffC.Value, found.Case.ColdNight.OutsideC, found.Case.Habits.SetPointC);
    }

    [Theory, MemberData(nameof(Names))]
    public void Twenty_millimetres_more_in_every_panel_saves_heat(string name)
    {
        Assessment kept = Of(name);
        foreach (PanelAnswer panel in kept.Panels.Where(panel => panel.Surface.Outside != OuterSide.OtherZone && panel.Surface.OpaqueAreaM2 > 0.1))
        {
            int best = Enumerable.Range(0, panel.Surface.Stack.Layers.Count).MaxBy(layer => panel.Surface.Stack.Layers[layer] is SolidLayer ? panel.Transmittance.LayersM2KPerW[layer] : -1);
            Case thicker = Choices.Thicknesses.With(kept.Case, panel.Surface.Name, best, panel.Surface.Stack.Layers[best].ThicknessM + 0.02);
            Assert.True(Balances.Night(thicker, kept.Case.ColdNight).HeaterW < kept.ColdNight.LossW, panel.Surface.Name);
        }
    }
}
