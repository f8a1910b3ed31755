using Thermal.Air;
using Thermal.Assessments;
using Thermal.Envelope;
using Thermal.Zones;
using static Thermal.Tests.Sketches;

namespace Thermal.Tests.Exact;

/// <summary>How cold ribs, bolts and edges get: from their factors, the air beside them and what is on their other side.</summary>
public class ColdBridgeTests
{
    private static LinearBridge Rib(double psiWPerMK, double factor, double? mouldFactor) =>
        new() { Name = "rib", PsiWPerMK = Exactly(psiWPerMK), LengthM = 2, ColdestFactor = factor, MouldFactor = mouldFactor };

    private static readonly Surface Roof = Panel("roof", 4, "living", PlausibleVan.Wall(), 0) with
    {
        Ribs = [Rib(0.2, 0.6, 0.5)],
        Bolts = [new() { Name = "bolts", ChiWPerK = Exactly(0.01), Count = 3, ColdestFactor = 0.55, MouldFactor = 0.45 }],
        Openings = [new() { Name = "hatch", WidthM = 0.5, HeightM = 0.5, Leaf = PlausibleVan.Wall(), EdgePsiWPerMK = 0.1, EdgeColdestFactor = 0.7, EdgeMouldFactor = 0.4 }],
    };

    [Theory, InlineData("roof, rib", 0.6, 0.5), InlineData("roof, bolts", 0.55, 0.45), InlineData("hatch, edge", 0.7, 0.4)]
    public void A_bridge_s_cold_place_has_both_its_factors_and_feels_the_sky(string name, double share, double mouldShare)
    {
        Shell shell = Shell.Of(PlausibleVan.Vehicle with { Surfaces = [Roof] }, 3, 1.2);
        ColdPlace place = Assert.Single(shell.Places, place => place.Name == name);
        Assert.Equal((SurfaceKind.Bridge, share, mouldShare), (place.Kind, place.InsideShareFraction, place.MouldShareFraction));
        // Under a roof the sky takes what the panel itself feels of it.
        Assert.Equal(shell.Places.First(plain => plain.Kind == SurfaceKind.Bare).SkyShareRatio, place.SkyShareRatio);
        Assert.True(place.SkyShareRatio > 0.05);
    }

    /// <summary>An edge is as cold with any cover: with and without one its place takes part.</summary>
    [Fact]
    public void Another_cover_leaves_the_edge_in_use()
    {
        Surface side = PlausibleVan.Vehicle.Surfaces[2];
        side = side with { Openings = [side.Openings[0] with { EdgePsiWPerMK = 0.1, EdgeColdestFactor = 0.7 }] };
        Shell shell = Shell.Of(PlausibleVan.Vehicle with { Surfaces = [side] }, 3, 1.2);
        foreach (Covering? cover in new[] { null, side.Openings[0].Coverings[0] })
            Assert.True(Assert.Single(shell.WithCover(side, side.Openings[0], cover).Places, place => place.Kind == SurfaceKind.Bridge && place.Opening is not null).InUse);
    }

    [Fact]
    public void Where_no_factor_for_mould_is_known_the_other_stands_for_it() =>
        Assert.Equal(0.6, Assert.Single(Shell.Of(PlausibleVan.Vehicle with { Surfaces = [Roof with { Ribs = [Rib(0.2, 0.6, null)] }] }, 3, 1.2).Places, place => place.Name == "roof, rib").MouldShareFraction);

    /// <summary>A rib in the cab has the cab's air beside it; one in a partition has the cab on its other side instead of the night.</summary>
    [Fact]
    public void A_bridge_is_as_cold_as_its_own_room_and_other_side_make_it()
    {
        Surface cab = PlausibleVan.Vehicle.Surfaces[^1] with { Ribs = [Rib(0.2, 0.6, null)] };
        Surface bulkhead = Panel("bulkhead", 2, "living", PlausibleVan.Wall(), 90, OuterSide.OtherZone, "cab") with { Ribs = [Rib(0.2, 0.5, null)] };
        Case asked = PlausibleVan.Case with { Vehicle = PlausibleVan.Vehicle with { Surfaces = [.. PlausibleVan.Vehicle.Surfaces.SkipLast(1), cab, bulkhead] } };
        ZoneState night = Balances.Night(asked, asked.ColdNight);
        IReadOnlyList<BridgeAnswer> answers = BridgeAnswers.Of(asked, night, new());
        BridgeAnswer inCab = answers.First(answer => answer.Panel == cab.Name), between = answers.First(answer => answer.Panel == "bulkhead");
        double livingC = night.TemperaturesC[0], cabC = night.TemperaturesC[1];
        Assert.True(livingC > cabC + 5);
        Assert.Equal(cabC, inCab.InsideC);
        Assert.Equal(DewPoint.OfPressureC(night.VapourPa(1)), inCab.DewPointC);
        Assert.NotEqual(night.VapourPa(0), night.VapourPa(1));
        Assert.Equal((livingC, cabC), (between.InsideC, between.OutsideC));
        Assert.Equal((livingC + cabC) / 2, between.ColdestC!.Value, 1e-9);
        Assert.Equal(0.2 * 2 * (livingC - cabC), between.LossW, 1e-9);
    }
}
