namespace Thermal.Trips.Heat;

/// <summary>How the outer face of a part stands to the outside in a stage. An outside cover has a front without mass, eliminated here.</summary>
internal struct WeatherSide
{
    /// <summary>Outer face to the outside, W/K, and what comes from there with the face at 0 °C, W.</summary>
    internal double FaceWPerK, FaceW;
    private double filmWPerK, filmW, sunW, coverWPerK;

    /// <summary>Sets it.</summary>
    /// <param name="filmWPerK">Front to air, sky and ground, W/K.</param>
    /// <param name="filmW">The same times their temperatures, W.</param>
    /// <param name="sunW">Sun taken up at the front, W.</param>
    /// <param name="coverWPerK">Conductance between front and outer face, W/K; 0 where the face itself is in front.</param>
    internal void Set(double filmWPerK, double filmW, double sunW, double coverWPerK)
    {
        (this.filmWPerK, this.filmW, this.sunW, this.coverWPerK) = (filmWPerK, filmW, sunW, coverWPerK);
        double share = coverWPerK == 0 ? 1 : coverWPerK / (filmWPerK + coverWPerK);
        (FaceWPerK, FaceW) = (filmWPerK * share, (filmW + sunW) * share);
    }

    /// <summary>Temperature of the front, °C.</summary>
    internal readonly double FrontC(double faceC) => coverWPerK == 0 ? faceC : (filmW + sunW + coverWPerK * faceC) / (filmWPerK + coverWPerK);

    /// <summary>Heat that leaves by film and longwave, W: sun is counted where it comes in.</summary>
    internal readonly double OutW(double frontC) => filmWPerK * frontC - filmW;
}
