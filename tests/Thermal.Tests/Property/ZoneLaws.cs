using CsCheck;
using Thermal.Assessments;
using Thermal.Envelope;
using Thermal.Materials;
using Thermal.Zones;
using static Thermal.Tests.Property.AnyVehicle;

namespace Thermal.Tests.Property;

/// <summary>Laws of heat and vapour in a vehicle of three zones on any night.</summary>
public class ZoneLaws
{
    [Fact]
    public void The_parts_add_up_to_the_heater_s_heat() => Gen.Select(AnyBody, AnyNight).Sample((vehicle, night) =>
    {
        ZoneState state = vehicle.StateIn(night);
        Assert.Equal(state.HeaterW, NightAnswers.Losses(state).Sum(part => part.LossW), 1e-9 * Math.Max(1, state.HeaterW)); // the rounds end at 1e-8 K with flows of a few W/K
    });

    /// <summary>Settled again as a balance of each zone, written anew: in from outside and source = out by links and settling.</summary>
    [Fact]
    public void Vapour_that_enters_a_zone_leaves_it_or_settles() => Gen.Select(AnyBody, AnyNight).Sample((vehicle, night) =>
    {
        ZoneState state = vehicle.StateIn(night);
        double[] missing = new double[3];
        double scale = night.VapourKgPerS;
        for (int i = 0; i < 3; i++)
        {
            double air = state.OutsideAirM3PerH[i] / 3600 * state.OutsideDensityKgPerM3;
            missing[i] = air * (state.OutsideRatioKgPerKg - state.HumidityRatiosKgPerKg[i]) + (vehicle.Zones[i].Kind == ZoneKind.Living ? night.VapourKgPerS : 0);
            scale = Math.Max(scale, air * state.OutsideRatioKgPerKg);
        }
        foreach (ZoneLink link in vehicle.Links)
        {
            int from = vehicle.Zones.ToList().FindIndex(zone => zone.Name == link.From), to = vehicle.Zones.ToList().FindIndex(zone => zone.Name == link.To);
            double passed = link.AirM3PerM2H.Value * link.AreaM2 / 3600 * state.OutsideDensityKgPerM3 * (state.HumidityRatiosKgPerKg[from] - state.HumidityRatiosKgPerKg[to]);
            missing[from] -= passed;
            missing[to] += passed;
        }
        foreach (ColdPlace place in state.Shell.Places)
            if (place.InUse) missing[place.Zone] -= state.SettlingKgPerS(place);
        Assert.All(missing, rest => Assert.Equal(0, rest, 1e-9 * scale));
    });

    [Fact]
    public void Surfaces_lie_between_the_air_on_their_two_sides() => Gen.Select(AnyBody, AnyNight).Sample((vehicle, night) =>
    {
        ZoneState state = vehicle.StateIn(night);
        foreach (ColdPlace place in state.Shell.Places)
        {
            double inner = state.TemperaturesC[place.Zone], outer = place.OtherZone >= 0 ? state.TemperaturesC[place.OtherZone] : night.OutsideC - place.SkyShareRatio * night.SkyBelowAirK;
            Assert.InRange(state.PlaceC(place), Math.Min(inner, outer) - 1e-9, Math.Max(inner, outer) + 1e-9);
            Assert.InRange(state.PlaceC(place, forMould: true), Math.Min(inner, outer) - 1e-9, Math.Max(inner, outer) + 1e-9);
        }
    });

    [Fact]
    public void Unheated_zones_lie_between_the_living_space_and_the_sky_cooled_outside() => Gen.Select(AnyBody, AnyNight).Sample((vehicle, night) =>
        vehicle.StateIn(night).TemperaturesC.All(t => t <= night.LivingC + 1e-9 && t >= night.OutsideC - night.SkyBelowAirK));

