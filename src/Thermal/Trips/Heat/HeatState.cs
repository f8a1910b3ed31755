namespace Thermal.Trips.Heat;

/// <summary>Temperatures of a body at one moment. Owned and changed by <see cref="HeatStepper"/>; others read.</summary>
internal sealed class HeatState
{
    /// <summary>Air of each room, °C.</summary>
    internal required double[] AirC { get; init; }
    /// <summary>Mean radiant temperature of each room, °C.</summary>
    internal required double[] RadiantC { get; init; }
    /// <summary>Furnishings of each room, °C.</summary>
    internal required double[] FurnishingC { get; init; }
    /// <summary>Inner face of each part, °C (of the glass itself behind an inside cover, where room air that gets past the cover settles).</summary>
    internal required double[] InnerFaceC { get; init; }
    /// <summary>Outer face of each part, °C (of the cover where an outside cover is on).</summary>
    internal required double[] OuterFaceC { get; init; }
    /// <summary>Coldest inner line of each tie, °C; NaN where not known.</summary>
    internal required double[] TieColdestC { get; init; }
    /// <summary>Faces between the layers of each part that has layers, inside to outside (n + 1 of them), °C; empty otherwise.</summary>
    internal required double[][] LayerFacesC { get; init; }

    /// <summary>Everything at one temperature.</summary>
    internal static HeatState AtStart(Body body, double startC)
    {
        return new()
        {
            AirC = All(body.Rooms.Length),
            RadiantC = All(body.Rooms.Length),
            FurnishingC = All(body.Rooms.Length),
            InnerFaceC = All(body.Parts.Length),
            OuterFaceC = All(body.Parts.Length),
            TieColdestC = [.. body.Ties.Select(tie => tie.ColdestFactor is null ? double.NaN : startC)],
            LayerFacesC = [.. body.Parts.Select(part => All(part.Chain.FaceLinks.Length))],
        };

        double[] All(int count)
        {
            double[] all = new double[count];
            Array.Fill(all, startC);
            return all;
        }
    }

    /// <summary>Operative temperature of a room, °C: mean of air and radiant.</summary>
    internal double OperativeC(int zone) => (AirC[zone] + RadiantC[zone]) / 2;
}
