using Thermal.Climates;

namespace Thermal.Files.Weathers;

/// <summary>The weather that filled steps and the top of a file make.</summary>
internal static class WeatherOfSteps
{
    // Even the windiest summit stays below this over weeks; kilometres an hour do not. Source: OURS.
    private const double MostMeanWindMPerS = 20;

    /// <summary>The weather; null, with the problems named, where a whole column cannot be what it says.</summary>
    internal static Weather? Of(FilledSteps filled, WeatherSite site, WeatherRows rows, List<WeatherRemark> remarks, ProblemList problems)
    {
        if (site.AirIsAtEnd)
            foreach (Quantity quantity in new[] { Quantity.Air, Quantity.HumidityPercent, Quantity.Wind, Quantity.Pressure }) filled.MoveHalfStepBack(quantity);
        double meanWind = filled[Quantity.Wind]!.Average();
        if (meanWind > MostMeanWindMPerS) problems.Add(rows.HeadingLine, 1, rows.NameOf(Quantity.Wind), $"is {meanWind:0.0} on average; give metres a second: one kilometre an hour is 0.278 m/s.");
        if (VapourOfSteps.Pa(filled, rows, remarks, problems) is not { } vapour) return null;
        Weather frame = Frame(filled, site, vapour);
        remarks.AddRange(filled.Remarks(frame.StartUtc.AddHours(frame.UtcOffsetH)));
        SunOfSteps? sun = SunOfSteps.Of(filled, frame, remarks);
        string column = rows.NameOf(filled[Quantity.Global] is null ? Quantity.BeamNormal : Quantity.Global);
        double[] above = SunCheck.AboveAirWPerM2(frame, sun?.GlobalWPerM2, rows.HeadingLine, column, problems);
        if (!problems.IsEmpty) return null;
        double[]? sky = SkyOfSteps.C(filled, frame, sun?.GlobalWPerM2, above, remarks);
        bool isComputed = remarks.Exists(remark => remark.Kind == WeatherRemarkKind.SkyComputed);
        return frame with
        {
            GlobalWPerM2 = sun?.GlobalWPerM2,
            BeamNormalWPerM2 = sun?.BeamNormalWPerM2,
            DiffuseWPerM2 = sun?.DiffuseWPerM2,
            SkyC = sky,
            Gaps = isComputed && !site.Gaps.Contains(WeatherGap.SkyComputed) ? [.. site.Gaps, WeatherGap.SkyComputed] : site.Gaps,
        };
    }

    private static Weather Frame(FilledSteps filled, WeatherSite site, double[] vapour) => new()
    {
        Name = site.Name,
        LatitudeDeg = site.LatitudeDeg,
        LongitudeDeg = site.LongitudeDeg,
        AltitudeM = site.AltitudeM,
        UtcOffsetH = site.UtcOffsetH,
        Kind = site.Kind,
        Source = site.Source,
        StartUtc = DateTime.SpecifyKind(filled.Steps.First.AddHours(-site.ClockAheadH) - site.StampFraction * filled.Steps.Step, DateTimeKind.Utc),
        StepS = filled.Steps.Step.TotalSeconds,
        AirC = filled[Quantity.Air]!,
        VapourPa = vapour,
        WindMPerS = filled[Quantity.Wind]!,
        PressurePa = filled[Quantity.Pressure],
    };
}
