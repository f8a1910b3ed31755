namespace Thermal.Charts;

/// <summary>The colours a picture is drawn with, each as #RRGGBB. The same roles serve the page around it.</summary>
/// <remarks>
/// Blue means water and nothing else; controls and lines are ink. Neighbouring steps stay apart in grey print and
/// for the three kinds of colour blindness; no meaning rests on colour alone.
/// </remarks>
public sealed record Palette
{
    /// <summary>What it is called: light, dark or print.</summary>
    public required string Name { get; init; }
    /// <summary>Ground of the page.</summary>
    public required string Paper { get; init; }
    /// <summary>Ground of a picture and of the plates behind its labels.</summary>
    public required string Card { get; init; }
    /// <summary>Text and lines that carry the message.</summary>
    public required string Ink { get; init; }
    /// <summary>Text that explains: axes, units, remarks.</summary>
    public required string Muted { get; init; }
    /// <summary>Hairlines and grid.</summary>
    public required string Line { get; init; }
    /// <summary>Five steps of heat lost, from little to much.</summary>
    public required IReadOnlyList<string> Heat { get; init; }
    /// <summary>Five steps of water, from little to much.</summary>
    public required IReadOnlyList<string> Water { get; init; }
    /// <summary>A change for the better; always beside a sign and a word.</summary>
    public required string Better { get; init; }
    /// <summary>A change for the worse; always beside a sign and a word.</summary>
    public required string Worse { get; init; }
    /// <summary>Ground of wood in a cut.</summary>
    public required string Wood { get; init; }
    /// <summary>Ground of wool and fibre in a cut.</summary>
    public required string Wool { get; init; }
    /// <summary>Ground of foam in a cut.</summary>
    public required string Foam { get; init; }
    /// <summary>Ground of metal in a cut.</summary>
    public required string Metal { get; init; }

    /// <summary>Dark ink on warm paper: screens by day.</summary>
    public static Palette Light { get; } = new()
    {
        Name = "light",
        Paper = "#FBF8F3",
        Card = "#FFFFFF",
        Ink = "#20242C",
        Muted = "#5B6470",
        Line = "#E2DCD1",
        Heat = ["#FAEBDD", "#F2C9AE", "#E39C77", "#B4502F", "#7A2A16"],
        Water = ["#EAF2FA", "#BFD8F0", "#8DB8E0", "#3A6FA8", "#173F73"],
        Better = "#14606E",
        Worse = "#B5502A",
        Wood = "#D8BE94",
        Wool = "#E9E2D2",
        Foam = "#EEF1EF",
        Metal = "#59636E",
    };

    /// <summary>Light ink on dark paper: screens by night.</summary>
    public static Palette Dark { get; } = new()
    {
        Name = "dark",
        Paper = "#16191F",
        Card = "#1E232B",
        Ink = "#ECE8E1",
        Muted = "#A9B1BB",
        Line = "#333A45",
        Heat = ["#2C2523", "#573023", "#8A4A31", "#D9855F", "#F6C3A6"],
        Water = ["#1F2A38", "#274463", "#3A6FA8", "#8DB8E0", "#BFD8F0"],
        Better = "#8AD7E0",
        Worse = "#E8835F",
        Wood = "#5A4A31",
        Wool = "#4A463C",
        Foam = "#3A4142",
        Metal = "#8B96A2",
    };

    /// <summary>Black ink on white paper, for a grey printer as well: the steps of <see cref="Light"/> with stronger text and lines.</summary>
    public static Palette Print { get; } = Light with
    {
        Name = "print",
        Paper = "#FFFFFF",
        Ink = "#000000",
        Muted = "#3C424A",
        Line = "#C4C4C4",
        Better = "#0B4550",
        Worse = "#8A3414",
        Metal = "#4A525B",
    };
}
