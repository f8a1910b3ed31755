namespace Thermal.Cli.Json;

/// <summary>What the keys of each command's JSON mean; a test compares them with what is written.</summary>
internal static class JsonKeys
{
    /// <summary>How keys name their units.</summary>
    internal const string Suffixes =
        """
        A key ends in its unit: _c °C, _k kelvin, _w watts, _w_per_m2k W/(m²·K), _m metres, _m2, _m3, _kg, _g, _pa, _h hours, _ah, _kwh, _ppm;
        _fraction runs from 0 to 1. Numbers are in these units whatever --units says; only sentences follow it. A figure with a span is an
        object of low, value and high: for results, the run with everything low, the usual one, and the run with everything high.
        Layers and faces run from inside to outside; n layers have n + 1 faces, counted from 0 at the room. Months begin with January.
        """;

    private static readonly (string, string)[] Assess =
    [
        ("vehicle", "its name"),
        ("verdict", "the answer in a few sentences"),
        ("headlines", "five answers: title, answer, detail, remark"),
        ("findings", "what a person should know, worst first: kind, where, figure in the unit the sentence says, sentence"),
        ("advice", "changes that were tried, the most helpful first"),
        ("case", "everything put in: rooms, passages, heater, habits, tanks, place with its months"),
        ("panels", "layers with thickness, conductivity and resistance; ribs, openings; limits and total of resistance, U, temperatures at faces"),
        ("bridges", "ribs, edges and bolts, largest loss first: loss and coldest inner point on the cold night; where computed, description, ψ or χ with bounds, factors, errors"),
        ("cold_night", "conditions, rooms, losses (coefficient times difference is loss; they add up to loss_w), inner surfaces"),
        ("mild_night", "the same on the mild damp night"),
        ("heating", "power needed and given, fuel and charge of both nights, warm-up, dawn, cold-chamber grades, hot water"),
        ("build_ups", "damp inside each build-up: verdicts, grams by diffusion and by air, pressures and temperatures at faces, the year"),
        ("covers", "every cover of every opening tried on the cold night: glass, grams there and elsewhere, humidity, heat"),
        ("mould", "inner surfaces by months, worst first"),
        ("air_needed_cold", "fresh air that keeps the wanted humidity on the cold night and what it costs; null where none does"),
        ("air_needed_mild", "the same on the mild night"),
        ("space", "headroom, width, mass of the build-ups"),
        ("mean_k", "mean transmittance of the body and the area it refers to"),
        ("tanks", "time to freeze and power to hold"),
        ("cautions", "what can hurt someone"),
        ("assumptions", "what was taken for granted in this case"),
        ("limits", "what the methods leave out"),
    ];

    private static readonly (string, string)[] Report = [("report", "the page that was written"), ("pictures", "the pictures that were written beside it"), .. Assess];

    private static readonly (string, string)[] Thickness =
    [
        ("vehicle", "its name"),
        ("panel", "the panel"),
        ("layer", "what the builder calls the layer"),
        ("layer_number", "the layer, counted from 1 at the room"),
        ("kept_thickness_m", "its thickness in the vehicle file"),
        ("fuel_unit", "unit of fuel_amount: L, kg or kWh"),
        ("rows", "one for each thickness: U, loss on the cold night, fuel a night, headroom, mass, damp"),
        ("left_out", "thicknesses without a row, because a described rib, bolt or edge does not fit in them: which, what does not fit, and its limit"),
    ];

    // Either the table or one in full: a command line asks for one of them.
    private static readonly (string, string)[] Detail =
    [
        ("vehicle", "its name; null without one"),
        ("bridges", "without a NAME: ribs, edges and bolts as in assess"),
        ("kinds", "without a NAME: what can be described, with an example of each"),
        ("bridge", "with a NAME: the one; without a vehicle per metre or per piece"),
        ("reason", "with a NAME: why it loses what it does"),
        ("strips", "with a NAME: what a strip over it buys, by thickness; null where none can lie there"),
        ("fillings", "with a NAME: hollow, filled or foamed; null where it has no hollow"),
        ("method", "with a NAME: factors, cells, errors, films and temperatures"),
        ("limits", "what the method leaves out"),
    ];

