using Thermal.Trips.Heat;

namespace Thermal.Trips.Books;

/// <summary>Means of faces and vapour over the hour under way, for what is judged by hours: mould and rust.</summary>
internal sealed class HourMeans
{
    private double seconds;

    /// <param name="body">Faces and rooms.</param>
    internal HourMeans(Body body)
    {
        InnerC = new double[body.Parts.Length];
        (TieC, VapourPa) = (new double[body.Ties.Length], new double[body.Rooms.Length]);
        LayerFacesC = [.. body.Parts.Select(part => new double[part.Layers is { } layers ? layers.Layers.Count + 1 : 0])];
    }

    /// <summary>Inner face of each part, °C.</summary>
    internal double[] InnerC { get; }
    /// <summary>Faces between the layers of each part that has layers, °C.</summary>
    internal double[][] LayerFacesC { get; }
    /// <summary>Coldest inner line of each tie, °C; NaN where not known.</summary>
    internal double[] TieC { get; }
    /// <summary>Vapour pressure of each room, Pa.</summary>
    internal double[] VapourPa { get; }
    /// <summary>Length of the hour, h: less than one where the trip begins or ends within it.</summary>
    internal double Hours => seconds / 3600;

    /// <summary>Takes in a step.</summary>
    internal void Take(StepFacts step)
    {
        HeatState heat = step.Heat.State;
        double s = step.StepS;
        seconds += s;
        Add(InnerC, heat.InnerFaceC, s);
        Add(TieC, heat.TieColdestC, s);
        for (int p = 0; p < LayerFacesC.Length; p++) Add(LayerFacesC[p], heat.LayerFacesC[p], s);
        for (int z = 0; z < VapourPa.Length; z++) VapourPa[z] += s * ComfortBook.VapourPa(step, z);
    }

    /// <summary>Turns the sums into means.</summary>
    internal void Close()
    {
        Scale(InnerC, 1 / seconds);
        Scale(TieC, 1 / seconds);
        Scale(VapourPa, 1 / seconds);
        foreach (double[] faces in LayerFacesC) Scale(faces, 1 / seconds);
    }

    /// <summary>Begins the next hour.</summary>
    internal void Clear()
    {
        seconds = 0;
        Array.Clear(InnerC);
        Array.Clear(TieC);
        Array.Clear(VapourPa);
        foreach (double[] faces in LayerFacesC) Array.Clear(faces);
    }

    private static void Add(double[] sums, double[] now, double s)
    {
        for (int i = 0; i < sums.Length; i++) sums[i] += s * now[i];
    }

    private static void Scale(double[] sums, double factor)
    {
        for (int i = 0; i < sums.Length; i++) sums[i] *= factor;
    }
}
