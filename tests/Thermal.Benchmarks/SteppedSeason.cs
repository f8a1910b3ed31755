using Thermal.Bridges;
using Thermal.Envelope;
using Thermal.Files;
using Thermal.Trips.Heat;
using Thermal.Zones;

namespace Thermal.Benchmarks;

/// <summary>The library van's heat, air and walls alone, through a heating season with lumped films: linear, so that a general integrator can be given the same.</summary>
internal sealed class SteppedSeason
{
    private const double AirPastMPerS = 2, PressurePa = 84_500;
    private static readonly double[] OutsideAirKgPerS = [0.01, 0.01, 0.002];

    private readonly SeasonDrive season = new();
    private readonly Body body;
    private readonly Drive drive;
    private readonly int living;

    internal SteppedSeason()
    {
        Vehicle van = SolvedVehicle.Of(VehicleLibrary.Find(VehicleLibrary.UsualName)!.Vehicle, AirPastMPerS, new BridgeCache());
        body = Body.Of(van, FilmRule.Lumped, PressurePa);
        (drive, living) = (new Drive(body) { AirPastMPerS = AirPastMPerS }, ZoneBalance.LivingIndex(van));
        OutsideAirKgPerS.CopyTo(drive.OutsideAirKgPerS, 0);
        HourlyC = new double[season.HourCount + 1];
    }

    /// <summary>Air of the living space at each full hour of the run done last, °C.</summary>
    internal double[] HourlyC { get; }

    /// <summary>Unknowns of the network.</summary>
    internal int UnknownCount => Network.NodeCount;

    private ThermalNetwork Network => new(body, AirPastMPerS, OutsideAirKgPerS);

    internal void Write(string file) => Network.Write(file, season, living);

    /// <summary>Runs it; returns the bytes allocated by all steps together.</summary>
    internal long Run()
    {
        HeatStepper stepper = new(body, SeasonDrive.StartC);
        HourlyC[0] = SeasonDrive.StartC;
        int steps = (int)(season.HourCount * SeasonDrive.HourS / SeasonDrive.StepS), perHour = (int)(SeasonDrive.HourS / SeasonDrive.StepS);
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < steps; i++)
        {
            for (int stage = 0; stage < 2; stage++)
            {
                double timeS = (i + (stage == 0 ? HeatStepper.StageFactor : 1)) * SeasonDrive.StepS;
                drive.OutsideC = drive.SkyC = SeasonDrive.At(season.OutsideC, timeS);
                drive.ConvectiveW[living] = SeasonDrive.At(season.HeatW, timeS);
                stepper.Stage(stage, SeasonDrive.StepS, drive);
            }
            if ((i + 1) % perHour == 0) HourlyC[(i + 1) / perHour] = stepper.State.AirC[living];
        }
        return GC.GetAllocatedBytesForCurrentThread() - before;
    }
}
