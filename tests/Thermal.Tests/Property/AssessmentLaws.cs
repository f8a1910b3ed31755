using CsCheck;
using Thermal.Assessments;
using Thermal.Choices;
using Thermal.Envelope;
using Thermal.Materials;
using static Thermal.Tests.Property.AnyVehicle;

namespace Thermal.Tests.Property;

/// <summary>Laws of whole assessments and of trying changes.</summary>
public class AssessmentLaws
{
    private static readonly Gen<Case> AnyCase = Gen.Select(AnyBody, AnyNight, Gen.Int[0, 4], Gen.Int[0, 7], Gen.Double[0, 20]).Select((vehicle, night, sleepers, heater, setPoint) => PlausibleVan.Case with
    {
        Vehicle = vehicle,
        Heater = Heating.HeaterLibrary.All[heater],
        Habits = PlausibleVan.Case.Habits with { SleepersCount = sleepers, SetPointC = setPoint },
        ColdNight = PlausibleVan.Case.ColdNight with { OutsideC = night.OutsideC, WindMPerS = night.WindMPerS, SkyBelowAirK = night.SkyBelowAirK },
        Tanks = [],
    });

    [Fact]
    public void Every_range_holds_its_usual_value_and_every_figure_is_a_number() => AnyCase.Sample(asked =>
    {
        Assessment found = Assess.Of(asked);
        HeatingAnswer heating = found.Heating;
        Between[] ranges =
        [
            heating.NeedW, heating.SteadyW, heating.WarmUpW, heating.DawnHeaterOffC, heating.Cold.HeatW, heating.Cold.FuelAmount, heating.Cold.ChargeAh,
            heating.Mild.HeatW, heating.Mild.FuelAmount, heating.Mild.ChargeAh, found.ColdNight.LossRangeW, found.MildNight.LossRangeW,
        ];
        Assert.All(ranges, range => Assert.True(range.Low <= range.Value && range.Value <= range.High, range.ToString()));
        double[] figures = [heating.Cold.AtLowestOutputC, heating.Mild.AtLowestOutputC, heating.Cold.OutputFraction, heating.Mild.StartsCount, found.ColdNight.CarbonDioxideAtDawnPpm, found.MeanK.MeanKWPerM2K];
        Assert.All(ranges.SelectMany(range => new[] { range.Low, range.Value, range.High }).Concat(figures), figure => Assert.True(double.IsFinite(figure)));
    }, iter: 60);

    [Fact]
    public void The_need_is_the_larger_of_steady_loss_and_warm_up_and_more_time_never_raises_it() => Gen.Select(AnyCase, Gen.Double[0.3, 6], Gen.Double[0, 6]).Sample((asked, hours, more) =>
    {
        HeatingAnswer quick = Assess.Of(asked with { WarmUpH = hours }).Heating, slow = Assess.Of(asked with { WarmUpH = hours + more }).Heating;
        Assert.Equal(Math.Max(quick.SteadyW.Value, quick.WarmUpW.Value), quick.NeedW.Value);
        Assert.True(slow.NeedW.Value <= quick.NeedW.Value * (1 + 1e-12));
    }, iter: 30);

    [Fact]
    public void Dawn_with_the_heater_off_lies_between_outside_and_set_point() => AnyCase.Sample(asked =>
    {
        Between dawn = Assess.Of(asked with { Habits = asked.Habits with { SleepersCount = 0 } }).Heating.DawnHeaterOffC;
        Assert.InRange(dawn.Low, asked.ColdNight.OutsideC - 1e-6, dawn.High);
        Assert.InRange(dawn.High, dawn.Low, Math.Max(asked.Habits.SetPointC, asked.ColdNight.OutsideC) + 2e-3); // a night warmer than the set point is taken 1 mK below it
    }, iter: 30);

    [Fact]
    public void Panels_parts_and_night_tell_the_same_loss() => AnyCase.Sample(asked =>
    {
        Assessment found = Assess.Of(asked);
        double air = found.ColdNight.Losses.Where(part => part.Kind == LossKind.Air).Sum(part => part.LossW);
        double panels = found.Panels.Where(panel => panel.Surface.Outside != OuterSide.OtherZone).Sum(panel => panel.LossW);
        Assert.Equal(found.ColdNight.LossW, air + panels, 1e-6);
        Assert.Equal(found.ColdNight.LossW, found.ColdNight.Losses.Sum(part => part.LossW), 1e-6);
    }, iter: 30);

    [Fact]
    public void Thicker_insulation_lets_less_through_warms_the_lining_and_costs_headroom()
    {
        ThicknessTable table = Thicknesses.Of(PlausibleVan.Case, "roof", 1);
        Assert.InRange(table.Rows.Count, 4, 40);
        Assert.Single(table.Rows, row => row.IsKept);
        foreach ((ThicknessRow thin, ThicknessRow thick) in table.Rows.Zip(table.Rows.Skip(1)))
        {
            Assert.True(thick.ThicknessM > thin.ThicknessM && thick.UWPerM2K < thin.UWPerM2K && thick.LossW < thin.LossW && thick.FuelAmount < thin.FuelAmount);
            Assert.True(thick.UWithRibsWPerM2K > thick.UWPerM2K && thick.MassKg > thin.MassKg && thick.ColdestC >= thin.ColdestC);
            Assert.Equal(thick.ThicknessM - thin.ThicknessM, thin.HeadroomM!.Value - thick.HeadroomM!.Value, 1e-12);
            Assert.Equal((thin.LossW - thick.LossW) / (thick.ThicknessM - thin.ThicknessM) * 0.01, thin.NextTenMmSaveW!.Value, 1e-9);
        }
        Assert.Null(table.Rows[^1].NextTenMmSaveW);
    }

    [Fact]
    public void Equal_cases_give_equal_answers_to_the_bit()
    {
        Assessment one = Assess.Of(PlausibleVan.Case), two = Assess.Of(PlausibleVan.Case);
        Assert.Equal(one.Heating.NeedW, two.Heating.NeedW);
        Assert.Equal(one.ColdNight.Surfaces, two.ColdNight.Surfaces);
        Assert.Equal(one.Findings, two.Findings);
        Assert.Equal(one.BuildUps.Select(damp => damp.Year!.PeakGPerM2), two.BuildUps.Select(damp => damp.Year!.PeakGPerM2));
    }

    /// <summary>Each trial is the whole case again: its saved watts are the difference of two assessments.</summary>
    [Fact]
    public void Advice_says_what_an_assessment_of_the_changed_case_says()
    {
        Assessment kept = Assess.Of(PlausibleVan.Case);
        IReadOnlyList<AdviceItem> items = Advice.Of(kept);
        AdviceItem thicker = items.First(item => item is { Change: Change.MoreInsulation, Where: "roof" }), fan = items.First(item => item.Change == Change.RunFan);
        Assert.Equal(kept.ColdNight.LossW - Assess.Of(Thicknesses.With(PlausibleVan.Case, "roof", 1, 0.035)).ColdNight.LossW, thicker.LossSavedW);
        Assert.True(fan.LossSavedW < 0 && fan.HumidityDropFraction > 0);
        Assert.All(items.Where(item => item.Change is Change.MoreInsulation or Change.CoverOutside), item => Assert.True(item.LossSavedW > 0));
    }
}