    private static readonly (string, string)[] Materials =
        [("materials", "key, name and every figure with low, value, high, source and place in the source; null where not known")];

    private static readonly (string, string)[] Places =
        [("places", "name, country, position, height, design temperature with its kind, source, licence and twelve months")];

    private static readonly (string, string)[] Place =
    [
        ("verdict", "an ordinary day of the coldest month, and the cold night a heater is sized for"),
        ("place", "as in places"),
        ("filled_months", "spread of day means, vapour pressure, wind and sun of the twelve months, each with whether it is an estimate"),
        ("seed", "which generated year; null with --weather"),
        ("hours_colder", "hours of that year below each limit; empty where no hours can be made"),
        ("lacks", "what the generated year cannot give, or why there is none"),
        ("heading_deg", "where the nose points, clockwise from north; null where it is not known"),
        ("horizon_deg", "height of the horizon all round"),
        ("ground_fraction", "share of sun thrown back by the ground in the twelve months"),
        ("sun", "with a heading: sun on roof and sides by month, mean over day and night"),
        ("sun_any_heading", "without a heading: the roof, and the upright side with least and with most sun, and where it looks"),
        ("weather", "with --weather: the file, its layout, kind, steps, and what was done on reading; else null"),
        ("design_conditions", "with --weather: percentiles and coldest means of its hours; else null"),
        ("pictures", "the pictures that were written"),
    ];

    private static readonly (string, string)[] Trip =
    [
        ("vehicle", "its name"),
        ("verdict", "the answer in a few sentences"),
        ("headlines", "answers: title, answer, detail, remark"),
        ("findings", "what a person should know, worst first: kind, about, figure in the unit the sentence says, when first, sentence"),
        ("changes", "with --changes: what was tried over the whole trip, the most helpful first; figures are what it takes away; else empty"),
        ("trip", "the journey as asked: legs, habits, step, start"),
        ("case", "the vehicle's side as in assess: rooms, passages, heater, figures of its people, tanks"),
        ("days", "the days by the calendar"),
        ("heat", "where heat came from and went, Wh; closure_wh is what is left over"),
        ("water", "where water came from and went, g; closure_g is what is left over"),
        ("energy", "fuel, starts, what drew from the battery and charged it"),
        ("comfort", "hours too cold and too hot, carbon dioxide, humidity, coldest surface"),
        ("wet", "surfaces that got wet or frosty, most water first"),
        ("build_ups", "water inside each build-up"),
        ("mould", "mould index of surfaces and interfaces, highest first"),
        ("metal", "hours of wetness on metal"),
        ("tanks", "coldest, ice, pads"),
        ("pipes", "coldest, ice"),
        ("other_headings", "what other headings change where a leg's is unknown; null where none matters"),
        ("hours", "columns of one length, entry i for hour i: means, or the end of the hour for charge, water and ice; rooms, panels, tanks"),
        ("cautions", "what can hurt someone"),
        ("assumptions", "what was taken for granted on this trip"),
        ("limits", "what the methods leave out"),
        ("csv", "the table of hours that was written; null for none"),
        ("pictures", "the pictures that were written"),
    ];

    private static readonly (string, string)[] Trips = [("trips", "the built-in trips as asked: key, vehicle, legs, habits, step, start")];

    private static readonly (string, string)[] New = [("file", "the file that was written")];

    /// <summary>Keys at the top of a command's JSON with their meaning; empty for a command that writes none of its own.</summary>
    internal static IReadOnlyList<(string Key, string Meaning)> Of(string command) => command switch
    {
        "assess" => Assess,
        "report" => Report,
        "thickness" => Thickness,
        "detail" => Detail,
        "materials" => Materials,
        "places" => Places,
        "place" => Place,
        "trip" => Trip,
        "trips" => Trips,
        "new" => New,
        _ => [],
    };
}
