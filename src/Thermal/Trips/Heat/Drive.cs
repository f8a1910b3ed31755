namespace Thermal.Trips.Heat;

/// <summary>Everything that acts on the body at one stage of a step. One object is refilled again and again: the caller owns it.</summary>
internal sealed class Drive
{
    internal Drive(Body body)
    {
        int parts = body.Parts.Length, rooms = body.Vehicle.Zones.Count;
        SunUptakeW = new double[parts];
        SunInsideW = new double[rooms];
        LatentW = new double[parts];
        LatentWPerK = new double[parts];
        TieLatentW = new double[body.Ties.Length];
        CoverOn = new int[parts];
        ConvectiveW = new double[rooms];
        RadiantW = new double[rooms];
        OutsideAirKgPerS = new double[rooms];
        LinkAirKgPerS = new double[body.Vehicle.Links.Count];
        LinkOpen = new bool[body.Vehicle.Links.Count];
        Array.Fill(CoverOn, -1);
        SkyViewFraction = [.. body.Vehicle.Surfaces.Select(surface => (1 + Math.Cos(surface.TiltDeg * Math.PI / 180)) / 2)];
    }

    /// <summary>Outside air, °C.</summary>
    internal double OutsideC;
    /// <summary>Radiant temperature of the sky, °C.</summary>
    internal double SkyC;
    /// <summary>Air past the skin: wind share or driving, m/s.</summary>
    internal double AirPastMPerS;
    /// <summary>Share of what each panel of the vehicle sees that is open sky, fraction; the rest is at outside air temperature. A flat horizon at first.</summary>
    internal double[] SkyViewFraction;
    /// <summary>Sun taken up by the outer face of each part (of an outside cover that is on), W.</summary>
    internal double[] SunUptakeW;
    /// <summary>Sun that came through glass and is taken up inside, W per room: goes to the inner faces and furnishings by area.</summary>
    internal double[] SunInsideW;
    /// <summary>Heat of water settling (+) or drying off (−) on the inner face of each part, W.</summary>
    internal double[] LatentW;
    /// <summary>By how much that falls per kelvin the face is warmer than 0 °C, W/K, 0 or more: <see cref="LatentW"/> then is the heat at 0 °C.</summary>
    internal double[] LatentWPerK;
    /// <summary>The same at ties, W: given to the room's air.</summary>
    internal double[] TieLatentW;
    /// <summary>Index of the cover that is on at each part's opening; -1 none.</summary>
    internal int[] CoverOn;
    /// <summary>Heat given to the air of each room, W, without the heater.</summary>
    internal double[] ConvectiveW;
    /// <summary>Heat given to the faces of each room by radiation, W.</summary>
    internal double[] RadiantW;
    /// <summary>Dry air from outside, kg/s per room.</summary>
    internal double[] OutsideAirKgPerS;
    /// <summary>Dry air exchanged by each passage, kg/s.</summary>
    internal double[] LinkAirKgPerS;
    /// <summary>True where a passage stands open (its curtain's conduction is then left out).</summary>
    internal bool[] LinkOpen;
    /// <summary>Wanted operative temperature in the living space, °C; NaN: heater off.</summary>
    internal double WantedC = double.NaN;
    /// <summary>Highest heat the heater can give, W. Between 0 and its lowest output it runs part of the time.</summary>
    internal double HeaterHighestW;
}
