using Thermal.Assessments;

namespace Thermal.Words.Sentences;

/// <summary>The five answers that stand under the verdict.</summary>
public static class Headlines
{
    /// <summary>Headroom under which most people cannot stand, m. Source: OURS.</summary>
    private const double StandingM = 1.85;

    /// <summary>Water that no face holds: the months' account lets it stay, in truth it runs down and finds a drain, g/m². Source: OURS.</summary>
    private const double MoreThanStaysGPerM2 = 1000;

    /// <summary>The answers, worst trouble first; those without trouble keep the order wet, cold, heat, night, headroom.</summary>
    /// <param name="assessment">What was found.</param>
    /// <param name="figures">Metric or US.</param>
    public static IReadOnlyList<Headline> Of(Assessment assessment, Figures figures)
    {
        Headline[] five = [Wettest(assessment, figures), Coldest(assessment, figures), Heat(assessment, figures), OneNight(assessment, figures), Room(assessment, figures)];
        return
        [
            .. five.Where(headline => headline.Trouble == Trouble.Bad),
            .. five.Where(headline => headline.Trouble == Trouble.Watch),
            .. five.Where(headline => headline.Trouble == Trouble.None),
        ];
    }

    private static Headline Wettest(Assessment assessment, Figures figures)
    {
        if (Verdict.Worst(assessment) is not { } worst || worst.Verdict == DampVerdict.Dry)
            return assessment.Case.Place is null
                ? new("Wettest build-up", "None", "no place in the file, so nothing is known of the year", Trouble.None, "dry on the cold night")
                : new("Wettest build-up", "None", "no build-up holds enough water to run down", Trouble.None, "stays dry");
        BuildUpWords words = BuildUpWords.Of(worst, figures);
        return new("Wettest build-up", Grammar.Capital(worst.Name), $"{figures.GramsPerArea(BuildUpWords.WorstGPerM2(worst))} at worst{Span(worst, figures)}, {worst.WettestPlace}",
            worst.Verdict == DampVerdict.WetDries ? Trouble.Watch : Trouble.Bad, words.Verdict);
    }

    private static string Span(BuildUpDamp damp, Figures figures) => damp.PeakRangeGPerM2 switch
    {
        null => "",
        { High: > MoreThanStaysGPerM2 } peak => $" ({figures.GramsPerArea(peak.Low)} with least damp; with most, more than can stay, it runs down)",
        { } peak => $" ({figures.Range(Shown.WaterPerArea, peak.Low / 1000, peak.High / 1000)})",
    };

    private static Headline Coldest(Assessment assessment, Figures figures)
    {
        Night night = assessment.ColdNight;
        Between coldestC = night.ColdestRangeC;
        SurfaceNight? coldest = night.Surfaces
            .Where(surface => surface.InUse && surface.Zone == assessment.Case.Vehicle.Living.Name)
            .MinBy(surface => surface.TemperatureC);
        if (coldest is null)
            return new("Coldest inside", "Not known", "the living space has no inner surfaces", Trouble.None, "nothing to say");
        string toSpare = figures.Difference(Math.Abs(coldest.ToSpareK));
        return new("Coldest inside", figures.Temperature(coldestC.Value), $"{figures.Range(Shown.Temperature, coldestC.Low, coldestC.High)}; {coldest.Name}",
            coldest.ToSpareK < 0 ? Trouble.Watch : Trouble.None,
            coldest.ToSpareK < 0 ? $"{(coldest.IsFrost ? "frosts" : "drips")}: {toSpare} below the dew point" : $"{toSpare} to spare before it drips");
    }

    private static Headline Heat(Assessment assessment, Figures figures)
    {
        HeatingAnswer heating = assessment.Heating;
        string span = figures.Range(Shown.HeaterPower, heating.NeedW.Low, heating.NeedW.High);
        string output = figures.HeaterPower(heating.HighestOutputW);
        (Trouble trouble, string remark) = heating.IsEnough
            ? heating.HighestOutputW >= heating.NeedW.High
                ? (Trouble.None, $"the heater gives {output}: enough")
                : (Trouble.Watch, $"the heater gives {output}: just enough")
            : (Trouble.Bad, $"the heater gives {output}: too small");
        return new("Heat needed", figures.HeaterPower(heating.NeedW.Value),
            $"{span}; {(heating.WarmUpDecides ? $"to warm up in {figures.Hours(assessment.Case.WarmUpH)}" : "to hold the temperature")}", trouble, remark);
    }

    private static Headline OneNight(Assessment assessment, Figures figures)
    {
        NightHeating cold = assessment.Heating.Cold;
        var fuel = assessment.Case.Heater.Fuel;
        double? batteryAh = assessment.Case.BatteryAh;
        string detail = $"{figures.FuelAmount(fuel, cold.FuelAmount)} of {Names.Of(fuel)}, {figures.Ah(cold.ChargeAh)} of charge";
        string title = $"One cold night of {figures.Hours(assessment.Case.Habits.NightH)}";
        string answer = $"{figures.FuelAmount(fuel, cold.FuelAmount.Value)} · {figures.Ah(cold.ChargeAh.Value)}";
        if (batteryAh is not { } battery)
            return new(title, answer, detail, Trouble.None, "no battery stated");
        return battery >= cold.ChargeAh.High ? new(title, answer, detail, Trouble.None, $"the battery has {figures.Ah(battery)}: enough")
            : battery >= cold.ChargeAh.Value ? new(title, answer, detail, Trouble.Watch, $"the battery has {figures.Ah(battery)}: just enough")
            : new(title, answer, detail, Trouble.Bad, $"the battery has {figures.Ah(battery)}: too small");
    }

    private static Headline Room(Assessment assessment, Figures figures)
    {
        Space space = assessment.Space;
        string mass = $"build-ups weigh {figures.Mass(space.BuildUpMassKg)}, {figures.Mass(space.LiningMassKg)} of it added";
        if (space.HeadroomM is not { } headroomM)
            return new("Headroom", "Not known", mass, Trouble.None, "the vehicle file gives no height");
        return headroomM >= StandingM
            ? new("Headroom", figures.Length(headroomM), mass, Trouble.None, "most people can stand")
            : new("Headroom", figures.Length(headroomM), mass, Trouble.Watch, "tall people must stoop");
    }
}
