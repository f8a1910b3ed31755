using Thermal.Moisture;

namespace Thermal.Benchmarks;

/// <summary>A cold night inside a wall of six layers between two films, with the memory it needs.</summary>
internal sealed class SixLayerNight
{
    private readonly double[] _resistancesM2KPerW = [0.13, 0.04, 0.001, 0.5, 0.16, 0.8, 0.00002, 0.04];
    private readonly double[] _diffusionThicknessesM = [0, 0.9, 10, 0.06, 0.01, 0.05, 1500, 0];
    private readonly double[] _temperaturesC = new double[9], _saturationsPa = new double[9], _vapourPa = new double[9], _ratesKgPerM2S = new double[9];

    /// <summary>Solves the night: room at 20 °C and 50 %, outside at -15 °C.</summary>
    internal void Solve() => GlaserNight.Solve(_resistancesM2KPerW, _diffusionThicknessesM, 20, -15, 1168, 140, 2e-10,
        _temperaturesC, _saturationsPa, _vapourPa, _ratesKgPerM2S);
}
