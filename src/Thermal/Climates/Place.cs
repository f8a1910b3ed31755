namespace Thermal.Climates;

/// <summary>One place with its twelve months and its winter design temperature. Immutable.</summary>
public sealed record Place
{
    /// <summary>Months in a year; a place has exactly these.</summary>
    public const int MonthCount = 12;

    /// <summary>Lowest ground taken, m above the sea. Limit chosen by us.</summary>
    public const double LowestAltitudeM = -430;

    /// <summary>Highest ground taken, m above the sea: above the highest motor road. Limit chosen by us.</summary>
    public const double HighestAltitudeM = 6000;

    /// <summary>What people call it; never empty.</summary>
    /// <exception cref="ArgumentException">Empty or only blanks.</exception>
    public required string Name { get; init => field = Words(value, nameof(Name)); }

    /// <summary>Country in English; never empty.</summary>
    /// <exception cref="ArgumentException">Empty or only blanks.</exception>
    public required string Country { get; init => field = Words(value, nameof(Country)); }

    /// <summary>Latitude, degrees, north positive, −90 to 90.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    public required double LatitudeDeg { get; init => field = Guard.InRange(value, -90, 90, "degrees", nameof(LatitudeDeg)); }

    /// <summary>Longitude, degrees, east positive, −180 to 180.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    public required double LongitudeDeg { get; init => field = Guard.InRange(value, -180, 180, "degrees", nameof(LongitudeDeg)); }

    /// <summary>Height above the sea, m, −430 to 6000.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    public required double AltitudeM { get; init => field = Guard.InRange(value, LowestAltitudeM, HighestAltitudeM, "m", nameof(AltitudeM)); }

    /// <summary>The months, January first, exactly twelve.</summary>
    /// <exception cref="ArgumentException">Not twelve.</exception>
    public required IReadOnlyList<MonthNormals> Months { get; init => field = Twelve(value); }

    /// <summary>The temperature a heater is sized for, with its kind.</summary>
    public required DesignTemperature Design { get; init; }

    /// <summary>What else is known of its cold, each of another measure than <see cref="Design"/>; often empty.</summary>
    /// <exception cref="ArgumentException">Two of one measure.</exception>
    public IReadOnlyList<DesignTemperature> OtherDesigns { get; init => field = OneEach(value); } = [];

    /// <summary>Every design temperature known: <see cref="Design"/>, then the others in the order of their measures.</summary>
    public IReadOnlyList<DesignTemperature> Designs => [Design, .. OtherDesigns.Where(other => other.Measure != Design.Measure).OrderBy(other => other.Measure)];

    /// <summary>The design temperature of a measure; null where none is known.</summary>
    /// <param name="measure">Which.</param>
    public DesignTemperature? DesignOf(DesignMeasure measure) => Designs.FirstOrDefault(design => design.Measure == measure);

    /// <summary>Who measured or modelled it, station, and where it was published; never empty.</summary>
    /// <exception cref="ArgumentException">Empty or only blanks.</exception>
    public required string Source { get; init => field = Words(value, nameof(Source)); }

    /// <summary>The years the figures are means of; never empty.</summary>
    /// <exception cref="ArgumentException">Empty or only blanks.</exception>
    public required string Period { get; init => field = Words(value, nameof(Period)); }

    /// <summary>Terms of the data, and who states them; never empty.</summary>
    /// <exception cref="ArgumentException">Empty or only blanks.</exception>
    public required string Licence { get; init => field = Words(value, nameof(Licence)); }

    private static string Words(string value, string name) =>
        string.IsNullOrWhiteSpace(value) ? throw new ArgumentException($"{name} must not be empty.", name) : value;

    private static IReadOnlyList<DesignTemperature> OneEach(IReadOnlyList<DesignTemperature> designs) =>
        designs.Select(design => design.Measure).Distinct().Count() == designs.Count
            ? designs
            : throw new ArgumentException($"{nameof(OtherDesigns)} must hold each measure once.", nameof(designs));

    private static IReadOnlyList<MonthNormals> Twelve(IReadOnlyList<MonthNormals> months) =>
        months.Count == MonthCount
            ? months
            : throw new ArgumentException($"{nameof(Months)} must be {MonthCount}, January first, but {months.Count} were given.", nameof(months));
}
