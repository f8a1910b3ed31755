using Thermal.Assessments;
using Thermal.Bridges;
using Thermal.Envelope;
using Thermal.Files;
using Thermal.Trips.Heat;
using Thermal.Zones;
using static Thermal.Tests.MovingHeat;

namespace Thermal.Tests.Consistency;

/// <summary>The moving heat of the built-in vehicles beside their steady answers, and what a clear night does to a roof (plausibility, not proof).</summary>
public class MovingHeatOfVehiclesTests
{
    public static TheoryData<string> Names => [.. VehicleLibrary.Names];

    private static ZoneState ColdNight(string name, double skyBelowAirK = 0)
    {
        Case read = VehicleLibrary.Find(name)!;
        Case asked = read with { Vehicle = SolvedVehicle.Of(read.Vehicle, read.ColdNight.WindMPerS, new()) };
        ZoneState night = Balances.Night(asked, asked.ColdNight);
        return ZoneBalance.Solve(night.Shell, night.Inputs with { SkyBelowAirK = skyBelowAirK });
    }

    private static HeatStepper Settled(Body body, ZoneState night) => new HeatStepper(body, 0).Run(80, 7200, HeldIn(body, night));

    [Theory, MemberData(nameof(Names))]
    public void With_lumped_films_and_no_sky_it_asks_for_the_heat_of_the_steady_answer(string name)
    {
        ZoneState night = ColdNight(name);
        Body body = Body.Of(night.Shell.Vehicle, FilmRule.Lumped, night.Inputs.AirPressurePa);
        HeatStepper stepper = Settled(body, night);
        Assert.Equal(1, stepper.HeaterW / night.HeaterW, 0.001);
        for (int z = 0; z < body.Rooms.Length; z++) Assert.Equal(night.TemperaturesC[z], stepper.State.AirC[z], 0.05);
    }

    /// <summary>Inner faces stand where the steady answer says. 0.05 K; frames lying flat are left out: there the steady answer takes their heat and their face with two different films.</summary>
    [Theory, MemberData(nameof(Names))]
    public void With_lumped_films_its_faces_are_as_cold_as_in_the_steady_answer(string name)
    {
        ZoneState night = ColdNight(name);
        Body body = Body.Of(night.Shell.Vehicle, FilmRule.Lumped, night.Inputs.AirPressurePa);
        HeatStepper stepper = Settled(body, night);
        int met = 0, flat = 0;
        for (int p = 0; p < body.Parts.Length; p++)
        {
            if (body.Parts[p] is { Kind: SurfaceKind.Frame, TiltDeg: < 60 or > 120 })
            {
                flat++;
                continue;
            }
            foreach (ColdPlace place in night.Shell.Places.Where(place => place.InUse && place.Name == body.Parts[p].Name && place.Kind == body.Parts[p].Kind))
            {
                Assert.Equal(night.PlaceC(place), stepper.State.InnerFaceC[p], 0.05);
                met++;
            }
        }
        Assert.Equal(body.Parts.Length - flat, met);
    }

    /// <summary>
    /// Faces that see one another share their cold by radiation and are warmed by air alone. For the same operative temperature the air must
    /// be warmer and the faces see a colder room; a heater that blows brings more to floor and sides than the lumped film knows, and fresh air
    /// carries more. In all +0 to +2.1 % was found, more at a part; printed. 4 %: a wrong coefficient moves it further.
    /// </summary>
    [Theory, MemberData(nameof(Names))]
    public void Convection_and_radiation_apart_hardly_move_the_heat_but_the_air_and_the_faces(string name)
    {
        ZoneState night = ColdNight(name);
        Body lumped = Body.Of(night.Shell.Vehicle, FilmRule.Lumped, night.Inputs.AirPressurePa), apart = Body.Of(night.Shell.Vehicle, FilmRule.Separate, night.Inputs.AirPressurePa);
        HeatStepper together = Settled(lumped, night), separate = Settled(apart, night);
        int living = ZoneBalance.LivingIndex(night.Shell.Vehicle);
        TestContext.Current.TestOutputHelper?.WriteLine(FormattableString.Invariant(
            $"{name}: {together.HeaterW:F0} W lumped, {separate.HeaterW:F0} W apart ({100 * (separate.HeaterW / together.HeaterW - 1):F1} %), air {separate.State.AirC[living]:F1}, radiant {separate.State.RadiantC[living]:F1} °C"));
        for (int p = 0; p < apart.Parts.Length; p++)
            if (apart.Parts[p].Zone == living)
                TestContext.Current.TestOutputHelper?.WriteLine(FormattableString.Invariant(
                    $"  {apart.Parts[p].Name}: {together.State.InnerFaceC[p]:F1} lumped, {separate.State.InnerFaceC[p]:F1} apart, heat {(separate.Ledger.PartsOutJ[p] / together.Ledger.PartsOutJ[p] - 1) * 100:F0} %"));
        Assert.InRange(separate.HeaterW / together.HeaterW, 0.98, 1.04);
    }

