using Thermal.Air;
using Thermal.Envelope;
using Thermal.Envelope.Details;
using Thermal.Moisture;
using Thermal.Trips.Damp;
using Thermal.Trips.Heat;

namespace Thermal.Trips.Books;

/// <summary>Hours of wetness on the inner side of metal skins and on ribs and bolts, by the hour.</summary>
/// <remarks>
/// At a skin the vapour is that of the account at its inner face; at a rib or bolt that of the room at its coldest inner line: it touches the
/// lining there. Ribs of wood, and those whose coldest line is not known, are left out.
/// </remarks>
internal sealed class MetalBook
{
    private readonly Body body;
    private readonly (BuildUpAccount Account, int Face)[] skins;
    private readonly int[] ties;
    private readonly double[] skinWetH, tieWetH;
    private double countedH;

    /// <param name="body">The vehicle's faces.</param>
    /// <param name="accounts">Accounts of its build-ups.</param>
    internal MetalBook(Body body, IReadOnlyList<BuildUpAccount> accounts)
    {
        this.body = body;
        skins = [.. accounts.Where(account => account.OtherRoom < 0 && LayersOf(account).Count > 1 && LayersOf(account)[^1] is SolidLayer { Material.IsMetal: true })
            .Select(account => (account, LayersOf(account).Count - 1))];
        ties = [.. Enumerable.Range(0, body.Ties.Length).Where(i => body.Ties[i] is { Opening: < 0, ColdestFactor: not null } tie && !IsWood(tie))];
        (skinWetH, tieWetH) = (new double[skins.Length], new double[ties.Length]);
    }

    /// <summary>Takes in an hour that was closed.</summary>
    internal void Close(HourMeans means)
    {
        countedH += means.Hours;
        for (int i = 0; i < skins.Length; i++)
            if (IsWet(means.LayerFacesC[skins[i].Account.PartIndex][skins[i].Face], skins[i].Account.VapourAtFacePa(skins[i].Face))) skinWetH[i] += means.Hours;
        for (int i = 0; i < ties.Length; i++)
            if (IsWet(means.TieC[ties[i]], means.VapourPa[body.Ties[ties[i]].Zone])) tieWetH[i] += means.Hours;
    }

    /// <summary>Metal that stood wet at all, most hours first.</summary>
    internal IReadOnlyList<WetMetal> Metal() => [.. skins.Select((skin, i) => Of($"{body.Parts[skin.Account.PartIndex].Name}, {LayersOf(skin.Account)[^1].Name}", body.Parts[skin.Account.PartIndex].Surface, skinWetH[i]))
        .Concat(ties.Select((tie, i) => Of(body.Ties[tie].Name, body.Ties[tie].Surface, tieWetH[i])))
        .Where(metal => metal.WetHoursCount > 0).OrderByDescending(metal => metal.WetHoursCount)];

    private WetMetal Of(string name, int surface, double wetH) => new(name, body.Vehicle.Surfaces[surface].Name, wetH, WetnessHours.PerYearH(wetH, countedH));

    private static bool IsWet(double metalC, double vapourPa) => WetnessHours.IsWet(metalC, Math.Min(1, vapourPa / SaturationPressure.OverWaterUncheckedPa(metalC)));

    private IReadOnlyList<StackLayer> LayersOf(BuildUpAccount account) => body.Parts[account.PartIndex].Layers!.Layers;

    private bool IsWood(Tie tie) => body.Vehicle.Surfaces[tie.Surface].Ribs.Any(rib => rib.Detail is Batten && tie.Name.EndsWith(", " + rib.Name, StringComparison.Ordinal));
}
