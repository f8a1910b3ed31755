using Thermal.Air;
using Thermal.Assessments;
using Thermal.Envelope;
using Thermal.Heating;
using Thermal.Materials;
using Thermal.People;
using Thermal.Zones;
using static Thermal.Tests.Sketches;

namespace Thermal.Tests.Exact;

/// <summary>Figures of an assessment that can be worked out again from others of it, by hand and without its code.</summary>
public class AssessmentTests
{
    private static readonly Case Asked = PlausibleVan.Case with
    {
        Habits = PlausibleVan.Case.Habits with { ShowersPerDay = 2, WaterPerShowerL = 10, FanCurrentA = 0.5, CookerFuel = null },
    };

    private static readonly Assessment Found = Assess.Of(Asked);

    /// <summary>(loss − 2·46 W)·8 h/0.80/(42.84/3.6·0.832 kWh/L).</summary>
    [Fact]
    public void A_night_burns_its_heat_over_efficiency_and_net_heat()
    {
        double heatW = Found.ColdNight.LossW - 92;
        Assert.Equal(heatW, Found.Heating.Cold.HeatW.Value, 1e-9);
        Assert.Equal(heatW * 8 / 1000 / 0.80 / (42.84 / 3.6 * 0.832), Found.Heating.Cold.FuelAmount.Value, 1e-9);
    }

    /// <summary>Between 1100 and 4000 W of sea-level output, thinned by the air, current is linear from 11 to 48 W; one start of 16 Wh; a fan of 0.5 A at 12 V; at 12.8 V.</summary>
    [Fact]
    public void A_night_draws_its_current_by_part_load_and_one_start()
    {
        double air = Atmosphere.PressurePa(600) / 101_325, heatW = Found.Heating.Cold.HeatW.Value, share = (heatW - 1100 * air) / (2900 * air);
        Assert.InRange(share, 0, 1); // the case runs through
        Assert.Equal(((11 + share * 37) * 8 + 16 + 0.5 * 12 * 8) / 12.8, Found.Heating.Cold.ChargeAh.Value, 1e-9);
        Assert.Equal(1, Found.Heating.Cold.StartsCount);
        Assert.Equal(heatW / (4000 * air), Found.Heating.Cold.OutputFraction, 1e-12);
    }

    /// <summary>2 showers of 10 L from 8 to 38 °C.</summary>
    [Fact]
    public void Showers_take_the_heat_of_their_water()
    {
        double heatKWh = 20 * 4190 * 30 / 3.6e6;
        Assert.Equal(heatKWh, Found.Heating.HotWater.HeatKWhPerDay, 1e-12);
        Assert.Equal(heatKWh / 0.80 / (42.84 / 3.6 * 0.832), Found.Heating.HotWater.FuelAmountPerDay, 1e-12);
    }

    /// <summary>Lowest output and people's heat over the loss per kelvin, which on a covered night hardly changes with the temperature held (air flow does, a little): within half a kelvin of the balance that needs just that heat.</summary>
    [Fact]
    public void The_temperature_at_lowest_output_is_that_of_the_balance()
    {
        double lowestW = 1100 * Atmosphere.PressurePa(600) / 101_325 + 92, atC = Found.Heating.Mild.AtLowestOutputC;
        double needW = Balances.Night(Asked with { Habits = Asked.Habits with { SetPointC = Math.Min(atC, 30) } }, Asked.MildNight).HeaterW;
        double perK = needW / (Math.Min(atC, 30) - 6);
        Assert.Equal(atC, 6 + lowestW / perK, 1.5);
    }

    /// <summary>Loose lining: 0.1 m³/m²h of room air leaves what it carries above saturation at the face it reaches.</summary>
    [Fact]
    public void Air_behind_a_lining_leaves_its_excess_at_the_face_it_reaches()
    {
        Vehicle van = Asked.Vehicle with
        {
            Surfaces = [.. Asked.Vehicle.Surfaces.Select(surface => surface.Name != "right side" ? surface : surface with
            {
                LiningFit = LiningFit.Loose,
                AirBehindLiningM3PerM2H = Exactly(0.1),
                Stack = new([surface.Stack.Layers[0], Sheet(0.03, 0.036, "wool"), surface.Stack.Layers[2]]),
            })],
        };
        Assessment found = Assess.Of(Asked with { Vehicle = van });
        BuildUpDamp damp = found.BuildUps.First(buildUp => buildUp.Name == "right side");
        ZoneNight room = found.ColdNight.Zones[0];
        double faceC = damp.TemperaturesAtFacesC[2], airPa = Atmosphere.PressurePa(600);
        Assert.Equal(2, damp.AirFace);
        double saturated = 610.5 * Math.Exp(21.875 * faceC / (265.5 + faceC)), dryAir = (airPa - room.VapourPressurePa) / (287.042 * 291.15);
        double excess = 0.621945 * (room.VapourPressurePa / (airPa - room.VapourPressurePa) - saturated / (airPa - saturated));
        Assert.Equal(0.1 * 8 * dryAir * excess * 1000, damp.NightByAirGPerM2, 1e-6);
        Assert.InRange(damp.NightByAirGPerM2, 0.5, 10); // several grams in a frosty night
    }

