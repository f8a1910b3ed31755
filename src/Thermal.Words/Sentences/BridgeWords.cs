using Thermal.Assessments;
using Thermal.Bridges;
using Thermal.Envelope.Details;
using Thermal.Materials;

namespace Thermal.Words.Sentences;

/// <summary>What there is to say of one rib, edge or kind of bolt: what it costs, whether it drips, why, how surely.</summary>
public static class BridgeWords
{
    /// <summary>Nearer than this to the line of symmetry counts as in the middle, m. Source: OURS.</summary>
    private const double InTheMiddleM = 0.0005;

    /// <summary>Share of the loss from which ribs, edges and bolts are worth a line, fraction. Source: OURS.</summary>
    private const double WorthAWordFraction = 0.02;

    private const double MetresPerFoot = 0.3048; // exact, by definition

    /// <summary>What a vehicle without any is told.</summary>
    public const string None = "The vehicle file names no ribs, edges or bolts: if the body has any, its loss is larger than said.";

    /// <summary>How to ask for one.</summary>
    public const string HowToAsk = "The command detail with a name from the table tells one in full, and --rib or --bolt with --layers computes one without a vehicle. In a vehicle file they stand under ribs or bolts of a panel, or as edge of an opening.";

    /// <summary>Name and panel, such as "roof bows, roof" or "edge of reading windows, left side".</summary>
    public static string Where(BridgeAnswer bridge) => $"{(IsEdge(bridge) ? "edge of " : "")}{bridge.Name}, {bridge.Panel}";

    private static bool IsEdge(BridgeAnswer bridge) => bridge.Solved?.Place.Opening is not null;

    /// <summary>The answer for a part of a vehicle, in one or two sentences.</summary>
    /// <param name="bridge">The rib, edge or bolt on the cold night.</param>
    /// <param name="figures">Metric or US.</param>
    public static string Answer(BridgeAnswer bridge, Figures figures)
    {
        string what = $"{(IsEdge(bridge) ? "the edge of " : "")}{Grammar.The(bridge.Name)} in {Grammar.The(bridge.Panel)}";
        // Only a corner is shared by two panels whose dimensions both run to the skin.
        return bridge.LossW >= 0
            ? $"On the cold night {figures.Power(bridge.LossW)} leave by {what}. {Coldest(bridge, figures)}"
            : bridge.Solved?.Detail is Corner
            ? $"On the cold night both panels, counted skin to skin, lose {figures.Power(-bridge.LossW)} less than they seem to because of {what}. {Coldest(bridge, figures)}"
            : $"On the cold night {Grammar.The(bridge.Panel)} loses {figures.Power(-bridge.LossW)} less than its layers alone would, because of {what}. {Coldest(bridge, figures)}";
    }

    /// <summary>The answer for one metre or one piece without a vehicle.</summary>
    /// <inheritdoc cref="Answer"/>
    public static string AnswerAlone(BridgeAnswer bridge, Figures figures)
    {
        bool isLine = bridge.LengthM is not null, isFoot = isLine && figures.Set == UnitSet.Us;
        string each = isFoot ? "Each foot of this " : isLine ? "Each metre of this " : "Each ";
        string cost = figures.Write(Shown.FinePower, Math.Abs(bridge.LossW) * (isFoot ? MetresPerFoot : 1));
        string effect = bridge.LossW >= 0 ? $"costs {cost} beyond" : $"saves {cost} of";
        return $"{each}{bridge.Name} {effect} what the {bridge.Panel} loses anyway, at {figures.Temperature(bridge.InsideC)} inside and {figures.Temperature(bridge.OutsideC)} outside. {Coldest(bridge, figures)}";
    }

    /// <summary>All of them together where they matter: what they take of the loss, and the coldest; null where they are few and dry.</summary>
    /// <param name="assessment">The assessment.</param>
    /// <param name="figures">Metric or US.</param>
    public static string? Together(Assessment assessment, Figures figures)
    {
        double lossW = assessment.Bridges.Sum(bridge => bridge.LossW), share = lossW / assessment.ColdNight.LossW;
        // Single glass gets wet before its edge does, and that is told of the covers.
        BridgeAnswer? coldest = assessment.Bridges.Where(bridge => bridge.ToSpareK is not null && bridge.Solved?.Place.Opening?.Glazing is null).MinBy(bridge => bridge.ToSpareK);
        if (assessment.Bridges.Count == 0 || !(share >= WorthAWordFraction) && !(coldest?.ToSpareK < 0))
            return null;
        string all = $"Ribs, edges and bolts take {figures.Power(lossW)} of it, {figures.Percent(share)}.";
        if (coldest is not { ColdestC: { } coldestC, ToSpareK: { } spareK })
            return all;
        string where = $"{Where(coldest)}: {figures.Temperature(coldestC)} at the coldest inner point";
        return spareK >= 0
            ? $"{all} Nearest to wet is {where}, {figures.Difference(spareK)} to spare."
            : $"{all} Furthest below the dew point is {where}, {figures.Difference(-spareK)} too cold to stay dry.";
    }

    /// <summary>Whether it stays dry, in a few words for a table.</summary>
    public static string State(BridgeAnswer bridge) => bridge.ToSpareK switch
    {
        null => "not known",
        >= 0 => "dry",
        _ => bridge.IsFrost ? "frost" : "drips",
    };

