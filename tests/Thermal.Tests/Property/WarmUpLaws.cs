using CsCheck;
using Thermal.Heating;

namespace Thermal.Tests.Property;

/// <summary>Laws of two heat stores and of a heater at part load.</summary>
public class WarmUpLaws
{
    private static readonly Gen<TwoNode> Room = Gen.Select(Gen.Double[1e4, 1e5], Gen.Double[5e4, 2e6], Gen.Double[20, 500], Gen.Double[1, 200], Gen.Double[0, 200])
        .Select((air, mass, between, airOut, massOut) => new TwoNode(air, mass, between, airOut, massOut));

    private static readonly Gen<HeaterClass> Heater = Gen.Int[0, HeaterLibrary.All.Count - 1].Select(i => HeaterLibrary.All[i]);

    [Fact]
    public void More_time_to_warm_up_never_takes_more_power_and_never_less_than_the_steady_loss() => Gen.Select(Room, Gen.Double[5, 45], Gen.Double[0.1, 10], Gen.Double[0, 10])
        .Sample((room, difference, hours, more) =>
        {
            double quick = room.WarmUpW(difference, hours), slow = room.WarmUpW(difference, hours + more);
            return slow <= quick * (1 + 1e-12) && slow >= room.SteadyWPerK * difference * (1 - 1e-9);
        });

    [Fact]
    public void Power_and_time_of_the_warm_up_undo_each_other() => Gen.Select(Room, Gen.Double[5, 45], Gen.Double[0.1, 5]).Sample((room, difference, hours) =>
    {
        double heat = room.WarmUpW(difference, hours) * (1 + 1e-12); // a hair more: after a long time even the steady loss looks enough
        return Math.Abs(room.WarmUpW(difference, room.WarmUpH(difference, heat)!.Value) / heat - 1) < 1e-9; // in power: long times hardly differ in it
    });

    /// <summary>Stored heat = heat in less heat out, over a step short enough for the trapezoid rule (its error falls with the cube of the step).</summary>
    [Fact]
    public void Stored_heat_is_what_came_in_less_what_went_out() => Gen.Select(Room, Gen.Double[0, 5000], Gen.Double[-10, 30], Gen.Double[-10, 30]).Sample((room, heat, air, mass) =>
    {
        const double seconds = 0.01;
        (double nextAir, double nextMass) = room.After(seconds / 3600, heat, air, mass);
        double stored = room.AirJPerK * (nextAir - air) + room.MassJPerK * (nextMass - mass);
        double outW = room.AirToOutsideWPerK * (air + nextAir) / 2 + room.MassToOutsideWPerK * (mass + nextMass) / 2;
        Assert.Equal((heat - outW) * seconds, stored, 1e-6 * seconds * (heat + 200 * 60) + 1e-6); // 1e-6 J: digits lost in a difference of 2e6 J/K times 30 K
    });

    [Fact]
    public void Two_steps_are_one_long_step() => Gen.Select(Room, Gen.Double[0, 5], Gen.Double[0, 5], Gen.Double[0, 3000]).Sample((room, first, second, heat) =>
    {
        (double air, double mass) = room.After(first, heat, 3, -2);
        (double twice, _) = room.After(second, heat, air, mass);
        Assert.Equal(room.After(first + second, heat, 3, -2).AirK, twice, 1e-9 * (1 + heat / room.SteadyWPerK));
    });

    [Fact]
    public void A_heater_s_current_does_not_jump_where_it_begins_to_cycle() => Heater.Sample(heater =>
    {
        if (heater.LowestW == 0) return;
        PartLoad below = PartLoad.Of(heater, heater.LowestW, heater.HighestW, heater.LowestW * (1 - 1e-9), 1e5), above = PartLoad.Of(heater, heater.LowestW, heater.HighestW, heater.LowestW, 1e5);
        Assert.Equal(above.ElectricW, below.ElectricW, 1e-4);
        Assert.Equal(0, above.StartsPerH);
    });

    /// <summary>Q below the lowest output: on for C·2K/(P − Q), off for C·2K/Q; the mean heat of the cycle is Q.</summary>
    [Fact]
    public void A_cycling_heater_gives_the_heat_that_is_wanted() => Gen.Select(Heater, Gen.Double[0.01, 0.99], Gen.Double[1e4, 1e6]).Sample((heater, share, store) =>
    {
        if (heater.LowestW == 0) return;
        double heat = share * heater.LowestW, onS = store * 2 / (heater.LowestW - heat), offS = store * 2 / heat;
        PartLoad load = PartLoad.Of(heater, heater.LowestW, heater.HighestW, heat, store);
        Assert.Equal(3600 / (onS + offS), load.StartsPerH, 1e-9 * load.StartsPerH);
        Assert.Equal(heat, heater.LowestW * onS / (onS + offS), 1e-9 * heat);
        Assert.Equal(heater.ElectricLowestW.Value * onS / (onS + offS) + load.StartsPerH * heater.StartWh.Value, load.ElectricW, 1e-9 * (1 + load.ElectricW));
    });
}
