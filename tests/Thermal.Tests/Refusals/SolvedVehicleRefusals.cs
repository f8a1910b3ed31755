using Thermal.Assessments;
using Thermal.Bridges;
using Thermal.Envelope;
using Thermal.Envelope.Details;
using Thermal.Zones;

namespace Thermal.Tests.Refusals;

/// <summary>Vehicles whose details are not solved, or cannot be.</summary>
public class SolvedVehicleRefusals
{
    private static Vehicle OnlyRoof(Func<Surface, Surface> change)
    {
        Surface roof = DescribedVan.Vehicle.Surfaces.First(surface => surface.Name == "roof");
        return DescribedVan.Vehicle with { Surfaces = [change(roof)] };
    }

    private static string Refusal(Vehicle vehicle) => Assert.Throws<InvalidOperationException>(() => Shell.Of(vehicle, 3, 1.2)).Message;

    [Fact]
    public void A_described_rib_bolt_or_edge_that_was_not_solved_is_named()
    {
        Assert.Contains("ribs is described but not solved", Refusal(OnlyRoof(roof => roof with { Bolts = [] })), StringComparison.Ordinal);
        Assert.Contains("bolts is described but not solved", Refusal(OnlyRoof(roof => roof with { Ribs = [] })), StringComparison.Ordinal);
        Opening edged = DescribedVan.Vehicle.Surfaces.First(surface => surface.Name == "left side").Openings[0];
        Assert.Contains($"edge of {edged.Name} is described but not solved", Refusal(OnlyRoof(roof => roof with { Ribs = [], Bolts = [], Openings = [edged] })), StringComparison.Ordinal);
    }

    [Fact]
    public void A_rib_deeper_than_its_wall_is_told_by_name_and_not_assessed()
    {
        Vehicle thin = DescribedVan.With("roof", roof => roof with { Stack = PlausibleVan.Wall(0.01) });
        UnfitDetail unfit = Assert.Single(SolvedVehicle.Unfit(thin), unfit => unfit.Name == "ribs");
        Assert.Equal(("roof", DetailFault.DeeperThanWall, 0.025), (unfit.Panel, unfit.Problem.Fault, unfit.Problem.GivenM));
        Assert.Equal(0.016, unfit.Problem.LimitM, 1e-12);
        Assert.Throws<ArgumentException>(() => Assess.Of(DescribedVan.Case with { Vehicle = thin }));
    }

    [Fact]
    public void A_corner_with_a_panel_that_is_not_there_is_refused_by_its_name()
    {
        Vehicle lost = DescribedVan.With("left side", side => side with { Ribs = [side.Ribs[1] with { Detail = new Corner { Other = "cellar" } }] });
        Assert.Contains("cellar", Assert.Throws<ArgumentException>(() => SolvedVehicle.Of(lost, 3, new())).Message, StringComparison.Ordinal);
        Assert.Contains("cellar", Assert.Throws<ArgumentException>(() => SolvedVehicle.Unfit(lost)).Message, StringComparison.Ordinal);
    }
}
