using Thermal.Assessments;
using Thermal.Envelope;
using Thermal.Files;
using Thermal.Words;

namespace Thermal.Charts.Tests;

/// <summary>Assessments of the built-in vehicles become pictures: what an assessment holds is what is drawn.</summary>
public class BuiltInVehicleTests
{
    // As wide as two pictures side by side in a page.
    private const int WidthPx = 530;

    private static readonly Dictionary<string, Assessment> Assessed = [];

    public static TheoryData<string> Vehicles => [.. VehicleLibrary.Names];

    [Theory, MemberData(nameof(Vehicles))]
    public void Every_build_up_can_be_drawn_and_read(string vehicle)
    {
        Assessment assessment = Of(vehicle);
        Assert.NotEmpty(assessment.BuildUps);
        foreach (BuildUpDamp damp in assessment.BuildUps)
        {
            BuildUpCut cut = CutOfAssessment.Of(assessment, damp);
            Assert.Equal(damp.TemperaturesAtFacesC.Count - 1, cut.Layers.Count);
            Assert.Equal(damp.AirReachesFace, cut.LastReachedFace);
            foreach (UnitSet units in Enum.GetValues<UnitSet>())
            {
                AssertReadable(CutThroughBuildUp.Draw(cut, Palette.Light, units, WidthPx));
                AssertReadable(TemperatureAndDewPoint.Draw(cut, Palette.Light, units, WidthPx));
                AssertReadable(VapourPressureOverDiffusion.Draw(cut, Palette.Light, units, WidthPx));
                if (damp.Year is { } year)
                    AssertReadable(WettingAndDrying.Draw(damp.Name, year, Palette.Light, units, WidthPx));
            }
        }
    }

    [Theory, MemberData(nameof(Vehicles))]
    public void Losses_and_heater_can_be_drawn_and_read(string vehicle)
    {
        Assessment assessment = Of(vehicle);
        foreach (UnitSet units in Enum.GetValues<UnitSet>())
        {
            AssertReadable(LossByPart.Draw(assessment.ColdNight, Palette.Light, units, WidthPx));
            AssertReadable(LossByPart.Draw(assessment.MildNight, Palette.Light, units, WidthPx));
            AssertReadable(HeaterOutput.Draw(HeaterNeed.Of(assessment), Palette.Light, units, WidthPx));
        }
    }

    [Theory, MemberData(nameof(Vehicles))]
    public void Roofs_floors_and_sides_stand_as_they_do_in_the_vehicle(string vehicle)
    {
        Assessment assessment = Of(vehicle);
        foreach (BuildUpDamp damp in assessment.BuildUps)
        {
            Surface surface = assessment.Case.Vehicle.Surfaces.First(s => s.Name == damp.Panel);
            Attitude attitude = CutOfAssessment.Of(assessment, damp).Attitude;
            switch (surface.Place)
            {
                case SurfacePlace.Roof: Assert.Equal(Attitude.Roof, attitude); break;
                case SurfacePlace.Floor: Assert.Equal(Attitude.Floor, attitude); break;
                case SurfacePlace.Left: Assert.Equal(Attitude.OutsideLeft, attitude); break;
                case SurfacePlace.Right: Assert.Equal(Attitude.OutsideRight, attitude); break;
                default: break;
            }
        }
    }

    private static Assessment Of(string vehicle)
    {
        lock (Assessed)
        {
            if (!Assessed.TryGetValue(vehicle, out Assessment? assessment))
                Assessed[vehicle] = assessment = Assess.Of(VehicleLibrary.Find(vehicle)!);
            return assessment;
        }
    }

    private static void AssertReadable(Picture picture)
    {
        IReadOnlyList<Drawn.Word> words = Drawn.Words(picture);
        Assert.DoesNotContain(words, word => word.Left < 0 || word.Left + word.Length > picture.Width || word.Baseline > picture.Height - 2);
        Assert.Empty(
            from first in Enumerable.Range(0, words.Count)
            from second in Enumerable.Range(first + 1, words.Count - first - 1)
            where words[first].Meets(words[second])
            select $"{picture.AltText}: {words[first].Text} / {words[second].Text}");
    }
}
