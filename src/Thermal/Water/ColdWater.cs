using Thermal.Numerics;

namespace Thermal.Water;

/// <summary>Well-mixed water of one temperature that may freeze, followed by its heat content: exact for surroundings that stay the same through a step.</summary>
/// <remarks>
/// m·c·dT/dt = K·(T_s − T) + P while all is water or all is ice; at 0 °C the ice share changes instead. Each stretch between events (reaching the
/// pad's temperature, 0 °C, all ice) is a closed form, so two half steps are one whole step. The pad is an ideal thermostat: full power below its
/// temperature, at it just what holds it. Growing ice's own resistance is left out: freezing is told too fast, never too slow.
/// </remarks>
internal sealed class ColdWater
{
    /// <summary>Specific heat of ice, J/(kg·K). Source: PRACTICE, mean from 0 to −20 °C, from memory.</summary>
    internal const double IceJPerKgK = 2050;

    private readonly double waterJPerK, iceJPerK, freezingJ, holdC;

    /// <param name="waterKg">Water and ice, kg, over 0.</param>
    /// <param name="startC">Temperature at the start, °C; 0 is all water.</param>
    /// <param name="holdC">The pad's temperature, °C, over 0.</param>
    internal ColdWater(double waterKg, double startC, double holdC)
    {
        (waterJPerK, iceJPerK, freezingJ) = (waterKg * TankFreezing.WaterJPerKgK, waterKg * IceJPerKgK, waterKg * TankFreezing.FreezingJPerKg);
        this.holdC = holdC;
        ContentJ = startC >= 0 ? waterJPerK * startC : iceJPerK * startC - freezingJ;
    }

    /// <summary>Heat content above water at 0 °C, J.</summary>
    internal double ContentJ { get; private set; }

    /// <summary>Temperature, °C.</summary>
    internal double TemperatureC => ContentJ > 0 ? ContentJ / waterJPerK : ContentJ < -freezingJ ? (ContentJ + freezingJ) / iceJPerK : 0;

    /// <summary>Share that is ice, fraction.</summary>
    internal double IceFraction => ContentJ >= 0 ? 0 : ContentJ <= -freezingJ ? 1 : -ContentJ / freezingJ;

    /// <summary>Goes through one step.</summary>
    /// <param name="stepS">Length, s.</param>
    /// <param name="exchangeWPerK">Exchange with what is round it K, W/K, over 0.</param>
    /// <param name="roundC">Temperature round it T_s, °C.</param>
    /// <param name="padW">What the pad can give, W; 0 without one.</param>
    /// <returns>What the pad gave, J.</returns>
    internal double Step(double stepS, double exchangeWPerK, double roundC, double padW)
    {
        Guard.InRange(roundC, -90, 90, "°C");
        double padJ = 0, leftS = stepS, holdJ = holdC * waterJPerK;
        while (leftS > 0)
        {
            double freeW = exchangeWPerK * (roundC - TemperatureC);
            bool isAtHold = ContentJ == holdJ;
            if (isAtHold && freeW <= 0 && freeW + padW >= 0) return padJ - freeW * leftS;
            // At the pad's temperature it goes on upwards without the pad, or downwards in spite of it.
            double givenW = ContentJ < holdJ || isAtHold && freeW < 0 ? padW : 0, flowW = freeW + givenW;
            if (flowW == 0) return padJ + givenW * leftS;
            double spentS = Go(leftS, exchangeWPerK, roundC + givenW / exchangeWPerK, flowW, holdJ);
            padJ += givenW * spentS;
            leftS -= spentS;
        }
        return padJ;
    }

    /// <summary>Goes to the next event or the end of the time, whichever is first.</summary>
    /// <returns>Time gone, s.</returns>
    private double Go(double leftS, double exchangeWPerK, double endC, double flowW, double holdJ)
    {
        double boundJ = NextBoundJ(flowW > 0, holdJ);
        bool isWater = flowW > 0 ? ContentJ >= 0 : ContentJ > 0, isIce = flowW > 0 ? ContentJ < -freezingJ : ContentJ <= -freezingJ;
        if (!isWater && !isIce)
        {
            double untilS = (boundJ - ContentJ) / flowW;
            if (untilS <= leftS) ContentJ = boundJ; else ContentJ += flowW * leftS;
            return Math.Min(untilS, leftS);
        }
        (double storeJPerK, double baseJ) = isWater ? (waterJPerK, 0) : (iceJPerK, -freezingJ);
        double timeS = storeJPerK / exchangeWPerK, endJ = baseJ + storeJPerK * endC;
        double reachS = timeS * Relaxation.ReachesFactor(ContentJ, boundJ, endJ);
        ContentJ = reachS <= leftS ? boundJ : Relaxation.After(ContentJ, endJ, leftS / timeS);
        return Math.Min(reachS, leftS);
    }

    private double NextBoundJ(bool isWarming, double holdJ) => isWarming
        ? ContentJ < -freezingJ ? -freezingJ : ContentJ < 0 ? 0 : ContentJ < holdJ ? holdJ : double.PositiveInfinity
        : ContentJ > holdJ ? holdJ : ContentJ > 0 ? 0 : ContentJ > -freezingJ ? -freezingJ : double.NegativeInfinity;
}
