using Thermal.Heating;
using Thermal.Trips.Course;

namespace Thermal.Trips.Books;

/// <summary>Fuel, current and charge, step by step; and how tanks and pipes fare.</summary>
internal sealed class EnergyBook(int tanks, int pipes)
{
    private double hotWater, cooking, drawnAh, sunAh, alternatorAh, shoreAh, refusedAh, flatS, shortS, lowest = double.PositiveInfinity;
    private DateTime? flatAt;
    private readonly double[] tankLowC = Filled(tanks), tankIce = new double[tanks], tankPadWh = new double[tanks], tankHoldW = new double[tanks], pipeLowC = Filled(pipes), pipeIce = new double[pipes];
    private readonly DateTime?[] tankFreezes = new DateTime?[tanks], pipeFreezes = new DateTime?[pipes];

    /// <summary>Takes in a step.</summary>
    internal void Take(StepFacts step)
    {
        Board board = step.Board;
        hotWater += board.HotWaterFuelAmount;
        cooking += board.CookingFuelAmount;
        drawnAh += board.DrawnAh;
        if (step.IsShort && board.HighestW > 0 && step.HeaterW >= AtHighestFraction * board.HighestW) shortS += step.StepS;
        if (board.Battery is { } battery)
        {
            sunAh += battery.SunAh;
            alternatorAh += battery.AlternatorAh;
            shoreAh += battery.ShoreAh;
            refusedAh += battery.RefusedAh;
            lowest = Math.Min(lowest, battery.ChargeFraction);
            if (battery.IsFlat)
            {
                flatS += step.StepS;
                flatAt ??= step.Local;
            }
        }
        TakeWater(step, board);
    }

    /// <summary>The heater is at its highest from this share of it on, fraction: rounding of a solve left aside. Source: OURS.</summary>
    private const double AtHighestFraction = 0.999;

    /// <summary>Sums up fuel and charge.</summary>
    internal TripEnergy Close(Board board)
    {
        List<NamedCharge> draws = [];
        for (int i = 0; i < board.DrawsAh.Length; i++)
            if (board.DrawsAh[i] > 0) draws.Add(new(i < board.Loads.Count ? board.Loads[i].Name : Board.OtherDraws[i - board.Loads.Count], board.DrawsAh[i]));
        return new(board.Heater.AllFuelAmount, hotWater, cooking, board.Heater.AllStartsCount, drawnAh, [.. draws.OrderByDescending(draw => draw.Ah)], sunAh, alternatorAh, shoreAh, refusedAh,
            board.Battery is null ? null : lowest, flatAt, flatS / 3600, shortS / 3600);
    }

    /// <summary>The tanks.</summary>
    internal IReadOnlyList<TankTrip> Tanks(IReadOnlyList<Water.Tank> all) =>
        [.. all.Select((tank, i) => new TankTrip(tank.Name, tankLowC[i], tankFreezes[i], tankIce[i], tankPadWh[i], tankHoldW[i]))];

    /// <summary>The pipes.</summary>
    internal IReadOnlyList<PipeTrip> Pipes(IReadOnlyList<Water.Pipe> all) =>
        [.. all.Select((pipe, i) => new PipeTrip(pipe.Name, pipeLowC[i], pipeFreezes[i], pipeIce[i]))];

    private void TakeWater(StepFacts step, Board board)
    {
        for (int i = 0; i < tankLowC.Length; i++)
        {
            Water.TankRun tank = board.Tanks[i];
            tankLowC[i] = Math.Min(tankLowC[i], tank.WaterC);
            tankIce[i] = Math.Max(tankIce[i], tank.IceFraction);
            tankPadWh[i] += tank.PadWh;
            tankHoldW[i] = Math.Max(tankHoldW[i], tank.HoldW);
            if (tank.IceFraction > 0) tankFreezes[i] ??= step.Local;
        }
        for (int i = 0; i < pipeLowC.Length; i++)
        {
            Water.PipeRun pipe = board.Pipes[i];
            pipeLowC[i] = Math.Min(pipeLowC[i], pipe.WaterC);
            pipeIce[i] = Math.Max(pipeIce[i], pipe.IceFraction);
            if (pipe.IceFraction > 0) pipeFreezes[i] ??= step.Local;
        }
    }

    private static double[] Filled(int count)
    {
        double[] all = new double[count];
        Array.Fill(all, double.PositiveInfinity);
        return all;
    }
}
