using Thermal.Assessments;
using Thermal.Envelope;
using Thermal.Envelope.Details;
using Thermal.Files;
using Thermal.Materials;

namespace Thermal.Cli.Tests;

/// <summary>The library van with one described rib, one kind of bolt and nothing given, as a file of a person's own.</summary>
internal static class DescribedFile
{
    private static readonly Material Steel = MaterialLibrary.Find("steel_sheet")!;

    /// <summary>Its text.</summary>
    internal static string Text { get; } = VehicleFile.Write(With(VehicleLibrary.Find("library-van")!));

    private static Case With(Case asked) => asked with { Vehicle = asked.Vehicle with { Surfaces = [.. asked.Vehicle.Surfaces.Select(Described)] } };

    private static Surface Described(Surface surface) => surface.Name switch
    {
        "left side" => surface with
        {
            Ribs = [new() { Name = "wall ribs", LengthM = 19.5, SpacingM = 0.5, Detail = new Rib { Shape = RibShape.Hat, Material = Steel, SheetM = 0.0012, DepthM = 0.036, CrownM = 0.04, FootM = 0.02 } }],
            Bolts = [new() { Name = "rail bolts", Count = 6, Detail = new Bolt { Material = Steel, DiameterM = 0.008, HeadM = 0.02, HeadThicknessM = 0.005, LayersOver = 1 } }],
        },
        _ => surface with { Ribs = [], Bolts = [] },
    };
}
