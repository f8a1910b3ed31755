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
        (OutsideC, SkyC, AirPastMPerS, SunOnFlatWPerM2, WantedC) = (Mean(), Mean(), Mean(), Mean(), Mean());
        (HeaterW, DrawnA, ChargedA) = (Mean(), Mean(), Mean());
        (OperativeC, CarbonDioxidePpm, BatteryC) = (State(), State(), State());
        int rooms = body.Vehicle.Zones.Count, panels = body.Vehicle.Surfaces.Count;
        (AirC, HumidityFraction, VapourPa, OutsideAirM3PerH, ColdestC) = (States(rooms), States(rooms), States(rooms), Means(rooms), States(rooms));
        (InnerC, OuterC) = (States(panels), States(panels));
        (WaterC, IceFraction, PadW) = (States(tanks), States(tanks), Means(tanks));
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
    internal StateColumn OperativeC { get; }
    internal StateColumn CarbonDioxidePpm { get; }
    internal double[] HeaterW { get; }
    internal double[] DrawnA { get; }
    internal double[] ChargedA { get; }
    internal StateColumn BatteryC { get; }
    internal StateColumn[] AirC { get; }
    internal StateColumn[] HumidityFraction { get; }
    internal StateColumn[] VapourPa { get; }
    internal double[][] OutsideAirM3PerH { get; }
    internal StateColumn[] ColdestC { get; }
    internal StateColumn[] InnerC { get; }
    internal StateColumn[] OuterC { get; }
    internal StateColumn[] WaterC { get; }
    internal StateColumn[] IceFraction { get; }
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

    private StateColumn State()
    {
        StateColumn column = new(hours);
        means.Add(column.Hours);
        return column;
    }

    private StateColumn[] States(int count) => [.. Enumerable.Range(0, count).Select(_ => State())];

    private double[][] Means(int count) => [.. Enumerable.Range(0, count).Select(_ => Mean())];
}