    /// <summary>A metal roof on still insulation without heat from inside, under a clear sky.</summary>
    private static double RoofBelowAirK(double windMPerS, double skyBelowAirK)
    {
        Body body = BareRoom(1, Sketches.Panel("plate", 0.25, "living", new([Layer(1, 0.01, 30, 1400), Layer(0.001, 50, 7800, 450)]), tiltDeg: 0)).Cut(FilmRule.Separate);
        Drive drive = new(body) { SkyC = -skyBelowAirK, AirPastMPerS = windMPerS, OutsideAirKgPerS = { [0] = 1 } };
        return -new HeatStepper(body, 0).Run(200, 3600, drive).State.OuterFaceC[0];
    }

    /// <summary>Measured on plates over closed boxes: 3 to 8 K on very clear nights.</summary>
    [Theory, InlineData(1), InlineData(2), InlineData(3)]
    public void An_unheated_plate_under_a_clear_sky_runs_3_to_8_kelvin_below_the_air(double windMPerS) => Assert.InRange(RoofBelowAirK(windMPerS, 20), 3, 8);

    /// <summary>The project's own balance by hand, sky 23.8 K below air of 0 °C: 10.9, 7.2, 5.4, 3.6 K at h_c 4, 8, 12, 20. 0.15 K: two formulas for the sky differ by 0.3 K.</summary>
    [Theory, InlineData(0, 10.9), InlineData(1, 7.2), InlineData(2, 5.4), InlineData(4, 3.6)]
    public void An_unheated_plate_stands_where_its_balance_by_hand_says(double windMPerS, double belowAirK) => Assert.Equal(belowAirK, RoofBelowAirK(windMPerS, 23.8), 0.15);

    [Theory, MemberData(nameof(Names))]
    public void A_heated_roof_runs_less_below_the_air_than_a_cold_one(string name)
    {
        ZoneState night = ColdNight(name, skyBelowAirK: 20);
        Body body = Body.Of(night.Shell.Vehicle, FilmRule.Separate, night.Inputs.AirPressurePa);
        int roof = Array.FindIndex(body.Parts, part => part.Kind == SurfaceKind.Bare && part.TiltDeg == 0 && body.Vehicle.Zones[part.Zone].Kind == ZoneKind.Living);
        Drive drive = HeldIn(body, night);
        double heated = drive.OutsideC - new HeatStepper(body, 0).Run(80, 7200, drive).State.OuterFaceC[roof];
        drive.WantedC = double.NaN;
        double cold = drive.OutsideC - new HeatStepper(body, 0).Run(80, 7200, drive).State.OuterFaceC[roof];
        Assert.InRange(cold, 2, 8);
        Assert.InRange(heated, 0.5, cold - 0.5);
    }

    [Fact]
    public void Equal_drives_give_equal_bits()
    {
        ZoneState night = ColdNight("library-van", 20);
        Body body = Body.Of(night.Shell.Vehicle, FilmRule.Separate, night.Inputs.AirPressurePa);
        HeatStepper one = new HeatStepper(body, 0).Run(100, 600, HeldIn(body, night)), other = new HeatStepper(body, 0).Run(100, 600, HeldIn(body, night));
        Assert.Equal(one.State.AirC, other.State.AirC);
        Assert.Equal(one.State.InnerFaceC, other.State.InnerFaceC);
        Assert.Equal(one.Ledger.HeaterJ, other.Ledger.HeaterJ);
        Assert.Equal(one.Ledger.PartsOutJ, other.Ledger.PartsOutJ);
    }

    [Fact]
    public void A_thousand_stages_allocate_nothing()
    {
        ZoneState night = ColdNight("library-van", 20);
        Body body = Body.Of(night.Shell.Vehicle, FilmRule.Separate, night.Inputs.AirPressurePa);
        Drive drive = HeldIn(body, night);
        HeatStepper stepper = new HeatStepper(body, 0).Run(10, 600, drive);
        long before = GC.GetAllocatedBytesForCurrentThread();
        stepper.Run(500, 600, drive);
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }
}
