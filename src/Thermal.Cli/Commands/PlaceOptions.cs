using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using Thermal.Climates;
using Thermal.Words.Units;

namespace Thermal.Cli.Commands;

/// <summary>How the vehicle stands at a place, and which generated year is wanted.</summary>
internal sealed class PlaceOptions
{
    private const string Unknown = "unknown", Snow = "snow";
    private const double HighestHorizonDeg = 80;

    private readonly Option<string> heading = Told("--heading", "Where the vehicle's nose points, degrees clockwise from north (180 is south), or unknown: then the upright side with least and with most sun.", "DEGREES|unknown", Unknown);
    private readonly Option<string> horizon = Told("--horizon", "Height of hills, trees or houses all round.", "DEGREES", "0");
    private readonly Option<string> ground = Told("--albedo", "Share of sun the ground throws back, such as 0.2 or 20 %, or snow: 70 % in months with a mean of 0 °C or below, else 20 %.", "SHARE|snow", "0.2");
    private readonly Option<string> seed = Told("--seed", "Which of the many possible generated years, a whole number.", "N", GeneratedWeather.UsualSeed.ToString(CultureInfo.InvariantCulture));

    internal IReadOnlyList<Option<string>> All => [heading, horizon, ground, seed];

    internal void AddTo(Command command)
    {
        foreach (Option<string> option in All)
            command.Add(option);
        Check(heading, word => word == Unknown || Degrees(word) is >= 0 and <= 360, "is degrees clockwise from north, 0 to 360 such as 180, or unknown");
        Check(horizon, word => Degrees(word) is >= 0 and <= HighestHorizonDeg, "is a height in degrees, 0 to 80 such as 10");
        Check(ground, word => word == Snow || Share(word) is >= 0 and <= 1, "is a share from 0 to 1 such as 0.2, from 0 % to 100 %, or snow");
        Check(seed, word => Whole(word) is not null, "is a whole number such as 7");
    }

    /// <summary>Call only where the command line was taken.</summary>
    internal PlaceStand StandOf(ParseResult parsed) => new(
        parsed.GetValue(heading) is { } word && word != Unknown ? Degrees(word) : null,
        Degrees(parsed.GetValue(horizon)!)!.Value,
        parsed.GetValue(ground) is { } share && share != Snow ? Share(share) : null,
        Whole(parsed.GetValue(seed)!)!.Value);

    private static void Check(Option<string> option, Func<string, bool> isGood, string rule) => option.Validators.Add(result =>
    {
        if (result.Tokens is [{ Value: { } word }] && !isGood(word))
            result.AddError($"{option.Name} {rule}, not '{word}'.");
    });

    // A bare number is taken, because no other unit is possible.
    private static double? Degrees(string word) => Read(word, Dimensions.Angle) ?? Read(word + "°", Dimensions.Angle);

    private static double? Share(string word) => Read(word, Dimensions.Fraction);

    private static double? Read(string word, Dimension dimension) => QuantityText.TryRead(word, dimension, out double value, out _) ? value : null;

    private static int? Whole(string word) => int.TryParse(word, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out int number) ? number : null;

    private static Option<string> Told(string name, string description, string help, string usual) => new(name) { Description = description, HelpName = help, DefaultValueFactory = _ => usual };
}
