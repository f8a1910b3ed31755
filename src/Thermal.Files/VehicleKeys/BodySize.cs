using Thermal.Envelope;
using Thermal.Files.Keys;

namespace Thermal.Files.VehicleKeys;

/// <summary>Bare dimensions of the living space, skin to skin.</summary>
/// <param name="LengthM">Length, m.</param>
/// <param name="WidthM">Width, m.</param>
/// <param name="HeightM">Height, m.</param>
/// <param name="ArchesM3">Volume that wheel arches take, m³.</param>
internal sealed record BodySize(double LengthM, double WidthM, double HeightM, double ArchesM3)
{
    /// <summary>Air in the bare shell, m³.</summary>
    internal double BareM3 => LengthM * WidthM * HeightM - ArchesM3;

    /// <summary>Air left between the build-ups, m³: what the finished inside holds.</summary>
    internal double FinishedM3(IReadOnlyList<Surface> surfaces, string zone)
    {
        double Thickness(SurfacePlace place)
        {
            Surface[] panels = [.. surfaces.Where(surface => surface.Zone == zone && surface.Place == place)];
            return panels.Length == 0 ? 0 : panels.Sum(panel => panel.AreaM2 * panel.Stack.ThicknessM) / panels.Sum(panel => panel.AreaM2);
        }
        return (LengthM - Thickness(SurfacePlace.Front) - Thickness(SurfacePlace.Rear))
            * (WidthM - Thickness(SurfacePlace.Left) - Thickness(SurfacePlace.Right))
            * (HeightM - Thickness(SurfacePlace.Roof) - Thickness(SurfacePlace.Floor)) - ArchesM3;
    }
}

/// <summary>The key <c>body</c>.</summary>
internal static class BodyKeys
{
    private static readonly Field<Arches, int> Count = new("count", "How many stand in the living space.", new WholeNode(1, 8), _ => null) { IsRequired = true };
    private static readonly Field<Arches, double> ArchLength = new("length", "Length of one.", Kinds.Millimetres(0.1, 3), _ => null) { IsRequired = true };
    private static readonly Field<Arches, double> ArchWidth = new("width", "Width of one.", Kinds.Millimetres(0.05, 1.5), _ => null) { IsRequired = true };
    private static readonly Field<Arches, double> ArchHeight = new("height", "Height of one above the floor.", Kinds.Millimetres(0.05, 1.5), _ => null) { IsRequired = true };
    private static readonly Map<Arches> ArchMap = new("the wheel arches", [Count, ArchLength, ArchWidth, ArchHeight],
        values => new Arches(values.Of(Count) * values.Of(ArchLength) * values.Of(ArchWidth) * values.Of(ArchHeight))) { IsShort = true };

    private static readonly Field<BodySize, double> Length = new("length", "Length of the living space, bare shell.", Kinds.Metres(0.5, 20), body => body.LengthM) { IsRequired = true };
    private static readonly Field<BodySize, double> Width = new("width", "Width, bare shell.", Kinds.Metres(0.5, 4), body => body.WidthM) { IsRequired = true };
    private static readonly Field<BodySize, double> Height = new("height", "Height, bare shell.", Kinds.Metres(0.5, 4), body => body.HeightM) { IsRequired = true };
    private static readonly Field<BodySize, Arches> WheelArches = new("wheel_arches", "Boxes over the wheels; they take air volume from the living space.", ArchMap, _ => null);

    internal static Map<BodySize> Map { get; } = new("the body", [Length, Width, Height, WheelArches], values =>
    {
        var body = new BodySize(values.Of(Length), values.Of(Width), values.Of(Height), values.Of(WheelArches)?.VolumeM3 ?? 0);
        values.Spot.Scope.Body = body;
        if (body.BareM3 >= 0.1)
            return body;
        values.Spot.Problem("the wheel arches fill the whole body; check their sizes");
        return null;
    });

    private sealed record Arches(double VolumeM3);
}
