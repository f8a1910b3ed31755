using CsCheck;
using Thermal.Assessments;
using Thermal.Envelope;
using Thermal.Envelope.Details;
using Thermal.Files.Tests.Vehicles;
using Thermal.Materials;

namespace Thermal.Files.Tests.Property;

/// <summary>Whatever can be described can be written and read again to the last bit.</summary>
public sealed class DetailFileLaws
{
    private static readonly Case Van = VehicleFile.Read(DetailVan.Text, "details.yaml").Value!;

    /// <summary>A wall deep enough for whatever is generated: 6 mm, 400 mm, 1 mm.</summary>
    private static readonly Surface DeepSide = Van.Vehicle.Surfaces[0] with { Stack = Van.Vehicle.Surfaces[0].Stack.WithThicknessM(1, 0.4), Ribs = [], Bolts = [] };

    private static readonly Gen<Material> AnyMaterial = Gen.OneOf([.. MaterialLibrary.All.Where(material => material.Group is MaterialGroup.Metal or MaterialGroup.Foam or MaterialGroup.Wood).Select(Gen.Const)]);

    private static Gen<T?> Perhaps<T>(Gen<T> one) where T : class => Gen.Select(Gen.Bool, one, (isThere, thing) => isThere ? thing : null);

    private static Gen<double?> PerhapsNumber(double lowest, double highest) => Gen.Select(Gen.Bool, Gen.Double[lowest, highest], (isThere, number) => isThere ? number : (double?)null);

    private static readonly Gen<OverRib> AnyOver = Gen.Select(AnyMaterial, Gen.Double[0.0005, 0.09], PerhapsNumber(0.02, 0.4), (material, thicknessM, widthM) => new OverRib { Material = material, ThicknessM = thicknessM, WidthM = widthM });

    private static readonly Gen<LineDetail> AnyRib = Gen.Select(
        Gen.Select(Gen.Enum<RibShape>(), AnyMaterial, Perhaps(AnyMaterial), Perhaps(AnyOver), Gen.Bool),
        Gen.Select(Gen.Double[0.0003, 0.004], Gen.Double[0.02, 0.3], Gen.Double[0.02, 0.4], Gen.Double[0, 0.2], PerhapsNumber(0.01, 1)), (of, size) =>
    {
        (RibShape shape, Material material, Material? filling, OverRib? over, bool isBare) = of;
        (double sheetM, double depthM, double crownM, double footM, double? emissivity) = size;
        bool isClosed = shape is RibShape.Hat or RibShape.Box;
        return (LineDetail)new Rib
        {
            Shape = shape,
            Material = material,
            SheetM = sheetM,
            DepthM = depthM,
            CrownM = shape == RibShape.Plate ? 0 : crownM,
            FootM = shape is RibShape.Plate or RibShape.Box ? 0 : footM,
            Filling = isClosed ? filling : null,
            InnerEmissivityFraction = isClosed && filling is null ? emissivity : null,
            Over = isBare ? null : over,
            IsBare = isBare,
        };
    });

    private static readonly Gen<LineDetail> AnyLine = Gen.OneOf(AnyRib,
        Gen.Select(AnyMaterial, Gen.Double[0.003, 0.4], Gen.Double[0.003, 0.3], Perhaps(AnyOver), (material, widthM, depthM, over) => (LineDetail)new Batten { Material = material, WidthM = widthM, DepthM = depthM, Over = over }),
        Gen.Select(Gen.Double[0.002, 0.05], Gen.Double[0.005, 0.3], Perhaps(AnyMaterial), (depthM, grooveM, filling) => (LineDetail)new Corrugation { DepthM = depthM, GrooveM = grooveM, Filling = filling }),
        Gen.OneOf(Gen.Const("roof"), Gen.Const("floor")).Select(other => (LineDetail)new Corner { Other = other }),
        Gen.Select(Gen.OneOf(Gen.Const("roof"), Gen.Const("floor")), Gen.Double[0.0003, 0.004], Gen.Double[0.02, 0.03], AnyMaterial, (other, sheetM, legM, material) => (LineDetail)new Corner { Other = other, AngleSheetM = sheetM, AngleLegM = legM, AngleMaterial = material }));

