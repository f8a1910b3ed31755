using Thermal.Assessments;
using Thermal.Envelope;
using Thermal.Materials;
using Thermal.Trips;

namespace Thermal.Tests.Exact;

/// <summary>What a trip tells of water inside, mould and wet metal, against sums and formulas written anew here.</summary>
public class TripDampBooksTests
{
    private const int Hours = 240;

    /// <summary>An empty van left at 10 °C in damp air: everything on board stands in that air. Its linings are of untreated wood.</summary>
    private static TripResult LeftIn(double humidityFraction)
    {
        Vehicle van = PlausibleVan.Vehicle;
        Case empty = TripSketch.Van with { Power = null, Tanks = [], Vehicle = van with { Surfaces = [.. van.Surfaces.Select(Wooden)] } };
        return TripSketch.Run(new(empty, new()
        {
            Name = "left alone",
            Legs = [TripSketch.Parked(TripSketch.Steady(10, Hours, humidityFraction), Hours)],
            Habits = new() { PeopleCount = 0, AwayC = null },
        }));

        static Surface Wooden(Surface surface) => surface.Stack.Layers[0] is SolidLayer first
            ? surface with { Ribs = [.. surface.Ribs.Select(rib => rib with { ColdestFactor = 0.6 })], Stack = surface.Stack.WithLayer(0, first with { Material = first.Material with { MouldClass = MouldClass.VerySensitive } }) } : surface;
    }

    /// <summary>
    /// Pine, not kiln-dried: t_m = exp(−0.68·ln T − 13.9·ln RH + 66.02) weeks to index 1, straight up to there; what slows it near the highest index is
    /// below e^−11. 1 %: humidity inside settles within minutes of the start.
    /// </summary>
    [Fact]
    public void Wood_left_in_damp_air_grows_mould_by_the_published_time()
    {
        TripResult found = LeftIn(0.95);
        double weeks = Math.Exp(-0.68 * Math.Log(10) - 13.9 * Math.Log(95) + 66.02);
        MouldTrip roof = Assert.Single(found.Mould, mould => mould.Name == "roof");
        Assert.Equal(1, roof.HighestFactor / (Hours / 168.0 / weeks), 0.01);
        Assert.Equal(roof.HighestFactor, roof.AtEndFactor);
        Assert.Equal(0.95, roof.MeanHumidityFraction, 0.002);
    }

    [Fact]
    public void Metal_left_in_damp_air_is_wet_all_the_time()
    {
        TripResult found = LeftIn(0.95);
        Assert.Contains(found.Metal, metal => metal.Name == "roof, ribs");
        Assert.Contains(found.Metal, metal => metal.Name == "roof, painted steel sheet");
        Assert.All(found.Metal, metal => Assert.Equal((Hours, 8760.0), (metal.WetHoursCount, metal.PerYearH)));
    }

    [Fact]
    public void In_dry_air_nothing_grows_and_no_metal_is_wet()
    {
        TripResult found = LeftIn(0.7);
        Assert.Empty(found.Mould);
        Assert.Empty(found.Metal);
        Assert.All(found.BuildUps, buildUp => Assert.Equal(0, buildUp.MostGPerM2));
    }

    /// <summary>Two people for three frosty days. What the last hour drew from the rooms flows in the hour after: 2 %.</summary>
    [Fact]
    public void Water_inside_adds_up_over_faces_and_build_ups()
    {
        TripResult found = TripSketch.Run(TripSketch.In(-10, 72, TripSketch.Habits, van: TripSketch.Van with { Power = null }));
        Assert.Equal(1, found.BuildUps.Sum(buildUp => buildUp.AtEndGPerM2 * buildUp.AreaM2) / found.Water.InBuildUpsG, 0.02);
        Assert.InRange(found.Water.InBuildUpsG, 20, 5000);
        Assert.All(found.BuildUps, buildUp =>
        {
            Assert.Equal(buildUp.AtEndGPerM2, buildUp.AtFacesGPerM2.Sum(), 1e-9);
            Assert.InRange(buildUp.AtEndGPerM2, 0, buildUp.MostGPerM2 + 1e-12);
            Assert.InRange(buildUp.MostGPerM2, 0, buildUp.ByAirGPerM2 + buildUp.ByDiffusionGPerM2 + 1e-9);
            Assert.InRange(buildUp.MostAtLocal, TripSketch.Start, TripSketch.Start.AddHours(72));
        });
        Assert.Equal(found.BuildUps.OrderByDescending(buildUp => buildUp.MostGPerM2), found.BuildUps);
    }
}
