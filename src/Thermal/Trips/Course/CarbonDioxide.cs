using Thermal.Envelope;
using Thermal.People;
using Thermal.Trips.Heat;

namespace Thermal.Trips.Course;

/// <summary>Carbon dioxide in well-mixed rooms, step by step.</summary>
/// <remarks>Each room by its closed form for constant flows and sources, with its neighbours as they were at the begin of the step: exact for one room.</remarks>
internal sealed class CarbonDioxide
{
    // Exact, by definition.
    private const double PpmPerRatio = 1e6;
    private readonly Vehicle vehicle;
    private readonly Passage[] passages;
    private readonly double[] beforePpm, flowM3PerS, inPpmM3PerS;

    /// <param name="body">Rooms and passages; outside air in all of them at first.</param>
    internal CarbonDioxide(Body body)
    {
        (vehicle, passages) = (body.Vehicle, body.Passages);
        int n = vehicle.Zones.Count;
        (Ppm, beforePpm, flowM3PerS, inPpmM3PerS) = (new double[n], new double[n], new double[n], new double[n]);
        Array.Fill(Ppm, BodyLoads.OutsideCarbonDioxidePpm);
    }

    /// <summary>Each room, ppm.</summary>
    internal double[] Ppm { get; }

    /// <summary>Goes through one step.</summary>
    /// <param name="stepS">Length, s.</param>
    /// <param name="sourceRoom">Room it is given off in, index.</param>
    /// <param name="sourceM3PerS">Given off, m³/s.</param>
    /// <param name="outsideAirM3PerH">Outside air of each room, m³/h.</param>
    /// <param name="linkM3PerS">Air exchanged by each passage, m³/s.</param>
    internal void Step(double stepS, int sourceRoom, double sourceM3PerS, double[] outsideAirM3PerH, ReadOnlySpan<double> linkM3PerS)
    {
        Ppm.CopyTo(beforePpm, 0);
        for (int z = 0; z < Ppm.Length; z++)
        {
            flowM3PerS[z] = outsideAirM3PerH[z] / 3600;
            inPpmM3PerS[z] = flowM3PerS[z] * BodyLoads.OutsideCarbonDioxidePpm;
        }
        inPpmM3PerS[sourceRoom] += sourceM3PerS * PpmPerRatio;
        for (int i = 0; i < linkM3PerS.Length; i++)
        {
            (int from, int to) = (passages[i].From, passages[i].To);
            flowM3PerS[from] += linkM3PerS[i];
            flowM3PerS[to] += linkM3PerS[i];
            inPpmM3PerS[from] += linkM3PerS[i] * beforePpm[to];
            inPpmM3PerS[to] += linkM3PerS[i] * beforePpm[from];
        }
        for (int z = 0; z < Ppm.Length; z++)
        {
            double rate = flowM3PerS[z] / vehicle.Zones[z].VolumeM3 * stepS;
            Ppm[z] = rate < 1e-9 ? beforePpm[z] + inPpmM3PerS[z] * stepS / vehicle.Zones[z].VolumeM3
                : beforePpm[z] * Math.Exp(-rate) + inPpmM3PerS[z] / flowM3PerS[z] * (1 - Math.Exp(-rate));
        }
    }
}