    [Fact]
    public void Doubling_surfaces_and_openings_and_vapour_doubles_the_loss_and_keeps_the_humidity() => Gen.Select(AnyBody, AnyNight).Sample((vehicle, night) =>
    {
        Vehicle twice = vehicle with
        {
            Zones = [.. vehicle.Zones.Select(zone => zone with
            {
                VolumeM3 = 2 * zone.VolumeM3,
                LeakEachM2 = Sketches.Exactly(2 * zone.LeakEachM2.Value),
                Vents = [.. zone.Vents.Select(vent => vent with { FreeAreaM2 = 2 * vent.FreeAreaM2 })],
            })],
            Links = [.. vehicle.Links.Select(link => link with { AreaM2 = 2 * link.AreaM2 })],
            Surfaces = [.. vehicle.Surfaces.Select(surface => surface with
            {
                AreaM2 = 2 * surface.AreaM2,
                Ribs = [.. surface.Ribs.Select(rib => rib with { LengthM = 2 * rib.LengthM })],
                Bolts = [.. surface.Bolts.Select(bolt => bolt with { Count = 2 * bolt.Count })],
                Openings = [.. surface.Openings.Select(opening => opening with { Count = 2 })],
            })],
        };
        ZoneInputs more = night with { VapourKgPerS = 2 * night.VapourKgPerS, FanM3PerH = 2 * night.FanM3PerH, HeaterFreshAirM3PerH = 2 * night.HeaterFreshAirM3PerH };
        ZoneState one = vehicle.StateIn(night), two = twice.StateIn(more);
        Assert.Equal(2 * one.HeaterW, two.HeaterW, 1e-4); // W: 1e-8 K times the conductance of a few zones, ten times over
        for (int i = 0; i < 3; i++)
        {
            Assert.Equal(one.TemperaturesC[i], two.TemperaturesC[i], 1e-7); // both end their rounds at 1e-8 K
            Assert.Equal(one.HumidityRatiosKgPerKg[i], two.HumidityRatiosKgPerKg[i], 1e-8); // a zone almost as cold as outside breathes by the root of its last 1e-8 K
        }
    });

    [Fact]
    public void Without_a_difference_nothing_flows() => Gen.Select(AnyBody, AnyNight).Sample((vehicle, night) =>
    {
        ZoneState state = vehicle.StateIn(night with { LivingC = night.OutsideC, SkyBelowAirK = 0, VapourKgPerS = 0, OutsidePa = 0.9 * Thermal.Air.SaturationPressure.PairPa(night.OutsideC) });
        Assert.Equal(0, state.HeaterW, 1e-9);
        Assert.All(state.TemperaturesC, t => Assert.Equal(night.OutsideC, t, 1e-9));
        Assert.All(state.HumidityRatiosKgPerKg, ratio => Assert.Equal(state.OutsideRatioKgPerKg, ratio, 1e-8)); // in still air the zones are sealed but for a millilitre an hour
        Assert.All(state.Shell.Places, place => Assert.Equal(0, state.SettlingKgPerS(place)));
    });

    [Fact]
    public void Colder_outside_never_takes_less_heat() => Gen.Select(AnyBody, AnyNight, Gen.Double[0, 10]).Sample((vehicle, night, colder) =>
        vehicle.StateIn(night with { OutsideC = night.OutsideC - colder, OutsidePa = 100 }).HeaterW >= vehicle.StateIn(night with { OutsidePa = 100 }).HeaterW - 1e-6);

    [Fact]
    public void A_clearer_sky_never_saves_heat() => Gen.Select(AnyBody, AnyNight, Gen.Double[0, 10]).Sample((vehicle, night, clearer) =>
        vehicle.StateIn(night with { SkyBelowAirK = night.SkyBelowAirK + clearer }).HeaterW >= vehicle.StateIn(night).HeaterW - 1e-6);

    [Fact]
    public void More_vapour_never_makes_a_zone_drier() => Gen.Select(AnyBody, AnyNight, Gen.Double[0, 1e-4]).Sample((vehicle, night, more) =>
    {
        ZoneState one = vehicle.StateIn(night), two = vehicle.StateIn(night with { VapourKgPerS = night.VapourKgPerS + more });
        return one.HumidityRatiosKgPerKg.Zip(two.HumidityRatiosKgPerKg).All(pair => pair.Second >= pair.First - 1e-12);
    });

    /// <summary>The balance holds the humidity that gives it: a zone held at its own balanced vapour pressure changes nothing.</summary>
    [Fact]
    public void Holding_the_balanced_humidity_changes_nothing() => Gen.Select(AnyBody, AnyNight).Sample((vehicle, night) =>
    {
        ZoneState state = vehicle.StateIn(night), held = vehicle.StateIn(night with { HeldVapourPa = state.VapourPa(ZoneBalance.LivingIndex(vehicle)) });
        return state.HumidityRatiosKgPerKg.Zip(held.HumidityRatiosKgPerKg).All(pair => Math.Abs(pair.First - pair.Second) < 1e-12);
    });

    [Fact]
    public void Equal_input_gives_equal_bits() => Gen.Select(AnyBody, AnyNight).Sample((vehicle, night) =>
    {
        ZoneState one = vehicle.StateIn(night), two = vehicle.StateIn(night);
        return BitConverter.DoubleToInt64Bits(one.HeaterW) == BitConverter.DoubleToInt64Bits(two.HeaterW)
            && one.HumidityRatiosKgPerKg.Zip(two.HumidityRatiosKgPerKg).All(pair => BitConverter.DoubleToInt64Bits(pair.First) == BitConverter.DoubleToInt64Bits(pair.Second));
    });

