using Thermal.Envelope.Details;
using Thermal.Materials;

namespace Thermal.Tests.Exact;

/// <summary>In a run with all conductivities at one end every material of a detail is there.</summary>
public class MovedDetailTests
{
    // 0.08 to 0.12 W/(m·K).
    private static readonly Material Uncertain = Sketches.Of(0.1, spanShare: 0.2);

    private static readonly OverRib Strip = new() { Material = Uncertain, ThicknessM = 0.003 };

    private static IEnumerable<Material?> Materials(Detail detail) => detail switch
    {
        Rib rib => [rib.Material, rib.Filling, rib.Over!.Material],
        Batten batten => [batten.Material, batten.Over!.Material],
        Corner corner => [corner.AngleMaterial],
        Corrugation groove => [groove.Filling],
        DoorEdge door => [door.Material, door.Filling],
        _ => [((Bolt)detail).Material],
    };

    public static TheoryData<Detail> Details => [
        new Rib { Shape = RibShape.Hat, Material = Uncertain, SheetM = 0.001, DepthM = 0.03, CrownM = 0.04, Filling = Uncertain, Over = Strip },
        new Batten { Material = Uncertain, WidthM = 0.04, DepthM = 0.03, Over = Strip },
        new Corner { Other = "floor", AngleSheetM = 0.002, AngleLegM = 0.03, AngleMaterial = Uncertain },
        new Corrugation { DepthM = 0.01, GrooveM = 0.03, Filling = Uncertain },
        new DoorEdge { Material = Uncertain, SheetM = 0.001, PostM = 0.05, DepthM = 0.02, SealM = 0.008, Filling = Uncertain },
        new Bolt { Material = Uncertain, DiameterM = 0.008, HeadM = 0.02 },
    ];

    [Theory, MemberData(nameof(Details))]
    public void Every_material_of_a_detail_is_at_the_end_asked_for(Detail detail)
    {
        Assert.All(Materials(detail.WithConductivity(Extreme.Low)), material => Assert.Equal(0.08, material!.ConductivityWPerMK.Value, 12));
        Assert.All(Materials(detail.WithConductivity(Extreme.High)), material => Assert.Equal(0.12, material!.ConductivityWPerMK.Value, 12));
        Assert.All(Materials(detail.WithConductivity(Extreme.Usual)), material => Assert.Equal(0.1, material!.ConductivityWPerMK.Value, 12));
    }
}
