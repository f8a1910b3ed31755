using System.Globalization;
using Thermal.Trips;

namespace Thermal.Words.Sentences;

/// <summary>How many nights of a trip leave glass wet or frosty: counted from the hours.</summary>
/// <param name="NightsCount">Nights with hours between eight in the evening and eight in the morning.</param>
/// <param name="WetCount">Of them, with water or frost on glass worth wiping.</param>
/// <param name="FrostCount">Of them, with most of that frozen at some hour.</param>
public sealed record TripNights(int NightsCount, int WetCount, int FrostCount)
{
    /// <summary>Water on all glass of the vehicle from which a person reaches for a cloth, g. Source: OURS, half a cup of water over some square metres.</summary>
    public const double WorthWipingG = 50;

    private const int EveningH = 20, MorningH = 8, NoonH = 12;

    /// <summary>Counts them.</summary>
    /// <param name="hours">The hours of the trip.</param>
    public static TripNights Of(TripHours hours)
    {
        SortedDictionary<DateTime, (bool Wet, bool Frost)> nights = [];
        for (int i = 0; i < hours.Count; i++)
        {
            DateTime at = hours.StartLocal.AddHours(i);
            if (at.Hour is >= MorningH and < EveningH)
                continue;
            DateTime night = at.AddHours(-NoonH).Date;
            (bool wet, bool frost) = nights.GetValueOrDefault(night);
            bool isWet = hours.OnGlassG[i] >= WorthWipingG;
            nights[night] = (wet || isWet, frost || isWet && hours.FrostOnGlassG[i] >= hours.OnGlassG[i] / 2);
        }
        return new(nights.Count, nights.Values.Count(night => night.Wet), nights.Values.Count(night => night.Frost));
    }

    /// <summary>So many of the nights, such as "every night" or "on two of six nights".</summary>
    /// <param name="count">Some of the nights, 1 or more.</param>
    public string Share(int count) => count >= NightsCount
        ? NightsCount == 1 ? "in the night" : "every night"
        : $"on {Grammar.Count(count, "night")} out of {NightsCount.ToString(CultureInfo.InvariantCulture)}";
}
