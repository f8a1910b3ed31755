using Thermal.Assessments;
using Thermal.Envelope;
using Thermal.Envelope.Details;
using Thermal.Materials;

namespace Thermal.Files.Tests.Vehicles;

/// <summary>A described rib, bolt or edge becomes the record that its words say; the numbers are those of the text, in metres.</summary>
public sealed class DetailReadingTests
{
    private static readonly Case Read = Assert.IsType<Case>(VehicleFile.Read(DetailVan.Text, "details.yaml").Value);
    private static readonly Surface Side = Read.Vehicle.Surfaces[0];

    public static TheoryData<string> Ribs => [.. Expected.Keys];

    private static Material Of(string key) => MaterialLibrary.Find(key)!;

    private static readonly Dictionary<string, LineDetail?> Expected = new()
    {
        ["side ribs"] = new Rib { Shape = RibShape.Hat, Material = Of("steel_sheet"), SheetM = 0.0012, DepthM = 0.045, CrownM = 0.04, FootM = 0.02 },
        ["filled hats"] = new Rib
        {
            Shape = RibShape.Hat,
            Material = Of("stainless_steel"),
            SheetM = 0.0008,
            DepthM = 0.036,
            CrownM = 0.05,
            FootM = 0,
            Filling = Of("sheep_wool"),
            Over = new OverRib { Material = Of("elastomeric_foam"), ThicknessM = 0.006, WidthM = 0.08 },
        },
        ["zeds"] = new Rib { Shape = RibShape.Zed, Material = Of("aluminium"), SheetM = 0.002, DepthM = 0.04, CrownM = 0.025, FootM = 0.03 },
        ["channels"] = new Rib { Shape = RibShape.Channel, Material = Of("steel_sheet"), SheetM = 0.0015, DepthM = 0.066, CrownM = 0.035, FootM = 0.035, IsBare = true },
        ["tubes"] = new Rib { Shape = RibShape.Box, Material = Of("steel_sheet"), SheetM = 0.002, DepthM = 0.03, CrownM = 0.02, InnerEmissivityFraction = 0.3 },
        ["flats"] = new Rib { Shape = RibShape.Plate, Material = Of("steel_sheet"), SheetM = 0.004, DepthM = 0.05, Over = new OverRib { Material = Of("softwood"), ThicknessM = 0.01 } },
        ["timber"] = new Batten { Material = Of("softwood"), WidthM = 0.045, DepthM = 0.06 },
        ["top edge"] = new Corner { Other = "roof" },
        ["sill"] = new Corner { Other = "floor", AngleSheetM = 0.002, AngleLegM = 0.04, AngleMaterial = Of("galvanised_steel") },
        ["rib of a data sheet"] = null,
    };

    [Theory, MemberData(nameof(Ribs))]
    public void A_rib_is_what_its_words_say(string name) => Assert.Equal(Described.Of(Expected[name]), Described.Of(Side.Ribs.Single(rib => rib.Name == name).Detail));

    [Fact]
    public void Every_rib_of_the_text_was_compared() => Assert.Equal(Expected.Keys, Side.Ribs.Select(rib => rib.Name));

    [Fact]
    public void Grooves_hang_below_the_floor() =>
        Assert.Equal(new LinearBridge { Name = "grooves", LengthM = 60, SpacingM = 0.12, Detail = new Corrugation { DepthM = 0.008, GrooveM = 0.04 } }, Assert.Single(Read.Vehicle.Surfaces[2].Ribs));

    [Fact]
    public void A_bolt_is_what_its_words_say()
    {
        Assert.Equal(Described.Of(new Bolt { Material = Of("stainless_steel"), DiameterM = 0.008, HeadM = 0.024, HeadThicknessM = 0.007, OuterHeadM = 0.03, LayersOver = 1 }), Described.Of(Side.Bolts[0].Detail));
        Assert.Equal(Described.Of(new Bolt { Material = Of("steel_sheet"), DiameterM = 0.005, HeadM = 0.005 }), Described.Of(Side.Bolts[1].Detail));
    }

    [Fact]
    public void An_edge_is_what_its_words_say()
    {
        Assert.Equal(new FrameEdge { FrameDepthM = 0.03, FrameWidthM = 0.04, LipM = 0.015, GapM = 0.005 }, Side.Openings[0].Edge);
        Assert.Equal(Described.Of(new DoorEdge { Material = Of("steel_sheet"), SheetM = 0.0015, PostM = 0.06, DepthM = 0.03, SealM = 0.012, Filling = Of("elastomeric_foam") }), Described.Of(Side.Openings[1].Edge));
    }

    [Fact]
    public void A_given_figure_keeps_its_factors_and_its_build_up_and_a_described_one_has_none()
    {
        Assert.Equal((0.15, 0.7, 0.6, Side.Stack.Signature), (Side.Ribs[^1].PsiWPerMK!.Value, Side.Ribs[^1].ColdestFactor, Side.Ribs[^1].MouldFactor, Side.Ribs[^1].GivenFor));
        Assert.Equal((0.01, Side.Stack.Signature), (Side.Bolts[^1].ChiWPerK!.Value, Side.Bolts[^1].GivenFor));
        Assert.All(Side.Ribs.Where(rib => rib.Detail is not null), rib => Assert.True(rib is { PsiWPerMK: null, ColdestFactor: null, MouldFactor: null, GivenFor: null }, rib.Name));
    }

    /// <summary>A figure computed for a description would go stale in a file.</summary>
    [Fact]
    public void What_was_computed_for_a_description_is_not_written()
    {
        Surface evaluated = Side with
        {
            Ribs = [.. Side.Ribs.Select(rib => rib.Detail is null ? rib : rib with { PsiWPerMK = Bounded.Stated(0.2), ColdestFactor = 0.5, MouldFactor = 0.4, GivenFor = "x" })],
            Bolts = [.. Side.Bolts.Select(bolt => bolt.Detail is null ? bolt : bolt with { ChiWPerK = Bounded.Stated(0.2), ColdestFactor = 0.5, MouldFactor = 0.4, GivenFor = "x" })],
            Openings = [.. Side.Openings.Select(opening => opening with { EdgePsiWPerMK = 0.1 })],
        };
        Case one = Read with { Vehicle = Read.Vehicle with { Surfaces = [evaluated, .. Read.Vehicle.Surfaces.Skip(1)] } };
        Assert.Equal(VehicleFile.Write(Read), VehicleFile.Write(one));
    }
}
