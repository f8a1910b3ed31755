using Thermal.Assessments;
using Thermal.Bridges;
using Thermal.Envelope;
using Thermal.Envelope.Details;
using Thermal.Materials;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Files.Tests.Sentences;

/// <summary>A detail with a negative ψ lowers a loss, and the words say whose.</summary>
public sealed class LessLossTests
{
    private static readonly Stack Floor = new([new SolidLayer { Name = "layer", Material = MaterialLibrary.Find("xps")!, ThicknessM = 0.02 }, new SolidLayer { Name = "layer", Material = MaterialLibrary.Find("steel_sheet")!, ThicknessM = 0.001 }]);

    private static BridgeAnswer Alone(Detail detail, Stack? other = null) => DetailAlone.Of("groove", "floor", detail,
        DetailPlace.InWall(Floor, other is null ? 0.1 : null) with { OtherStack = other, OtherTiltDeg = 90, OtherOutsideFilmM2KPerW = 0.04 }, 20, 0.5, -10) with { LossW = -5 };

    [Fact]
    public void Grooves_lower_the_loss_of_their_own_panel() =>
        Assert.StartsWith("On the cold night the floor loses 5 W less than its layers alone would, because of the groove in the floor. ",
            BridgeWords.Answer(Alone(new Corrugation { DepthM = 0.01, GrooveM = 0.04 }), Figures.Metric), StringComparison.Ordinal);

    [Fact]
    public void A_corner_lowers_the_loss_of_both_panels_counted_to_the_skin() =>
        Assert.StartsWith("On the cold night both panels, counted skin to skin, lose 5 W less than they seem to because of the groove in the floor. ",
            BridgeWords.Answer(Alone(new Corner { Other = "wall" }, Floor), Figures.Metric), StringComparison.Ordinal);

    [Fact]
    public void A_metre_that_saves_heat_is_not_said_to_cost_less_than_nothing() =>
        Assert.Contains("Each metre of this groove saves 5.00 W of what the floor loses anyway", BridgeWords.AnswerAlone(Alone(new Corrugation { DepthM = 0.01, GrooveM = 0.04 }), Figures.Metric), StringComparison.Ordinal);
}