    [Fact]
    public void Surfaces_are_wet_exactly_where_they_stand_below_the_dew_point()
    {
        SurfaceNight[] surfaces = [.. Enumerable.Range(-12, 15).SelectMany(outsideC => Assess.Of(Asked with { ColdNight = Asked.ColdNight with { OutsideC = outsideC } }).ColdNight.Surfaces)];
        Assert.Contains(surfaces, surface => surface.TemperatureC is > 0 and < 1); // the range holds surfaces just above freezing
        foreach (SurfaceNight surface in surfaces)
        {
            Assert.Equal(surface.SurfaceHumidityRatio > 1, surface.ToSpareK < 0);
            Assert.Equal(surface.SettlingGPerH * 8, surface.SettledG, 1e-12);
            Assert.Equal(surface.TemperatureC < 0, surface.IsFrost);
            if (surface is { InUse: true, AreaM2: > 0 }) Assert.Equal(surface.ToSpareK < 0, surface.SettlingGPerH > 0);
        }
        Assert.Contains(Found.ColdNight.Surfaces, surface => surface.SettlingGPerH > 0); // the case is what the name says
    }

    [Fact]
    public void Every_opening_with_covers_is_shown_in_each_state_and_one_is_in_use()
    {
        SurfaceNight[] window = [.. Found.ColdNight.Surfaces.Where(surface => surface is { Opening: "side window", Kind: SurfaceKind.Glass })];
        Assert.Equal(new string?[] { null, "inside blind" }, window.Select(surface => surface.Cover));
        Assert.Equal("inside blind", Assert.Single(window, surface => surface.InUse).Cover);
        Assert.True(window[1].TemperatureC < window[0].TemperatureC); // behind the blind it is colder
    }

    /// <summary>Changing one cover in a shell that stands gives what a shell found anew gives.</summary>
    [Fact]
    public void A_cover_tried_is_a_vehicle_that_has_it()
    {
        Vehicle bare = Asked.Vehicle with
        {
            Surfaces = [.. Asked.Vehicle.Surfaces.Select(surface => surface with { Openings = [.. surface.Openings.Select(opening => opening with { CoverAtNight = null })] })],
        };
        Assessment other = Assess.Of(Asked with { Vehicle = bare });
        CoverAnswer tried = Found.Covers.First(cover => cover.Cover is null);
        Assert.Equal(other.ColdNight.LossW, tried.LossW, 1e-9);
        Assert.Equal(other.ColdNight.Surfaces.First(surface => surface is { Opening: "side window", InUse: true, Kind: SurfaceKind.Glass }).TemperatureC, tried.GlassC, 1e-9);
    }

    /// <summary>A held humidity is 60 % of saturation over water at 18 °C; a class 3 adds 810 Pa to the outside in frost.</summary>
    [Fact]
    public void A_fixed_humidity_and_a_class_are_held_as_stated()
    {
        double Vapour(Habits habits) => Assess.Of(Asked with { Habits = habits }).ColdNight.Zones[0].VapourPressurePa;
        double saturated = 610.5 * Math.Exp(17.269 * 18 / 255.3), outside = 0.85 * 610.5 * Math.Exp(17.269 * -10 / 227.3);
        Assert.Equal(0.6 * saturated, Vapour(Asked.Habits with { Humidity = HumidityRule.Fixed, FixedHumidityFraction = 0.6 }), 1e-6);
        Assert.Equal(outside + 810, Vapour(Asked.Habits with { Humidity = HumidityRule.Class, HumidityClass = 3 }), 1e-6);
    }

    /// <summary>1.93 m less both build-ups inside the skins: 31 mm of roof and 34 mm of floor; width less twice 31 mm.</summary>
    [Fact]
    public void Headroom_and_width_lose_the_build_ups_inside_the_skins()
    {
        Assert.Equal(1.93 - 0.031 - 0.034, Found.Space.HeadroomM!.Value, 1e-12);
        Assert.Equal(1.87 - 2 * 0.031, Found.Space.InnerWidthM!.Value, 1e-12);
    }

    /// <summary>The larger of both, and the smallest heater of the same fuel that gives it at 600 m.</summary>
    [Fact]
    public void The_need_is_the_larger_of_loss_and_warm_up_never_their_sum()
    {
        HeatingAnswer heating = Found.Heating;
        Assert.Equal(Math.Max(heating.SteadyW.Value, heating.WarmUpW.Value), heating.NeedW.Value);
        Assert.Equal(Found.ColdNight.LossW, heating.SteadyW.Value);
        Assert.True(heating.WarmUpW.Value > heating.SteadyW.Value); // no heater warms up with the loss alone
        HeaterClass[] enough = [.. HeaterLibrary.All.Where(heater => heater.Fuel == Fuel.Diesel && heater.HighestW * heating.AltitudeFactor >= heating.NeedW.Value)];
        Assert.Equal(enough.Min(heater => heater.HighestW), heating.Suggested!.HighestW);
    }
}
