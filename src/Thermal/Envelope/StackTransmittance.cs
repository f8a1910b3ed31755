namespace Thermal.Envelope;

/// <summary>Transmittance of a build-up with its working.</summary>
public sealed record StackTransmittance
{
    /// <summary>Inside film R_si, m²·K/W.</summary>
    public required double InsideFilmM2KPerW { get; init; }
    /// <summary>Outside film R_se, m²·K/W.</summary>
    public required double OutsideFilmM2KPerW { get; init; }
    /// <summary>Resistance of each layer as counted, between battens, inside to outside, m²·K/W; 0 for what stands outside a well ventilated layer.</summary>
    public required IReadOnlyList<double> LayersM2KPerW { get; init; }
    /// <summary>Upper limit of the combined method, m²·K/W.</summary>
    public required double UpperLimitM2KPerW { get; init; }
    /// <summary>Lower limit, m²·K/W.</summary>
    public required double LowerLimitM2KPerW { get; init; }
    /// <summary>Total resistance R_T, m²·K/W.</summary>
    public required double TotalM2KPerW { get; init; }
    /// <summary>Correction for air gaps ΔU_g, W/(m²·K).</summary>
    public required double GapCorrectionWPerM2K { get; init; }
    /// <summary>Transmittance U = 1/R_T + ΔU, W/(m²·K).</summary>
    public double UWPerM2K => 1 / TotalM2KPerW + GapCorrectionWPerM2K;
    /// <summary>Upper over lower limit; above 1.5 the method is outside its scope.</summary>
    public double LimitRatio => UpperLimitM2KPerW / LowerLimitM2KPerW;
}
