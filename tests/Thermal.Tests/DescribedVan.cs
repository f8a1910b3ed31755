using Thermal.Assessments;
using Thermal.Envelope;
using Thermal.Envelope.Details;
using Thermal.Materials;

namespace Thermal.Tests;

/// <summary>The plausible van with every kind of described detail: hat ribs with and without a strip, a bolt, a corner, the edge of a window, a door leaf in its post.</summary>
internal static class DescribedVan
{
    private static readonly Material Steel = MaterialLibrary.Find("steel_sheet")!;

    internal static Rib Hat { get; } = new() { Shape = RibShape.Hat, Material = Steel, SheetM = 0.001, DepthM = 0.025, CrownM = 0.04, FootM = 0.015 };

    private static LinearBridge Ribs(Surface surface, LineDetail detail) => new() { Name = "ribs", Detail = detail, LengthM = surface.AreaM2 / 0.5, SpacingM = 0.5 };

    private static Surface Described(Surface surface) => surface.Name switch
    {
        "roof" => surface with
        {
            Ribs = [Ribs(surface, Hat)],
            Bolts = [new() { Name = "roof rail bolts", Detail = new Bolt { Material = Steel, DiameterM = 0.008, HeadM = 0.02, HeadThicknessM = 0.005, LayersOver = 1 }, Count = 6 }],
        },
        "left side" => surface with
        {
            Ribs = [Ribs(surface, Hat), new() { Name = "lower corner", Detail = new Corner { Other = "floor" }, LengthM = PlausibleVan.LengthM }],
            Openings = [.. surface.Openings.Select(opening => opening with { Edge = new FrameEdge { FrameDepthM = 0.04, FrameWidthM = 0.03, GapM = 0.01 } })],
        },
        "right side" => surface with { Ribs = [Ribs(surface, Hat)] },
        "rear doors" => surface with
        {
            Ribs = [],
            Openings =
            [
                new()
                {
                    Name = "rear leaf", WidthM = 0.8, HeightM = 1.6, Leaf = PlausibleVan.Wall(),
                    Edge = new DoorEdge { Material = Steel, SheetM = 0.001, PostM = 0.05, DepthM = 0.03, SealM = 0.01 },
                },
            ],
        },
        _ => surface,
    };

    internal static Vehicle Vehicle { get; } = PlausibleVan.Vehicle with { Surfaces = [.. PlausibleVan.Vehicle.Surfaces.Select(Described)] };

    internal static Case Case { get; } = PlausibleVan.Case with { Vehicle = Vehicle };

    internal static Vehicle With(string panel, Func<Surface, Surface> change) => Vehicle with { Surfaces = [.. Vehicle.Surfaces.Select(surface => surface.Name == panel ? change(surface) : surface)] };
}
