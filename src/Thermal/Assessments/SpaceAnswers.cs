using Thermal.Envelope;
using Thermal.Zones;

namespace Thermal.Assessments;

/// <summary>Room left, weight and the mean transmittance of the body.</summary>
internal static class SpaceAnswers
{
    internal static Space Space(Vehicle vehicle)
    {
        double mass = 0, lining = 0;
        foreach (Surface surface in vehicle.Surfaces)
        {
            Add(surface.Stack, surface.OpaqueAreaM2);
            foreach (Opening opening in surface.Openings)
                if (opening.Leaf is { } leaf) Add(leaf, opening.AreaM2);
        }
        return new(vehicle.HeightM - Thickest(SurfacePlace.Roof) - Thickest(SurfacePlace.Floor),
            vehicle.WidthM - Thickest(SurfacePlace.Left) - Thickest(SurfacePlace.Right), mass, lining);

        void Add(Stack stack, double area)
        {
            mass += stack.MassKgPerM2 * area;
            SolidLayer? skin = stack.InsideSkinThicknessM < stack.ThicknessM ? (SolidLayer)stack.Layers[^1] : null;
            lining += (stack.MassKgPerM2 - (skin is null ? 0 : skin.ThicknessM * skin.Material.DensityKgPerM3.Value)) * area;
        }

        double Thickest(SurfacePlace place) => vehicle.Surfaces.Where(surface => surface.Place == place && surface.Zone == vehicle.Living.Name)
            .Select(surface => surface.Stack.InsideSkinThicknessM).DefaultIfEmpty(0).Max();
    }

    /// <summary>K of all outer panels, every zone at one temperature, without air exchange and sky. S_i takes the build-ups off each side of a panel with dimensions.</summary>
    internal static MeanK MeanK(Vehicle vehicle, Shell shell)
    {
        double heat = 0, outer = 0, inner = 0;
        foreach (HeatPath path in shell.Paths)
            if (path.OtherZone < 0) heat += path.CoefficientWPerK;
        foreach (Surface surface in vehicle.Surfaces)
        {
            if (surface.Outside == OuterSide.OtherZone) continue;
            outer += surface.AreaM2;
            double d = surface.Stack.InsideSkinThicknessM;
            inner += surface is { WidthM: { } width, HeightM: { } height } && width > 2 * d && height > 2 * d ? surface.AreaM2 * (width - 2 * d) * (height - 2 * d) / (width * height) : surface.AreaM2;
        }
        double mean = Math.Sqrt(inner * outer);
        return new(heat / mean, mean);
    }
}
