using Thermal.Tests;

namespace Thermal.Cli.Tests.Golden;

/// <summary>What a person reads of a whole trip is unchanged; approved by reading it, not proof that it is right.</summary>
public sealed class TripGoldenTests
{
    [Fact]
    public void A_ski_week() => Approved.Match(Ran.Of("trip", "ski-week").Answers);

    [Fact]
    public void A_summer_heat_in_US_units() => Approved.Match(Ran.Of("trip", "summer-heat", "--units", "us").Answers);
}
