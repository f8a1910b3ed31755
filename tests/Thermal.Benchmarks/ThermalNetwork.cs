using Thermal.Air;
using Thermal.Envelope;
using Thermal.Trips.Heat;

namespace Thermal.Benchmarks;

/// <summary>A body with lumped films as a plain network of capacities and conductances, for a general integrator.</summary>
/// <remarks>Air of the rooms first, then their furnishings, then the cells of the parts. Faces hold no heat: films and what lies beside them in a row are one conductance.</remarks>
internal sealed class ThermalNetwork
{
    private readonly List<double> capacityJPerK = [], conductanceWPerK = [];
    private readonly List<int> from = [], to = [];

    /// <param name="body">A body with lumped films; no cover is on, every passage is closed.</param>
    /// <param name="airPastMPerS">Air past it, m/s.</param>
    /// <param name="outsideAirKgPerS">Air from outside by room, kg/s.</param>
    internal ThermalNetwork(Body body, double airPastMPerS, double[] outsideAirKgPerS)
    {
        int rooms = body.Rooms.Length;
        foreach (Room room in body.Rooms) capacityJPerK.Add(room.AirJPerK);
        for (int z = 0; z < rooms; z++)
        {
            Link(z, Node(body.Rooms[z].FurnishingJPerK), body.Rooms[z].FurnishingM2 / SurfaceResistance.InsideM2KPerW(FlowDirection.Horizontal));
            Link(z, Outside, outsideAirKgPerS[z] * MoistAir.DryAirSpecificHeatJPerKgK);
        }
        double windWPerM2K = SurfaceResistance.OutsideConvectiveWPerM2K(airPastMPerS) + SurfaceResistance.UsualEmissivityFraction * SurfaceResistance.OutsideBlackWPerM2K;
        foreach (Part part in body.Parts) Add(part, windWPerM2K);
        foreach (Tie tie in body.Ties) Link(tie.Zone, tie.OtherZone, tie.LossWPerK);
        foreach (Passage passage in body.Passages) Link(passage.From, passage.To, passage.ClosedWPerK);
    }

    /// <summary>The end of a link that is no node.</summary>
    internal const int Outside = -1;

    internal int NodeCount => capacityJPerK.Count;

    /// <summary>Writes the file that season.py reads.</summary>
    /// <param name="file">Its path.</param>
    /// <param name="season">What acts on it.</param>
    /// <param name="heated">Node that gets the heat and is watched.</param>
    internal void Write(string file, SeasonDrive season, int heated)
    {
        using BinaryWriter writer = new(File.Create(file));
        foreach (int count in (int[])[NodeCount, from.Count, season.HourCount, (int)SeasonDrive.StepS, heated]) writer.Write(count);
        Write(writer, capacityJPerK);
        foreach (int end in from) writer.Write(end);
        foreach (int end in to) writer.Write(end);
        Write(writer, conductanceWPerK);
        for (int i = 0; i < NodeCount; i++) writer.Write(i == heated ? 1.0 : 0);
        writer.Write(SeasonDrive.StartC);
        Write(writer, season.OutsideC);
        Write(writer, season.HeatW);
    }

    private static void Write(BinaryWriter writer, IEnumerable<double> values)
    {
        foreach (double value in values) writer.Write(value);
    }

    private void Add(Part part, double windWPerM2K)
    {
        double faces = part.AreaM2 * part.Films.FaceFactor;
        double resistanceKPerW = part.Films.LumpedInsideM2KPerW / faces + part.Films.AgainstM2KPerW / part.AreaM2;
        int last = part.Zone;
        for (int i = 0; i < part.Chain.CapacityJPerM2K.Length; i++)
        {
            resistanceKPerW += part.Chain.LinksM2KPerW[i] / part.AreaM2;
            int cell = Node(part.Chain.CapacityJPerM2K[i] * part.AreaM2);
            Link(last, cell, 1 / resistanceKPerW);
            (last, resistanceKPerW) = (cell, 0);
        }
        resistanceKPerW = (part.Chain.LinksM2KPerW[^1] + part.Films.VentilatedM2KPerW) / part.AreaM2 + (part.Films.LumpedOutsideM2KPerW ?? 1 / windWPerM2K) / faces;
        Link(last, part.OtherZone, 1 / resistanceKPerW);
    }

    private int Node(double heatJPerK)
    {
        capacityJPerK.Add(heatJPerK);
        return capacityJPerK.Count - 1;
    }

    private void Link(int a, int b, double heatWPerK)
    {
        from.Add(a);
        to.Add(b);
        conductanceWPerK.Add(heatWPerK);
    }
}
