namespace Thermal.Trips.Heat;

/// <summary>Steps a body through time; the caller drives it stage by stage.</summary>
/// <remarks>
/// Two-stage singly diagonal implicit Runge–Kutta scheme with γ = 1 − 1/√2: second order, stable at any step and damping at the fastest
/// (L-stable); the second stage is the end of the step. Within a stage the equations are linear: radiation is linearised at the faces of the
/// stage before, what water gives and takes comes from the caller. Chains are eliminated to their ends, rooms are one small dense system,
/// the heater's power is found from it so that the wanted operative temperature is met or its highest output given. Nothing is allocated.
/// </remarks>
internal sealed class HeatStepper
{
    /// <summary>γ of the scheme.</summary>
    internal static readonly double StageFactor = 1 - 1 / Math.Sqrt(2);

    /// <param name="body">The body.</param>
    /// <param name="startC">Temperature of everything at the start, °C.</param>
    internal HeatStepper(Body body, double startC) => throw new NotImplementedException();

    /// <summary>The state of the stage done last; after the second stage that of the step's end.</summary>
    internal HeatState State => throw new NotImplementedException();
    /// <summary>What has flowed since the start.</summary>
    internal HeatLedger Ledger => throw new NotImplementedException();
    /// <summary>Heat of the heater in the stage done last, W.</summary>
    internal double HeaterW => throw new NotImplementedException();

    /// <summary>Does one stage: 0 reaches StageFactor of the step, 1 its end. Both with one step length.</summary>
    internal void Stage(int stage, double stepS, Drive drive) => throw new NotImplementedException();
}
