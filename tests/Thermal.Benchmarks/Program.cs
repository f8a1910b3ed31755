using System.Globalization;
using BenchmarkDotNet.Running;
using Thermal.Benchmarks;

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
switch (args)
{
    case ["short"]:
        ShortForm.Print(Console.Out);
        return 0;
    case ["solver"]:
        SolverForm.Print(Console.Out);
        return 0;
    case ["trip"]:
        TripForm.Print(Console.Out);
        return 0;
    case ["full", ..]:
        BenchmarkRunner.Run<FullForm>(args: args[1..]);
        return 0;
    default:
        Console.Error.WriteLine("Write short (a minute, figures beside yardsticks), solver (a minute, sparse solvers beside a general one), trip (a minute, a heating season beside a general integrator) or full (several minutes, with error estimates).");
        return 2;
}
