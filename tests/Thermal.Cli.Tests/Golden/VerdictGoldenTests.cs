using Thermal.Tests;

namespace Thermal.Cli.Tests.Golden;

/// <summary>What a person reads of each built-in vehicle is unchanged; approved by reading it, not proof that it is right.</summary>
public sealed class VerdictGoldenTests
{
    [Fact]
    public void Library_van() => Approved.Match(Ran.Of("assess", "library-van").Answers);

    [Fact]
    public void Weekend_van() => Approved.Match(Ran.Of("assess", "weekend-van").Answers);

    [Fact]
    public void Box_body_in_US_units() => Approved.Match(Ran.Of("assess", "box-body", "--units", "us").Answers);
}
