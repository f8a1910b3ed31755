using Thermal.Air;
using Thermal.Assessments;
using Thermal.Envelope;
using Thermal.Zones;
using static Thermal.Tests.Sketches;

namespace Thermal.Tests.Exact;

/// <summary>Zones whose heat and vapour can be balanced by hand.</summary>
public class ZoneNetworkTests
{
    private const double OutsidePa = 400, AirHeat = 1006;

    private static double Conductance(double areaM2, double resistance, double filmsM2KPerW) => areaM2 / (resistance + filmsM2KPerW);

    /// <summary>Outside film in still air, 1/(4 + 0.9·5.1).</summary>
    private const double StillFilm = 1 / (4 + 0.9 * 5.1);

    /// <summary>Hold: T = (K·T_living + (K_o + a)·T_o)/(K + K_o + a), with the partition and the curtain's air and resistance in K.</summary>
    [Fact]
    public void A_hold_behind_a_partition_takes_the_temperature_of_its_bridge_circuit()
    {
        Vehicle vehicle = Body(
            [Room("hold", ZoneKind.Hold, 3, 2), Room("living", ZoneKind.Living, 10, 1)],
            [
                Panel("living wall", 20, "living", new([Resisting(1)])),
                Panel("hold wall", 8, "hold", new([Resisting(0.5)])),
                Panel("partition", 4, "living", new([Resisting(0.3)]), outside: OuterSide.OtherZone, otherZone: "hold"),
            ],
            [new() { From = "hold", To = "living", AreaM2 = 1.5, State = LinkState.Closed, AirM3PerM2H = Exactly(10), ResistanceM2KPerW = Exactly(0.1) }]);
        ZoneState state = ZoneBalance.Solve(Shell.Of(vehicle, 0, 1.2), Still(-10, OutsidePa, 20, 1e-5));

        double air = DryAirKgPerM3(-10, OutsidePa) * AirHeat / 3600;
        double between = Conductance(4, 0.3, 0.13 + 0.13) + 1.5 / (0.1 + 0.26) + 15 * air, outwards = Conductance(8, 0.5, 0.13 + StillFilm) + 6 * air;
        double holdC = (between * 20 + outwards * -10) / (between + outwards), loss = (Conductance(20, 1, 0.13 + StillFilm) + 10 * air) * 30 + between * (20 - holdC);
        Assert.Equal(holdC, state.TemperaturesC[0], 1e-10);
        Assert.Equal(loss, state.HeaterW, 1e-9);

        // Vapour: the hold sees only what passes the curtain.
        double m = DryAirKgPerM3(-10, OutsidePa) / 3600, outside = RatioKgPerKg(OutsidePa);
        double holdShare = 15 * m / (15 * m + 6 * m), living = outside + 1e-5 / (10 * m + 15 * m * (1 - holdShare));
        Assert.Equal(living, state.HumidityRatiosKgPerKg[1], 1e-15);
        Assert.Equal(outside + holdShare * (living - outside), state.HumidityRatiosKgPerKg[0], 1e-15);
    }

    /// <summary>Well-mixed room at rest: the excess over outside is G/(ρ·n·V).</summary>
    [Theory, InlineData(10, 40), InlineData(100, 25), InlineData(0, 10)]
    public void A_room_without_cold_places_holds_its_source_over_its_air(double vapourGPerH, double volumeM3)
    {
        Vehicle vehicle = Body([Room("living", ZoneKind.Living, volumeM3, 1)], [Panel("wall", 20, "living", new([Resisting(9)]))]);
        ZoneState state = ZoneBalance.Solve(Shell.Of(vehicle, 0, 1.2), Still(0, OutsidePa, 20, vapourGPerH / 3.6e6));
        Assert.Equal(vapourGPerH / 1000 / (DryAirKgPerM3(0, OutsidePa) * volumeM3), state.HumidityRatiosKgPerKg[0] - RatioKgPerKg(OutsidePa), 1e-15);
    }

    /// <summary>One pane of bare metal: dry X = X_o + G/m; wet X = (m·X_o + G + t·X_s)/(m + t) with t = A·h_c/c_p; the kink where both meet.</summary>
    [Theory, InlineData(0.2), InlineData(0.999), InlineData(1), InlineData(1.001), InlineData(3)]
    public void One_cold_surface_dries_the_room_from_its_dew_point_on(double shareOfKink)
    {
        const double areaM2 = 3, r = 0.05;
        Vehicle vehicle = Body([Room("living", ZoneKind.Living, 10, 1)], [Panel("sheet", areaM2, "living", new([Resisting(r)]))]);
        double surfaceC = 20 - 25 * 0.13 / (0.13 + r + StillFilm), saturated = RatioKgPerKg(610.5 * Math.Exp(17.269 * surfaceC / (237.3 + surfaceC)));
        double m = 10 * DryAirKgPerM3(-5, OutsidePa) / 3600, t = areaM2 * 2.5 / AirHeat, outside = RatioKgPerKg(OutsidePa), source = shareOfKink * m * (saturated - outside);
        ZoneState state = ZoneBalance.Solve(Shell.Of(vehicle, 0, 1.2), Still(-5, OutsidePa, 20, source));
        double expected = shareOfKink <= 1 ? outside + source / m : (m * outside + source + t * saturated) / (m + t);
        Assert.Equal(expected, state.HumidityRatiosKgPerKg[0], 1e-15);
        Assert.Equal(shareOfKink <= 1 ? 0 : t * (expected - saturated), state.SettlingKgPerS(state.Shell.Places[0]), 1e-14);
    }