    private static readonly Gen<Bolt> AnyBolt = Gen.Select(AnyMaterial, Gen.Double[0.001, 0.05], Gen.Double[1, 4], Gen.Double[0.0001, 0.05], PerhapsNumber(0.06, 0.2), Gen.Int[0, 1],
        (material, diameterM, times, thicknessM, outerM, layersOver) => new Bolt { Material = material, DiameterM = diameterM, HeadM = diameterM * times, HeadThicknessM = thicknessM, OuterHeadM = outerM, LayersOver = layersOver });

    private static readonly Gen<LineDetail> AnyEdge = Gen.OneOf(
        Gen.Select(Gen.Double[0.005, 0.2], Gen.Double[0.01, 0.2], Gen.Double[0, 0.2], Gen.Double[0, 0.1], (depthM, widthM, lipM, gapM) => (LineDetail)new FrameEdge { FrameDepthM = depthM, FrameWidthM = widthM, LipM = lipM, GapM = gapM }),
        Gen.Select(AnyMaterial, Gen.Double[0.0003, 0.004], Gen.Double[0.02, 0.3], Gen.Double[0.02, 0.3], Gen.Double[0.003, 0.05], Perhaps(AnyMaterial),
            (material, sheetM, postM, depthM, sealM, filling) => (LineDetail)new DoorEdge { Material = material, SheetM = sheetM, PostM = postM, DepthM = depthM, SealM = sealM, Filling = filling }));

    private static readonly Gen<LinearBridge> AnyLineBridge = Gen.Select(AnyLine, Gen.Double[0, 500], PerhapsNumber(1, 20), (detail, lengthM, spacingM) => new LinearBridge { Name = "rib", Detail = detail, LengthM = lengthM, SpacingM = spacingM });
    private static readonly Gen<LinearBridge> AnyGivenRib = Gen.Select(Gen.Double[-1, 5], Gen.Double[0, 500], PerhapsNumber(0.02, 20), PerhapsNumber(0, 1), PerhapsNumber(0, 1),
        (psi, lengthM, spacingM, coldest, mould) => new LinearBridge { Name = "rib", PsiWPerMK = Bounded.Stated(psi), LengthM = lengthM, SpacingM = spacingM, ColdestFactor = coldest, MouldFactor = mould, GivenFor = DeepSide.Stack.Signature });
    private static readonly Gen<PointBridge> AnyPointBridge = Gen.Select(AnyBolt, Gen.Int[0, 10_000], (detail, count) => new PointBridge { Name = "bolt", Detail = detail, Count = count });

    [Fact]
    public void A_rib_written_then_read_is_the_same() => Gen.OneOf(AnyLineBridge, AnyGivenRib).Sample(rib => IsKept(DeepSide with { Ribs = [rib] }), iter: 1000, print: Described.Of);

    [Fact]
    public void A_bolt_written_then_read_is_the_same() => AnyPointBridge.Sample(bolt => IsKept(DeepSide with { Bolts = [bolt] }), iter: 300, print: Described.Of);

    [Fact]
    public void An_edge_written_then_read_is_the_same() => AnyEdge.Sample(edge => IsKept(DeepSide with { Openings = [DeepSide.Openings[1] with { Edge = edge, Leaf = DeepSide.Stack }] }), iter: 300, print: Described.Of);

    private static bool IsKept(Surface side)
    {
        Case one = Van with { Vehicle = Van.Vehicle with { Surfaces = [side, .. Van.Vehicle.Surfaces.Skip(1)] } };
        Reading<Case> again = VehicleFile.Read(VehicleFile.Write(one), "again.yaml");
        Assert.Empty(again.Problems);
        Assert.Equal(Described.Of(one), Described.Of(again.Value));
        return true;
    }
}
