using Thermal.Climates;

namespace Thermal.Cli;

/// <summary>One place as it was asked for: its months, a generated year, and the sun on a vehicle that stands as told.</summary>
internal sealed record PlaceAnswer
{
    internal required Place Place { get; init; }
    internal required IReadOnlyList<FilledMonth> Months { get; init; }
    /// <summary>Null where no hours can be made.</summary>
    internal required Weather? Year { get; init; }
    /// <summary>Null where the year was not generated here.</summary>
    internal required int? Seed { get; init; }
    internal required double? HeadingDeg { get; init; }
    internal required double HorizonDeg { get; init; }
    internal required IReadOnlyList<double> GroundFractions { get; init; }
    /// <summary>Empty where the heading is not known or there is no sun.</summary>
    internal required IReadOnlyList<SunOnVehicleMonth> Sun { get; init; }
    /// <summary>Empty where the heading is known or there is no sun.</summary>
    internal required IReadOnlyList<SunAnyHeadingMonth> SunAnyHeading { get; init; }

    /// <summary>The answer for a place with a year of hours, its own or generated.</summary>
    /// <param name="place">The place.</param>
    /// <param name="year">Its year; null where there is none.</param>
    /// <param name="stand">How the vehicle stands.</param>
    internal static PlaceAnswer Of(Place place, Weather? year, PlaceStand stand)
    {
        IReadOnlyList<double> ground = stand.GroundFraction is { } even ? GroundCover.EvenFraction(even) : GroundCover.SnowInFrostFraction([.. place.Months.Select(month => month.MeanC)]);
        return new()
        {
            Place = place,
            Months = FilledMonth.Of(place),
            Year = year,
            Seed = stand.Seed,
            HeadingDeg = stand.HeadingDeg,
            HorizonDeg = stand.HorizonDeg,
            GroundFractions = ground,
            Sun = year is { GlobalWPerM2: not null } && stand.HeadingDeg is { } headingDeg ? SunOnVehicle.Months(year, headingDeg, stand.HorizonDeg, ground) : [],
            SunAnyHeading = year is { GlobalWPerM2: not null } && stand.HeadingDeg is null ? SunOnVehicle.AnyHeading(year, stand.HorizonDeg, ground) : [],
        };
    }
}

/// <summary>How the vehicle stands, and which year is generated.</summary>
/// <param name="HeadingDeg">Heading, degrees clockwise from north; null where it is not known.</param>
/// <param name="HorizonDeg">Height of the horizon, degrees.</param>
/// <param name="GroundFraction">Share of sun thrown back by the ground; null for snow in frosty months.</param>
/// <param name="Seed">Seed of the generated year.</param>
internal sealed record PlaceStand(double? HeadingDeg, double HorizonDeg, double? GroundFraction, int Seed);
