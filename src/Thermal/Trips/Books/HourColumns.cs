using Thermal.Trips.Heat;

namespace Thermal.Trips.Books;

/// <summary>Room for the columns of a trip's hours, taken once.</summary>
internal sealed class HourColumns
{
    private readonly int hours;
    private readonly List<double[]> means = [];

    /// <param name="hours">Hours, begun ones counted.</param>
    /// <param name="body">Rooms and panels.</param>
    /// <param name="tanks">Number of tanks.</param>
    internal HourColumns(int hours, Body body, int tanks)
    {
        this.hours = hours;
        Leg = new int[hours];
        (Starts, Fuel, ChargeFraction, OnGlassG, FrostOnGlassG, OnLiningsG, InBuildUpsG, CoolestHomeC) =
            (Column(), Column(), Column(), Column(), Column(), Column(), Column(), Column());
        Array.Fill(CoolestHomeC, double.PositiveInfinity);
        (OutsideC, SkyC, AirPastMPerS, SunOnFlatWPerM2, WantedC, OperativeC, CarbonDioxidePpm) = (Mean(), Mean(), Mean(), Mean(), Mean(), Mean(), Mean());
        (HeaterW, DrawnA, ChargedA, BatteryC) = (Mean(), Mean(), Mean(), Mean());
        int rooms = body.Vehicle.Zones.Count, panels = body.Vehicle.Surfaces.Count;
        (AirC, HumidityFraction, VapourPa, OutsideAirM3PerH, ColdestC) = (Means(rooms), Means(rooms), Means(rooms), Means(rooms), Means(rooms));
        (InnerC, OuterC) = (Means(panels), Means(panels));
        (WaterC, IceFraction, PadW) = (Means(tanks), Means(tanks), Means(tanks));
    }

    internal int[] Leg { get; }
    internal double[] Starts { get; }
    internal double[] Fuel { get; }
    internal double[] ChargeFraction { get; }
    internal double[] OnGlassG { get; }
    internal double[] FrostOnGlassG { get; }
    internal double[] OnLiningsG { get; }
    internal double[] InBuildUpsG { get; }
    /// <summary>Coolest operative temperature of the hour with people in, °C; infinite with nobody in.</summary>
    internal double[] CoolestHomeC { get; }
    internal double[] OutsideC { get; }
    internal double[] SkyC { get; }
    internal double[] AirPastMPerS { get; }
    internal double[] SunOnFlatWPerM2 { get; }
    internal double[] WantedC { get; }
    internal double[] OperativeC { get; }
    internal double[] CarbonDioxidePpm { get; }
    internal double[] HeaterW { get; }
    internal double[] DrawnA { get; }
    internal double[] ChargedA { get; }
    internal double[] BatteryC { get; }
    internal double[][] AirC { get; }
    internal double[][] HumidityFraction { get; }
    internal double[][] VapourPa { get; }
    internal double[][] OutsideAirM3PerH { get; }
    internal double[][] ColdestC { get; }
    internal double[][] InnerC { get; }
    internal double[][] OuterC { get; }
    internal double[][] WaterC { get; }
    internal double[][] IceFraction { get; }
    internal double[][] PadW { get; }

    /// <summary>Turns the sums of an hour into means.</summary>
    internal void Close(int hour, double seconds)
    {
        foreach (double[] column in means) column[hour] /= seconds;
    }

    private double[] Column() => new double[hours];

    private double[] Mean()
    {
        double[] column = new double[hours];
        means.Add(column);
        return column;
    }

    private double[][] Means(int count) => [.. Enumerable.Range(0, count).Select(_ => Mean())];
}