    /// <summary>How cold it gets inside, with the degrees to spare.</summary>
    public static string Coldest(BridgeAnswer bridge, Figures figures)
    {
        if (bridge is not { ColdestC: { } coldestC, ToSpareK: { } spareK })
            return "How cold it gets inside is not known: the file gives its loss alone.";
        string surface = $"The coldest inner surface there is at {figures.Temperature(coldestC)}";
        return spareK >= 0
            ? $"{surface} and stays dry, with {figures.Difference(spareK)} to spare before it gets wet."
            : $"{surface}, {figures.Difference(-spareK)} below the dew point of the room's air: {(bridge.IsFrost ? "frost grows on it" : "it drips")}.";
    }

    /// <summary>ψ or χ with its bounds, such as "ψ 0.214 W/(m·K), solved between 0.212 and 0.216"; that it was given where it was.</summary>
    public static string Number(BridgeAnswer bridge, Figures figures) => bridge.Solved switch
    {
        SolvedLine line => $"ψ {Bounds(Shown.LinearTransmittance, line.PsiWPerMK, figures)}",
        SolvedPoint point => $"χ {Bounds(Shown.PointTransmittance, point.ChiWPerK, figures)}",
        _ => $"{Plain(bridge, figures)}, as given in the vehicle file",
    };

    /// <summary>ψ or χ alone, without bounds.</summary>
    public static string Plain(BridgeAnswer bridge, Figures figures) =>
        bridge.LengthM is { } lengthM ? lengthM > 0 ? $"ψ {figures.LinearTransmittance(bridge.LossWPerK / lengthM)}" : "ψ of no length"
        : bridge.Count is { } count && count > 0 ? $"χ {figures.Write(Shown.PointTransmittance, bridge.LossWPerK / count)}" : "χ of none";

    /// <summary>Where the ψ and χ of a panel come from.</summary>
    /// <param name="anyComputed">True where one is computed from its description.</param>
    /// <param name="anyGiven">True where one is given.</param>
    public static string Origin(bool anyComputed, bool anyGiven) => (anyComputed, anyGiven) switch
    {
        (true, false) => "ψ and χ computed, ISO 10211",
        (true, true) => "ψ and χ computed (ISO 10211) where described, else as given in the vehicle file",
        _ => "ψ and χ as given in the vehicle file",
    };

    /// <summary>How long it is or how many there are.</summary>
    public static string Much(BridgeAnswer bridge, Figures figures) =>
        bridge.LengthM is { } lengthM ? figures.Length(lengthM) : string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{bridge.Count ?? 0} pieces");

    /// <summary>Why it loses what it does.</summary>
    public static string Why(BridgeAnswer bridge, Figures figures)
    {
        if (bridge.Solved is not { } solved)
            return "Its figure was found elsewhere; described by its shape it would be computed for the layers as they stand.";
        string beside = figures.Transmittance(solved.PlainUWPerM2K);
        if (solved is SolvedLine { UWithRibsWPerM2K: { } withRibs })
            return $"Between them the build-up lets {beside} through, with them {figures.Transmittance(withRibs)}: {Grown(withRibs / solved.PlainUWPerM2K)}, {Reason(solved)}.";
        return $"The build-up beside it lets {beside} through; the rest is its own, {Reason(solved)}.";
    }

    /// <summary>The temperature factors of its coldest point.</summary>
    public static string Factors(SolvedDetail solved, Figures figures) =>
        $"Temperature factor of the coldest inner point {figures.Write(Shown.Factor, solved.ColdestFactor)} with the loss films, and f_Rsi {figures.Write(Shown.Factor, solved.MouldFactor)} with the films for mould: 0 is as cold as outside, 1 as warm as the room. It lies {Place(solved, figures)}.";

    // In a section without a line of symmetry only the depth tells a reader something.
    private static string Place(SolvedDetail solved, Figures figures)
    {
        string inwards = $"{figures.Thickness(solved.ColdestAt.YM)} inside the outer face";
        return !IsHalf(solved.Detail) ? inwards
            : solved.ColdestAt.XM < InTheMiddleM ? $"in its middle, {inwards}"
            : $"{figures.Thickness(solved.ColdestAt.XM)} from its middle, {inwards}";
    }

    private static bool IsHalf(Detail detail) => detail is Batten or Corrugation or Bolt or Rib { Shape: RibShape.Hat or RibShape.Box or RibShape.Plate };

    private static string Bounds(Shown shown, Bounded found, Figures figures)
    {
        string low = figures.Number(shown, found.Low), high = figures.Number(shown, found.High), value = figures.Write(shown, found.Value);
        return low == high ? $"{value}, with bounds that read the same" : $"{value}, solved between {low} and {high}";
    }

    private static string Grown(double ratio) => ratio >= 1.005
        ? string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{Math.Round((ratio - 1) * 100)} % more")
        : ratio <= 0.995 ? string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{Math.Round((1 - ratio) * 100)} % less")
        : "about as much";

    private static string Reason(SolvedDetail solved) => solved.Detail switch
    {
        Rib { IsBare: true } => "because its metal stands in the room and in the cold at once",
        Rib { Material.IsMetal: true } or Bolt { Material.IsMetal: true } => "because metal carries heat past the insulation",
        Corner => "because a corner has more skin than lining, and its dimensions count both panels to the skin",
        FrameEdge => "because frame and folded skin pass the insulation there",
        DoorEdge { Material.IsMetal: true } => "because the metal of post and leaf carries heat past the insulation",
        Corrugation when solved is SolvedLine { PsiWPerMK.Value: < 0 } => "because what lies in the grooves holds heat back",
        Corrugation => "because the grooves give the cold more skin to work on",
        _ => "because it conducts better than the insulation in whose place it stands",
    };
}
