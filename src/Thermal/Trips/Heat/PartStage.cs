namespace Thermal.Trips.Heat;

/// <summary>A part in one stage with its cells eliminated: its two faces.</summary>
internal struct PartStage
{
    /// <summary>How far each face moves per watt at itself and at the other one, K/W.</summary>
    internal double InnerKPerW, AcrossKPerW, OuterKPerW;
    /// <summary>Faces with their rooms at 0 °C, °C.</summary>
    internal double InnerC, OuterC;

    /// <summary>Solves the two faces.</summary>
    internal void Set(double innerWPerK, double acrossWPerK, double outerWPerK, double innerW, double outerW)
    {
        double inverse = 1 / (innerWPerK * outerWPerK - acrossWPerK * acrossWPerK);
        (InnerKPerW, AcrossKPerW, OuterKPerW) = (outerWPerK * inverse, acrossWPerK * inverse, innerWPerK * inverse);
        InnerC = InnerKPerW * innerW + AcrossKPerW * outerW;
        OuterC = AcrossKPerW * innerW + OuterKPerW * outerW;
    }
}

/// <summary>A single store of heat (air, furnishings) in one stage.</summary>
internal struct StoreStage
{
    /// <summary>Heat stored, J/K.</summary>
    internal double CapacityJPerK;
    /// <summary>That over the length of the stage, W/K; the temperature the stage starts from, °C.</summary>
    internal double HeldWPerK, FromC;
    /// <summary>How far it moves per watt, K/W, and where it goes with the room at 0 °C, °C.</summary>
    internal double KelvinPerW, FreeC;
    private double startC, toAirWPerK, toRadiantWPerK;

    /// <summary>Sets from where the stage starts.</summary>
    internal void Begin(int stage, double nowC, double stageS, double drawnOut)
    {
        if (stage == 0) startC = nowC;
        HeldWPerK = CapacityJPerK / stageS;
        FromC = startC + drawnOut * (nowC - startC) * stage;
    }

    /// <summary>Gives it a face in the room.</summary>
    internal void Face(double airWPerK, double radiantWPerK, double takenUpW)
    {
        (toAirWPerK, toRadiantWPerK) = (airWPerK, radiantWPerK);
        KelvinPerW = 1 / (HeldWPerK + airWPerK + radiantWPerK);
        FreeC = KelvinPerW * (HeldWPerK * FromC + takenUpW);
    }

    /// <summary>Its temperature once the room is known, °C.</summary>
    internal readonly double FaceC(double airC, double radiantC) => FreeC + KelvinPerW * (toAirWPerK * airC + toRadiantWPerK * radiantC);
}