    /// <summary>Air saturated outside, no source, places as cold as the outside: they stand exactly on the kink, where rounding alone says wet or dry.</summary>
    [Fact]
    public void Places_exactly_at_their_dew_point_settle()
    {
        for (double airChanges = 0.3; airChanges < 3; airChanges += 0.0137)
        {
            double saturatedPa = SaturationPressure.PairPa(-5);
            Vehicle vehicle = Body(
                [Room("living", ZoneKind.Living, 10, airChanges), Room("cab", ZoneKind.Cab, 3, airChanges)],
                [Panel("wall", 20, "living", new([Resisting(9)])), Panel("cab sheet", 3, "cab", new([Resisting(0.01)]))],
                [new() { From = "living", To = "cab", AreaM2 = 1, State = LinkState.Open, AirM3PerM2H = Exactly(7) }]);
            ZoneState state = ZoneBalance.Solve(Shell.Of(vehicle, 0, 1.2), Still(-5, saturatedPa, -5));
            Assert.Equal(RatioKgPerKg(saturatedPa), state.HumidityRatiosKgPerKg[1], 1e-15);
        }
    }

    /// <summary>Behind a locker the lining stands at T_o + ΔT·(1 − (R_si + R)/(R_si + R + R_wall + R_se)), and what covers a third of the wall saves on that third alone.</summary>
    [Theory, InlineData(0.5), InlineData(2.5)]
    public void A_lining_behind_a_locker_is_as_cold_as_its_resistances_say(double locker)
    {
        Surface wall = Panel("wall", 12, "living", new([Resisting(0.8)])) with { Against = [new() { Name = "locker", AddedResistanceM2KPerW = locker, AreaFraction = 0.25 }] };
        ZoneState state = ZoneBalance.Solve(Shell.Of(Body([Room("living", ZoneKind.Living, 10, 0)], [wall]), 0, 1.2), Still(-10, OutsidePa));
        double total = 0.13 + 0.8 + StillFilm, behindC = -10 + 30 * (1 - (0.13 + locker) / (total + locker));
        ColdPlace behind = Assert.Single(state.Shell.Places, place => place.Kind == SurfaceKind.Behind);
        Assert.Equal(behindC, state.PlaceC(behind), 1e-10);
        Assert.Equal(-10 + 30 * (1 - (0.25 + locker) / (total - 0.13 + 0.25 + locker)), state.PlaceC(behind, forMould: true), 1e-10);
        Assert.Equal(30 * (9 / total + 3 / (total + locker)), state.HeaterW, 2e-5); // but for a millilitre of air an hour
    }

    /// <summary>A cube of 2 m with 50 mm inside the skin: K = Σ A·U/√(24·21.66), S_i with 50 mm off each edge. Agreement on perishable foodstuffs.</summary>
    [Fact]
    public void The_mean_transmittance_takes_the_geometric_mean_of_both_areas()
    {
        Stack stack = new([Resisting(0.5, "foam")]);
        Surface Side(string name, double tiltDeg) => Panel(name, 4, "living", stack, tiltDeg) with { WidthM = 2, HeightM = 2 };
        Vehicle cube = Body([Room("living", ZoneKind.Living, 8, 1)],
            [Side("roof", 0), Side("floor", 180), Side("left", 90), Side("right", 90), Side("front", 90), Side("rear", 90)]);
        MeanK mean = SpaceAnswers.MeanK(cube, Shell.Of(cube, 0, 1.2));
        Assert.Equal(Math.Sqrt(24 * 6 * 1.9 * 1.9), mean.MeanAreaM2, 1e-12);
        double heat = 4 / (0.5 + 0.10 + StillFilm) + 4 / (0.5 + 0.17 + StillFilm) + 16 / (0.5 + 0.13 + StillFilm);
        Assert.Equal(heat / mean.MeanAreaM2, mean.MeanKWPerM2K, 1e-12);
    }

    /// <summary>A clear sky acts on a roof as (h_r/(h_c + h_r))·ΔT_sky below the air: 0.9·5.1/(4 + 12 + 0.9·5.1)·20 K at 3 m/s, half of it on a side, none on the road side.</summary>
    [Fact]
    public void A_clear_sky_cools_roof_side_and_floor_by_their_view_of_it()
    {
        double roofK = 0.9 * 5.1 / (16 + 0.9 * 5.1) * 20;
        Assert.Equal(roofK, SurfaceResistance.SkyChillK(3, 0, 20), 1e-12);
        Assert.Equal(roofK / 2, SurfaceResistance.SkyChillK(3, 90, 20), 1e-12);
        Assert.Equal(0, SurfaceResistance.SkyChillK(3, 180, 20), 1e-12);
    }
}
