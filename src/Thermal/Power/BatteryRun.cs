using Thermal.Envelope;
using Thermal.Numerics;

namespace Thermal.Power;

/// <summary>A battery through time: its charge, its own temperature, what it could not serve and what it could not take.</summary>
/// <remarks>
/// Charge is what was put in, in ampere-hours at 20 °C; cold holds part of it back (<see cref="ReachableAh"/>) and gives it back with warmth. What is
/// offered serves the loads first, then the pad, then the cells. Its temperature is one lump, exact for surroundings and currents that stay the same
/// through a step; the heat of charging is left out (a few kelvin at most, on the cautious side). Flat, it is cut off: loads then run only where the
/// offer covers them all, until it holds <see cref="ReconnectFraction"/> again.
/// </remarks>
internal sealed class BatteryRun
{
    /// <summary>Charge at which a flat battery serves loads again, fraction. Source: OURS.</summary>
    internal const double ReconnectFraction = 0.1;

    private readonly Battery battery;
    private readonly double storeJPerK, areaM2;
    private readonly bool isLithium;

    /// <param name="battery">The battery.</param>
    /// <param name="startC">Its temperature at the start, °C.</param>
    /// <param name="startFraction">Its charge at the start, fraction of the usable charge at 20 °C.</param>
    internal BatteryRun(Battery battery, double startC, double startFraction)
    {
        this.battery = battery;
        isLithium = battery.Chemistry == Chemistry.Lithium;
        storeJPerK = battery.UsableAh * BatteryFigures.MassKgPerAh(battery.Chemistry) * BatteryFigures.SpecificHeatJPerKgK;
        areaM2 = BatteryFigures.AreaM2(battery);
        BatteryC = startC;
        StoredAh = battery.UsableAh * Guard.InRange(startFraction, 0, 1, "(fraction)");
        IsFlat = ReachableAh <= 0;
    }

    /// <summary>The battery itself, °C.</summary>
    internal double BatteryC { get; private set; }
    /// <summary>Charge in it, reachable or not, Ah.</summary>
    internal double StoredAh { get; private set; }
    /// <summary>Charge that can be drawn as cold as it is, Ah.</summary>
    internal double ReachableAh => Math.Max(0, UsableNowAh - (battery.UsableAh - StoredAh));
    /// <summary>The same as a share of what could be drawn from it full, as cold as it is, fraction: 1 full, 0 flat.</summary>
    internal double ChargeFraction => ReachableAh > 0 ? ReachableAh / UsableNowAh : 0;
    /// <summary>True from flat until it holds enough again: heaters and fans are then without current.</summary>
    internal bool IsFlat { get; private set; }

    /// <summary>Of the loads in the last step, the share that was served, fraction.</summary>
    internal double ServedFraction { get; private set; }
    /// <summary>Drawn by loads in the last step, from the battery or straight from what was offered, pad left out, Ah.</summary>
    internal double DrawnAh { get; private set; }
    /// <summary>Used of the sun in the last step, Ah; the rest was not wanted.</summary>
    internal double SunAh { get; private set; }
    /// <summary>Used of shore power in the last step, Ah.</summary>
    internal double ShoreAh { get; private set; }
    /// <summary>Used of the alternator in the last step, Ah.</summary>
    internal double AlternatorAh { get; private set; }
    /// <summary>Would have been taken in the last step but for the cold, Ah.</summary>
    internal double RefusedAh { get; private set; }
    /// <summary>Lost in charging in the last step, Ah.</summary>
    internal double LostAh { get; private set; }
    /// <summary>Taken by its pad in the last step, Wh.</summary>
    internal double PadWh { get; private set; }
    /// <summary>Heat given to the air round it in the last step, J; negative where it took heat up.</summary>
    internal double GivenJ { get; private set; }

    private double UsableNowAh => battery.UsableAh * BatteryFigures.CapacityFraction(battery.Chemistry, BatteryC);

