using Thermal.Assessments;
using Thermal.Envelope;
using Thermal.Envelope.Details;

namespace Thermal.Files.Tests.Vehicles;

/// <summary>The built-in vehicles are read without a problem and survive being written.</summary>
public sealed class BuiltInTests
{
    public static TheoryData<string> Names => [.. VehicleLibrary.Names];

    [Theory, MemberData(nameof(Names))]
    public void Every_built_in_vehicle_is_read_without_a_problem(string name) =>
        Assert.Empty(VehicleFile.Read(VehicleLibrary.Text(name)!, name).Problems);

    [Theory, MemberData(nameof(Names))]
    public void Written_then_read_gives_the_same_vehicle(string name)
    {
        Case first = VehicleLibrary.Find(name)!;
        string text = VehicleFile.Write(first);
        Reading<Case> again = VehicleFile.Read(text, name);
        Assert.Empty(again.Problems);
        Assert.Equal(Described.Of(first), Described.Of(again.Value!));
        Assert.Equal(text, VehicleFile.Write(again.Value!));
    }

    [Theory, MemberData(nameof(Names))]
    public void Every_rib_bolt_and_edge_is_described_and_none_has_a_figure_from_elsewhere(string name) => Assert.All(VehicleLibrary.Find(name)!.Vehicle.Surfaces, surface =>
    {
        Assert.All(surface.Ribs, rib => Assert.True(rib is { Detail: not null, PsiWPerMK: null }, rib.Name));
        Assert.All(surface.Bolts, bolt => Assert.True(bolt is { Detail: not null, ChiWPerK: null }, bolt.Name));
        Assert.All(surface.Openings, opening => Assert.Equal(0, opening.EdgePsiWPerMK));
    });

    /// <summary>Of the kinds of detail, those that the built-in vehicles have between them.</summary>
    [Fact]
    public void The_built_in_vehicles_have_ribs_timber_grooves_corners_edges_and_bolts()
    {
        Surface[] surfaces = [.. VehicleLibrary.Names.SelectMany(name => VehicleLibrary.Find(name)!.Vehicle.Surfaces)];
        IEnumerable<Detail?> details = surfaces.SelectMany(surface => surface.Ribs.Select(rib => (Detail?)rib.Detail).Concat(surface.Bolts.Select(bolt => bolt.Detail)).Concat(surface.Openings.Select(opening => opening.Edge)));
        Assert.Equal(new HashSet<string> { "Rib", "Batten", "Corrugation", "Corner", "FrameEdge", "DoorEdge", "Bolt" }, details.OfType<Detail>().Select(detail => detail.GetType().Name).ToHashSet());
    }

    /// <summary>What the set of vehicles must show between them.</summary>
    [Fact]
    public void The_built_in_vehicles_differ_in_what_they_exercise()
    {
        Case[] all = [.. VehicleLibrary.Names.Select(name => VehicleLibrary.Find(name)!)];
        Layer[] layers = [.. all.SelectMany(one => one.Vehicle.Surfaces).SelectMany(surface => surface.Stack.Layers.OfType<SolidLayer>()).Select(layer => new Layer(layer.Material.Key, layer.Battens is not null))];
        Opening[] openings = [.. all.SelectMany(one => one.Vehicle.Surfaces).SelectMany(surface => surface.Openings)];
        Assert.Equal(3, all.Length);
        Assert.Contains(layers, layer => layer.HasBattens);
        Assert.Superset(new HashSet<string> { "sheep_wool", "cross_linked_pe_foam", "elastomeric_foam", "xps", "grp", "steel_sheet" }, layers.Select(layer => layer.Material).ToHashSet());
        Assert.Contains(openings, opening => opening.Glazing?.Panes.Count == 1);
        Assert.Contains(openings, opening => opening.Glazing?.Panes.Count == 2 && opening.Glazing.Panes[0].Material.Key == "acrylic");
        Assert.Contains(openings, opening => opening.Leaf is not null);
        Assert.Superset(new HashSet<CoveringSide> { CoveringSide.Inside, CoveringSide.Outside }, openings.SelectMany(opening => opening.Coverings).Select(cover => cover.Side).ToHashSet());
        Assert.Superset(new HashSet<LinkState> { LinkState.Open, LinkState.Closed }, all.SelectMany(one => one.Vehicle.Links).Select(link => link.State).ToHashSet());
        Assert.Superset(new HashSet<ZoneKind> { ZoneKind.Living, ZoneKind.Cab, ZoneKind.Hold }, all.SelectMany(one => one.Vehicle.Zones).Select(zone => zone.Kind).ToHashSet());
        Assert.Contains(all, one => one.Tanks.Any(tank => tank.Zone is null));
        Assert.Contains(all, one => one.Habits.ShowersPerDay > 0);
    }

    private sealed record Layer(string Material, bool HasBattens);
}
