namespace Thermal.Trips.Course;

/// <summary>Heat of the engine while driving: as much as keeps the cab comfortable, up to what the engine gives.</summary>
/// <remarks>
/// The driver turns it up and down a little each step, so that it follows the road without swinging. Source: OURS.
/// </remarks>
internal sealed class EngineHeat
{
    /// <summary>The driver does not want the cab warmer, °C. Source: OURS.</summary>
    internal const double WarmEnoughC = 22;
    /// <summary>How much it is turned for each kelvin that is missing, W/K. Source: OURS: a fraction of what a cab on the road loses per kelvin, so that it settles.</summary>
    internal const double TurnedWPerK = 40;

    private double heatW;

    /// <summary>Heat of the step, W.</summary>
    /// <param name="isDriving">False parked: the engine is off.</param>
    /// <param name="mostW">What the engine gives, W.</param>
    /// <param name="cabC">Air of the cab, °C.</param>
    internal double StepW(bool isDriving, double mostW, double cabC)
    {
        // A cold cab gets all there is at once; only near the wanted warmth is it turned little by little.
        heatW = !isDriving ? 0 : cabC < WarmEnoughC - 5 ? mostW : Math.Clamp(heatW + TurnedWPerK * (WarmEnoughC - cabC), 0, mostW);
        return heatW;
    }
}
