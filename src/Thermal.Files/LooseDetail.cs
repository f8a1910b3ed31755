using Thermal.Bridges;
using Thermal.Envelope;
using Thermal.Envelope.Details;
using Thermal.Files.Keys;
using Thermal.Files.Yaml;
using Thermal.Words;
using Thermal.Words.Sentences;
using Thermal.Words.Units;

namespace Thermal.Files;

/// <summary>A rib or bolt in a build-up of its own, with the air on both sides: read from a few lines of text instead of a vehicle file.</summary>
/// <param name="Detail">The detail.</param>
/// <param name="Place">The build-up it stands in.</param>
/// <param name="InsideC">Temperature of the room, °C.</param>
/// <param name="OutsideC">Temperature outside, °C.</param>
/// <param name="RelativeHumidityFraction">Humidity of the room, fraction.</param>
public sealed record LooseDetail(Detail Detail, DetailPlace Place, double InsideC, double OutsideC, double RelativeHumidityFraction)
{
    // Films of ISO 6946 outside: usual wind.
    private const double OutsideFilmM2KPerW = 0.04;

    private static readonly QuantityNode Spacing = Kinds.Millimetres(0.02, 20), Inside = new(Dimensions.Temperature, "°C", -40, 50),
        Outside = Kinds.Temperature, Humidity = new(Dimensions.Fraction, "", 0.01, 1, "%");

    /// <summary>The detail, or every problem in the texts.</summary>
    /// <param name="text">What a person wrote.</param>
    /// <returns>Its place has the films of ISO 6946 by the way it stands, in usual wind.</returns>
    public static Reading<LooseDetail> Read(LooseDetailText text)
    {
        List<Problem> problems = [];
        Detail? detail = text.Rib is { } rib ? Taken<LineDetail>(DetailText.Rib(rib, "--rib"), problems) : Taken<PointDetail>(DetailText.Bolt(text.Bolt ?? "", "--bolt"), problems);
        Stack? stack = Taken(DetailText.Layers(text.Layers, "--layers"), problems);
        double? spacingM = text.Spacing is { } spacing ? Quantity(spacing, Spacing, "--spacing", problems) : null;
        double insideC = Quantity(text.Inside, Inside, "--inside", problems), outsideC = Quantity(text.Outside, Outside, "--outside", problems);
        double humidityFraction = Quantity(text.Humidity, Humidity, "--humidity", problems);
        double? tiltDeg = text.Stands switch { "wall" => 90, "roof" => 0, "floor" => 180, _ => null };
        if (tiltDeg is null)
            problems.Add(new("--stands", 1, 1, "text", $"\"{text.Stands}\" is not a place; write wall, roof or floor"));
        if (detail is not null && stack is not null)
            foreach (DetailProblem problem in DetailFit.Problems(detail, stack, spacingM is { } m && double.IsFinite(m) ? m : null))
                problems.Add(new(detail is PointDetail ? "--bolt" : "--rib", 1, 1, DetailNames.Of(detail), DetailProblems.Of(problem, detail, Figures.Metric)));
        return problems.Count > 0 ? new(null, problems) : new(new(detail!, new()
        {
            Stack = stack!, TiltDeg = tiltDeg!.Value, OutsideFilmM2KPerW = OutsideFilmM2KPerW, SpacingM = spacingM,
        }, insideC, outsideC, humidityFraction), []);
    }

    private static T? Taken<T>(Reading<T> reading, List<Problem> problems) where T : class
    {
        problems.AddRange(reading.Problems);
        return reading.Value;
    }

    private static double Quantity(string text, QuantityNode node, string source, List<Problem> problems)
    {
        var scope = new Scope(source, PlaceLibrary.BuiltIn);
        bool isRead = node.TryRead(new Spot(new WrittenScalar(1, 1, text, true, 0, text.Length), "value", scope), out double value);
        problems.AddRange(scope.Problems);
        return isRead ? value : double.NaN;
    }
}

/// <summary>A loose detail as a person writes it, every value with its unit.</summary>
/// <param name="Rib">Keys of a rib on one line; null where it is a bolt.</param>
/// <param name="Bolt">Keys of a bolt on one line; null where it is a rib.</param>
/// <param name="Layers">Materials with thicknesses, inside to outside, parted by commas.</param>
/// <param name="Spacing">Distance to the neighbour; null for one alone.</param>
/// <param name="Inside">Temperature of the room.</param>
/// <param name="Outside">Temperature outside.</param>
/// <param name="Humidity">Humidity of the room.</param>
/// <param name="Stands">wall, roof or floor.</param>
public sealed record LooseDetailText(string? Rib, string? Bolt, string Layers, string? Spacing, string Inside, string Outside, string Humidity, string Stands);