    /// <summary>Goes through one step.</summary>
    /// <param name="stepS">Length, s.</param>
    /// <param name="loadW">All loads but its own pad, W.</param>
    /// <param name="offer">What could be charged.</param>
    /// <param name="roundC">Air of its zone, or outside, °C.</param>
    /// <param name="drivingMPerS">Driving speed, m/s; null parked. Only matters where it hangs in the open.</param>
    internal void Step(double stepS, double loadW, ChargeOffer offer, double roundC, double? drivingMPerS)
    {
        double film = battery.Zone is null ? SurfaceResistance.UnderFloorM2KPerW(drivingMPerS) : SurfaceResistance.InsideM2KPerW(FlowDirection.Horizontal);
        double exchangeWPerK = areaM2 / (battery.InsulationM2KPerW + film), hours = stepS / 3600, beforeC = BatteryC;
        double wantedA = loadW / Battery.NominalV, loadA = IsFlat && offer.AllA < wantedA ? 0 : wantedA, surplusA = offer.AllA - loadA;
        RefusedAh = LostAh = PadWh = 0;
        double shortAh = 0, takenAh = 0;
        if (surplusA > 0) takenAh = Charge(stepS, surplusA, exchangeWPerK, roundC);
        else
        {
            BatteryC = Relaxation.After(BatteryC, roundC, exchangeWPerK * stepS / storeJPerK);
            double neededAh = -surplusA * hours, givenAh = Math.Min(neededAh, ReachableAh);
            // Flat is what cold holds back, to the last digit: never a rounding below nothing.
            StoredAh = Math.Min(StoredAh, Math.Max(battery.UsableAh - UsableNowAh, StoredAh - givenAh));
            shortAh = neededAh - givenAh;
        }
        GivenJ = PadWh * 3600 - storeJPerK * (BatteryC - beforeC);
        DrawnAh = loadA * hours - shortAh;
        ServedFraction = wantedA == 0 ? 1 : DrawnAh / (wantedA * hours);
        Use(offer, hours, Math.Min(offer.AllA, loadA) * hours + PadWh / Battery.NominalV + takenAh);
        IsFlat = IsFlat ? ChargeFraction < ReconnectFraction : shortAh > 0 || ReachableAh <= 0;
    }

    private void Use(ChargeOffer offer, double hours, double usedAh)
    {
        SunAh = Math.Min(usedAh, offer.SunA * hours);
        ShoreAh = Math.Min(usedAh - SunAh, offer.ShoreA * hours);
        AlternatorAh = usedAh - SunAh - ShoreAh;
    }

    /// <summary>Warms and charges it, stretch by stretch between 0 °C and the pad's temperature.</summary>
    /// <returns>Charge taken, losses counted, Ah.</returns>
    private double Charge(double stepS, double surplusA, double exchangeWPerK, double roundC)
    {
        double leftS = stepS, takenAh = 0, padMostW = Math.Min(battery.PadW, surplusA * Battery.NominalV);
        while (leftS > 0)
        {
            double freeW = exchangeWPerK * (roundC - BatteryC);
            bool isAtHold = BatteryC == Battery.PadOnC, isHeld = isAtHold && freeW <= 0 && freeW + padMostW >= 0;
            double padW = isHeld ? -freeW : BatteryC < Battery.PadOnC || isAtHold && freeW < 0 ? padMostW : 0, flowW = isHeld ? 0 : freeW + padW;
            bool isWarmEnough = !isLithium || (flowW < 0 ? BatteryC > BatteryFigures.LithiumChargeFromC : BatteryC >= BatteryFigures.LithiumChargeFromC);
            double endC = roundC + padW / exchangeWPerK, boundC = NextBoundC(flowW), timeS = storeJPerK / exchangeWPerK;
            double reachS = flowW == 0 ? double.PositiveInfinity : timeS * Relaxation.ReachesFactor(BatteryC, boundC, endC), spentS = Math.Min(reachS, leftS);
            if (flowW != 0) BatteryC = reachS <= leftS ? boundC : Relaxation.After(BatteryC, endC, leftS / timeS);
            takenAh += Fill(spentS / 3600, surplusA - padW / Battery.NominalV, isWarmEnough);
            PadWh += padW * spentS / 3600;
            leftS -= spentS;
        }
        return takenAh;
    }

    private double NextBoundC(double flowW) => flowW > 0
        ? BatteryC < BatteryFigures.LithiumChargeFromC ? BatteryFigures.LithiumChargeFromC : BatteryC < Battery.PadOnC ? Battery.PadOnC : double.PositiveInfinity
        : BatteryC > Battery.PadOnC ? Battery.PadOnC : BatteryC > BatteryFigures.LithiumChargeFromC ? BatteryFigures.LithiumChargeFromC : double.NegativeInfinity;

    /// <summary>Takes a constant current until what is missing allows less, then ever less of it.</summary>
    /// <returns>Charge taken, losses counted, Ah.</returns>
    private double Fill(double hours, double offeredA, bool isWarmEnough)
    {
        double mostA = Math.Min(offeredA, BatteryFigures.MostChargePerHRatio(battery.Chemistry) * battery.UsableAh), missingAh = battery.UsableAh - StoredAh;
        double keeps = BatteryFigures.ChargeFraction(battery.Chemistry), taperH = BatteryFigures.TaperH(battery.Chemistry);
        if (!(mostA > 0) || !(missingAh > 0)) return 0;
        if (!isWarmEnough)
        {
            RefusedAh += Math.Min(mostA, missingAh / taperH) * hours;
            return 0;
        }
        double fullH = Math.Min(hours, Math.Max(0, (missingAh - mostA * taperH) / (keeps * mostA))), takenAh = mostA * fullH;
        double stillMissingAh = missingAh - keeps * takenAh;
        takenAh += stillMissingAh * (1 - Math.Exp(-keeps * (hours - fullH) / taperH)) / keeps;
        StoredAh = Math.Min(battery.UsableAh, StoredAh + keeps * takenAh);
        LostAh += (1 - keeps) * takenAh;
        return takenAh;
    }
}
