using Thermal.Assessments;
using Thermal.Bridges;
using Thermal.Envelope;
using Thermal.Files;
using Thermal.Materials;
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
    public void Every_described_rib_bolt_and_edge_can_be_drawn_and_read(string vehicle)
    {
        Assessment assessment = Of(vehicle);
        SectionOnNight[] nights = [.. assessment.Bridges.Select(bridge => SectionOnNight.Of(assessment, bridge)).OfType<SectionOnNight>()];
        Assert.NotEmpty(nights);
        foreach (SectionOnNight night in nights)
        {
            // Both lie within one per cent of the truth, the finer one within a tenth of that.
            Assert.InRange(CouplingWPerK(night.Field) / CouplingWPerK(night.Solved.Loss), 0.989, 1.011);
            foreach (UnitSet units in Enum.GetValues<UnitSet>())
                AssertReadable(SectionField.Draw(night, Palette.Light, units, WidthPx));
        }

        static double CouplingWPerK(SolvedSection solved) => solved.CouplingWPerK(DetailSection.Room, DetailSection.Outside);
    }

    // Sizes as they stand in the vehicle's file.
    [Fact]
    public void The_roof_bows_of_the_library_van_stand_in_its_roof_as_described()
    {
        BuildUpCut cut = Cut("library-van", "roof");
        Assert.Equal("roof bows", cut.Rib!.Name);
        Assert.Equal(0.6, cut.Rib.SpacingM);
        Assert.Equal(0.04 + 2 * 0.02, cut.Rib.WidthM, 1e-9);
        Assert.Equal(0.03, cut.Rib.Parts.Max(part => part.OuterM) - cut.Rib.Parts.Min(part => part.InnerM), 1e-9);
        Assert.Equal(cut.Layers.SkipLast(1).Sum(layer => layer.ThicknessM), cut.Rib.Parts.Max(part => part.OuterM), 1e-9);
        Assert.Equal(5, cut.Rib.Parts.Count(part => part.Group == MaterialGroup.Metal));
    }

    [Fact]
    public void What_does_not_repeat_along_a_panel_is_named_and_not_drawn()
    {
        Assert.Equal("left sill", Cut("library-van", "left side").RibsNotDrawn);
        Assert.Equal("", Cut("library-van", "right side, entrance door").RibsNotDrawn);
        BuildUpCut rear = Cut("box-body", "rear wall");
        Assert.Null(rear.Rib);
        Assert.Equal("timber along the edges", rear.RibsNotDrawn);
    }

    private static BuildUpCut Cut(string vehicle, string buildUp) => CutOfAssessment.Of(Of(vehicle), Of(vehicle).BuildUps.First(damp => damp.Name == buildUp));

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
