namespace Thermal.Trips.Heat;

/// <summary>How one face of a part stands to its room in a stage. What stands before it (locker, curtain) has a front without mass, eliminated here.</summary>
internal struct FaceSide
{
    /// <summary>Face to air, face to radiant node, and air to radiant node by way of the front, W/K.</summary>
    internal double AirWPerK, RadiantWPerK, AirToRadiantWPerK;
    /// <summary>How much warmer the air at the face is than the mean, per kelvin that this is above outside.</summary>
    internal double StandsAboveFactor;
    private double frontAirWPerK, frontRadiantWPerK, beforeWPerK, frontW;

    /// <summary>Sets it.</summary>
    /// <param name="airWPerK">Convection of the front, W/K.</param>
    /// <param name="radiantWPerK">Radiation of the front, W/K.</param>
    /// <param name="beforeWPerK">Conductance between front and face, W/K; 0 where the face itself is in front.</param>
    /// <param name="takenUpW">Heat taken up at the front, W.</param>
    /// <param name="standsAboveFactor">How much warmer its air is than the mean, per kelvin above outside.</param>
    internal void Set(double airWPerK, double radiantWPerK, double beforeWPerK, double takenUpW, double standsAboveFactor)
    {
        (frontAirWPerK, frontRadiantWPerK, this.beforeWPerK, frontW, StandsAboveFactor) = (airWPerK, radiantWPerK, beforeWPerK, takenUpW, standsAboveFactor);
        if (beforeWPerK == 0)
        {
            (AirWPerK, RadiantWPerK, AirToRadiantWPerK, ToFaceW, ToAirW, ToRadiantW) = (airWPerK, radiantWPerK, 0, takenUpW, 0, 0);
            return;
        }
        double share = 1 / (airWPerK + radiantWPerK + beforeWPerK);
        (AirWPerK, RadiantWPerK, AirToRadiantWPerK) = (airWPerK * beforeWPerK * share, radiantWPerK * beforeWPerK * share, airWPerK * radiantWPerK * share);
        (ToFaceW, ToAirW, ToRadiantW) = (takenUpW * beforeWPerK * share, takenUpW * airWPerK * share, takenUpW * radiantWPerK * share);
    }

    /// <summary>Where the heat taken up at the front goes, W.</summary>
    internal double ToFaceW { get; private set; }
    internal double ToAirW { get; private set; }
    internal double ToRadiantW { get; private set; }

    /// <summary>Temperature of the front, °C.</summary>
    internal readonly double FrontC(double faceC, double airAtFaceC, double radiantC) => beforeWPerK == 0 ? faceC
        : (frontAirWPerK * airAtFaceC + frontRadiantWPerK * radiantC + beforeWPerK * faceC + frontW) / (frontAirWPerK + frontRadiantWPerK + beforeWPerK);
}
