using BenchmarkDotNet.Attributes;
using Thermal.Assessments;
using Thermal.Files;

namespace Thermal.Benchmarks;

/// <summary>The figures to publish, with error estimates; in the process itself, so that no project has to be made and restored for it.</summary>
[InProcess, MemoryDiagnoser]
public class FullForm
{
    private readonly SixLayerNight _night = new();
    private readonly Case _van = VehicleLibrary.Find(VehicleLibrary.UsualName)!;

    /// <summary>The yardstick.</summary>
    [Benchmark(Baseline = true)]
    public double MillionExponentials() => Yardstick.MillionExponentials();

    /// <summary>One night inside six layers between two films.</summary>
    [Benchmark]
    public void SixLayers() => _night.Solve();

    /// <summary>Everything the tool has to say of the library van.</summary>
    [Benchmark]
    public Assessment LibraryVan() => Assess.Of(_van);
}
