using Thermal.Envelope.Details;

namespace Thermal.Bridges;

/// <summary>Battens and timbers.</summary>
internal static class BattenSection
{
    internal static DrawnDetail Draw(Batten batten, DetailPlace place, double insideFilmM2KPerW) => new StandingSection
    {
        Name = "batten",
        Parts = [new(batten.Material.Name, new(-batten.WidthM / 2, batten.WidthM / 2, 0, batten.DepthM), batten.Material.ConductivityWPerMK.Value) { IsInset = true }],
        Crown = (-batten.WidthM / 2, batten.WidthM / 2),
        DepthM = batten.DepthM,
        Over = batten.Over,
        IsBare = false,
        IsSymmetric = true,
    }.Draw(place, insideFilmM2KPerW);
}