    [Fact]
    public void What_stands_against_a_surface_never_warms_it() => Gen.Select(AnyBody, AnyNight).Sample((vehicle, night) =>
    {
        ZoneState state = vehicle.StateIn(night);
        foreach (ColdPlace behind in state.Shell.Places.Where(place => place.Kind == SurfaceKind.Behind && state.TemperaturesC[place.Zone] >= night.OutsideC))
            Assert.True(state.PlaceC(behind) <= state.PlaceC(state.Shell.Places.First(place => place.Panel == behind.Panel && place.Kind == SurfaceKind.Bare)));
    });

    public static TheoryData<string> Uncertain => ["conductivity", "rib", "bolt", "leak", "passage air", "passage resistance", "cover", "wind pressure"];

    /// <summary>One figure at a time gets a span: the all-low run then loses less than without it, the all-high run more.</summary>
    [Theory, MemberData(nameof(Uncertain))]
    public void Each_uncertain_figure_moves_both_runs_its_own_way(string which)
    {
        static Bounded Span(Bounded figure) => Sketches.Around(figure.Value, 0.2);
        static Bounded None(Bounded figure) => Sketches.Exactly(figure.Value);
        Bounded At(string name, Bounded figure) => name == which ? Span(figure) : None(figure);
        Vehicle With(Func<string, Bounded, Bounded> at) => PlausibleVan.Vehicle with
        {
            WindPressureFactor = at("wind pressure", PlausibleVan.Vehicle.WindPressureFactor),
            Zones = [.. PlausibleVan.Vehicle.Zones.Select(zone => zone with { LeakEachM2 = at("leak", zone.LeakEachM2) })],
            Links = [.. PlausibleVan.Vehicle.Links.Select(link => link with { AirM3PerM2H = at("passage air", link.AirM3PerM2H), ResistanceM2KPerW = at("passage resistance", link.ResistanceM2KPerW) })],
            Surfaces = [.. PlausibleVan.Vehicle.Surfaces.Select(surface => surface with
            {
                Stack = new([.. surface.Stack.Layers.Cast<SolidLayer>().Select(layer => layer with { Material = layer.Material with { ConductivityWPerMK = at("conductivity", layer.Material.ConductivityWPerMK) } })]),
                Ribs = [.. surface.Ribs.Select(rib => rib with { PsiWPerMK = at("rib", rib.PsiWPerMK!) })],
                Bolts = [new() { Name = "bolt", ChiWPerK = at("bolt", Sketches.Exactly(0.01)), Count = 5 }],
                Openings = [.. surface.Openings.Select(opening => opening with
                {
                    Coverings = [.. opening.Coverings.Select(cover => cover with { AddedResistanceM2KPerW = at("cover", cover.AddedResistanceM2KPerW) })],
                })],
            })],
        };
        double Heat(Vehicle vehicle, Extreme extreme)
        {
            Case run = Extremes.OfHeat(PlausibleVan.Case with { Vehicle = vehicle }, extreme);
            return Balances.Night(run, run.ColdNight).HeaterW;
        }
        Vehicle uncertain = With(At), certain = With((_, figure) => None(figure));
        Assert.True(Heat(uncertain, Extreme.Low) < Heat(certain, Extreme.Low));
        Assert.True(Heat(uncertain, Extreme.High) > Heat(certain, Extreme.High));
        Assert.Equal(Heat(certain, Extreme.Usual), Heat(uncertain, Extreme.Usual), 1e-9);
    }

    /// <summary>Under a covered sky: a clear one cools a skin more in calm air, so that wind then has two effects.</summary>
    [Fact]
    public void The_all_low_run_loses_least_and_the_all_high_run_most() => Gen.Select(AnyBody, AnyNight).Sample((vehicle, night) =>
    {
        Case asked = PlausibleVan.Case with
        {
            Vehicle = vehicle,
            ColdNight = PlausibleVan.Case.ColdNight with { OutsideC = night.OutsideC, WindMPerS = night.WindMPerS, SkyBelowAirK = 0 },
        };
        Case least = Extremes.OfHeat(asked, Extreme.Low), most = Extremes.OfHeat(asked, Extreme.High);
        double usual = Balances.Night(asked, asked.ColdNight).HeaterW;
        return Balances.Night(least, least.ColdNight).HeaterW < usual && usual < Balances.Night(most, most.ColdNight).HeaterW;
    });
}
