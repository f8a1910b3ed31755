using Thermal.Air;
using Thermal.Climates;
using Thermal.Envelope;
using Thermal.Materials;
using Thermal.Moisture;
using Thermal.Zones;

namespace Thermal.Assessments;

/// <summary>Makes the damp answers of build-ups: one night by diffusion and by air, twelve months, the verdict.</summary>
internal static class DampAnswers
{
    /// <summary>Water in a build-up that still counts as dry, g/m²: below what runs off an upright face (50 to 250, from memory). Source: OURS.</summary>
    internal const double DryUpToGPerM2 = 50;

    /// <summary>Water of one night from which a build-up without months counts as wet, g/m². Source: OURS.</summary>
    internal const double WetNightGPerM2 = 5;

    /// <summary>s_d from which a layer counts as a tight plane for trapped water, m. Source: OURS.</summary>
    internal const double TightFromM = 10;

    /// <summary>Build-ups that face the outside: panels, and leaves of doors and hatches in them.</summary>
    internal static IEnumerable<(string Name, Surface Surface, Stack Stack)> BuildUps(Vehicle vehicle)
    {
        foreach (Surface surface in vehicle.Surfaces)
        {
            if (surface.Outside == OuterSide.OtherZone) continue;
            if (surface.OpaqueAreaM2 > 1e-6) yield return (surface.Name, surface, surface.Stack);
            foreach (Opening opening in surface.Openings)
                if (opening.Leaf is { } leaf) yield return ($"{surface.Name}, {opening.Name}", surface, leaf);
        }
    }

    internal static BuildUpDamp Of(string name, Surface surface, Stack stack, Case asked, NightRuns cold, Months? months, Months? least, Months? most)
    {
        int zone = IndexOf(asked.Vehicle, surface.Zone), reaches = stack.FaceAirReaches(surface.LiningFit);
        LayerList layers = LayerList.Of(surface, stack, asked.ColdNight.WindMPerS);
        (GlaserResult night, double byDiffusion, double byAir) = Night(surface, layers, zone, reaches, asked, cold.Usual);
        (MonthlyAccountResult Account, MonthConditions[] Months)? usual = Account(surface, layers, zone, reaches, asked, months);
        MonthlyAccountResult? low = AccountOf(least), high = AccountOf(most);
        YearDamp? year = usual is { } run ? Year(layers, asked, run.Account, run.Months) : null;
        int? wettest = year is { PeakGPerM2: > DryUpToGPerM2 } ? usual!.Value.Account.PeakFace : byAir > 0 && byAir >= byDiffusion ? layers.FineOf(reaches) : night.WettestFace;
        BlockClimateResult block = BlockClimate.Of(layers.BareResistances, layers.BareDiffusion, surface.Place == SurfacePlace.Roof);
        return new()
        {
            Name = name,
            Panel = surface.Name,
            Verdict = VerdictOf(usual?.Account, byDiffusion + byAir),
            LowVerdict = VerdictOf(low, NightGPerM2(low, cold.LeastDamp)),
            HighVerdict = VerdictOf(high, NightGPerM2(high, cold.MostDamp)),
            PeakRangeGPerM2 = year is null ? null : Between.Spanning(1000 * low!.PeakKgPerM2, year.PeakGPerM2, 1000 * high!.PeakKgPerM2),
            WettestPlace = wettest is { } face ? layers.Describe(stack, face) : "",
            WettestFace = wettest is { } at ? layers.StackFaceOf(at) : -1,
            NightByDiffusionGPerM2 = byDiffusion,
            NightByAirGPerM2 = byAir,
            AirFace = reaches == 0 ? -1 : reaches,
            TemperaturesAtFacesC = layers.AtStackFaces(night.TemperaturesAtFacesC),
            SaturationAtFacesPa = layers.AtStackFaces(night.SaturationsAtFacesPa),
            VapourAtFacesPa = layers.AtStackFaces(night.VapourPressuresAtFacesPa),
            DiffusionThicknessesM = layers.BareDiffusion,
            RoomDewPointC = DewPoint.OfPressureC(cold.Usual.VapourPa(zone)),
            AirReachesFace = reaches,
            Year = year,
            BlockSettledGPerM2 = block.CondensedKgPerM2 * 1000,
            BlockDryableGPerM2 = (block.EvaporableKgPerM2 ?? 0) * 1000,
            TrappedLayer = Trapped(stack, surface.LiningFit),
        };

        MonthlyAccountResult? AccountOf(Months? run) =>
            ReferenceEquals(run, months) ? usual?.Account : Account(surface, layers, zone, reaches, asked, run)?.Account;

        // Only a case without months is judged by its night.
        double NightGPerM2(MonthlyAccountResult? account, ZoneState state)
        {
            if (account is not null) return 0;
            (_, double diffusion, double air) = Night(surface, layers, zone, reaches, asked, state);
            return diffusion + air;
        }
    }

    /// <summary>The cold night in one run, and what settles by diffusion and by air, g/m².</summary>
    private static (GlaserResult Night, double ByDiffusionGPerM2, double ByAirGPerM2) Night(Surface surface, LayerList layers, int zone, int reaches, Case asked, ZoneState state)
    {
        double sky = Shell.SkyShareRatio(surface, asked.ColdNight.WindMPerS) * asked.ColdNight.SkyBelowAirK, grams = asked.Habits.NightH * 3.6e6;
        double inside = state.TemperaturesC[zone], outside = state.Inputs.OutsideC - sky, vapour = state.VapourPa(zone), pressure = state.Inputs.AirPressurePa;
        GlaserResult night = GlaserNight.Profile(layers.Fine.ResistancesM2KPerW, layers.Fine.DiffusionThicknessesM, inside, outside, vapour, state.Inputs.OutsidePa,
            Diffusion.PermeabilityKgPerMSPa((inside + outside) / 2, pressure));
        double flow = state.Shell.Vehicle.Surfaces.First(one => one.Name == surface.Name).AirBehindLiningM3PerM2H.Value / 3600;
        double byAir = reaches == 0 || flow == 0 ? 0 : AirBehindLining.WettingKgPerM2S(flow, inside, vapour, layers.AtFace(night.TemperaturesAtFacesC, reaches), pressure);
        return (night, night.SettlesKgPerM2S * grams, byAir * grams);
    }

    private static DampVerdict VerdictOf(MonthlyAccountResult? account, double nightGPerM2)
    {
        if (account is null) return nightGPerM2 > WetNightGPerM2 ? DampVerdict.WetNightOnly : DampVerdict.Dry;
        if (1000 * account.GrowthKgPerM2PerYear <= DryUpToGPerM2 && 1000 * account.PeakKgPerM2 <= DryUpToGPerM2) return DampVerdict.Dry;
        return DryInMonth(account, HeldGPerM2(account)) is null ? DampVerdict.StaysWet : DampVerdict.WetDries;
    }

    private static (MonthlyAccountResult Account, MonthConditions[] Months)? Account(Surface surface, LayerList layers, int zone, int reaches, Case asked, Months? months)
    {
        if (months is null) return null;
        MonthConditions[] conditions = new MonthConditions[12];
        double air = reaches == 0 ? 0 : months.AirBehindLiningM3PerM2S[surface.Name];
        for (int m = 0; m < 12; m++)
        {
            ZoneState lived = months.Lived[m];
            double f = asked.Habits.NightsLivedInFraction[m], outside = lived.Inputs.OutsideC, outsidePa = lived.Inputs.OutsidePa;
            double inside = f * lived.TemperaturesC[zone] + (1 - f) * outside, insidePa = f * months.LivedPa[m][zone] + (1 - f) * outsidePa;
            double pressure = lived.Inputs.AirPressurePa, byAir = 0;
            if (air > 0) byAir = f * AirBehindLining.ExchangeKgPerM2S(air, lived.TemperaturesC[zone], months.LivedPa[m][zone], layers.FaceC(reaches, lived.TemperaturesC[zone], outside), pressure);
            if (air > 0 && f < 1) byAir += (1 - f) * AirBehindLining.ExchangeKgPerM2S(air, outside, outsidePa, outside, pressure);
            double[] sources = byAir == 0 ? [] : new double[layers.Fine.ResistancesM2KPerW.Length + 1];
            if (byAir != 0) sources[layers.FineOf(reaches)] = byAir;
            conditions[m] = new(inside, outside, insidePa, outsidePa, DateTime.DaysInMonth(2023, m + 1) * 86_400.0,
                Diffusion.PermeabilityKgPerMSPa((inside + outside) / 2, pressure)) { SourcesAtFacesKgPerM2S = sources };
        }
        return (MonthlyAccount.Run(layers.Fine.ResistancesM2KPerW, layers.Fine.DiffusionThicknessesM, conditions), conditions);
    }

    private static YearDamp Year(LayerList layers, Case asked, MonthlyAccountResult account, MonthConditions[] months)
    {
        double[] held = HeldGPerM2(account), wettest = new double[12];
        List<int> ice = [];
        for (int m = 0; m < 12 && account.PeakFace is { } peak; m++)
        {
            double atPeak = account.Months[m].HeldAtFacesKgPerM2[peak];
            wettest[m] = 1000 * atPeak;
            if (atPeak > MonthlyAccount.NothingKgPerM2 && layers.FineC(peak, months[m].InsideC, months[m].OutsideC) < 0) ice.Add(m + 1);
        }
        return new()
        {
            WettestFaceGPerM2 = wettest,
            HeldGPerM2 = held,
            PeakGPerM2 = 1000 * account.PeakKgPerM2,
            WetFromMonth = Turn(held, -1) is { } before ? (before + 1) % 12 + 1 : held.Max() > DryUpToGPerM2 ? account.StartMonth + 1 : null,
            DryInMonth = DryInMonth(account, held),
            GainPerYearGPerM2 = 1000 * account.GrowthKgPerM2PerYear,
            IceMonths = ice,
            Months = [.. months.Select((month, m) => new MonthInside(month.InsideC, month.OutsideC, month.InsidePa, month.OutsidePa, asked.Habits.NightsLivedInFraction[m]))],
        };
    }

    private static double[] HeldGPerM2(MonthlyAccountResult account)
    {
        double[] held = new double[12];
        for (int m = 0; m < 12; m++) held[m] = 1000 * account.Months[m].HeldKgPerM2;
        return held;
    }

    private static int? DryInMonth(MonthlyAccountResult account, double[] heldGPerM2) =>
        account.StillAccumulating && 1000 * account.GrowthKgPerM2PerYear > DryUpToGPerM2 ? null : Turn(heldGPerM2, 1) + 1;

    /// <summary>The first month with no more than counts as dry, going from the wettest forwards (1) or backwards (-1); null where it is never wet or never dry.</summary>
    private static int? Turn(double[] heldGPerM2, int step)
    {
        int wettest = Array.IndexOf(heldGPerM2, heldGPerM2.Max());
        if (heldGPerM2[wettest] <= DryUpToGPerM2) return null;
        for (int i = 1; i < 12; i++)
            if (heldGPerM2[(wettest + step * i + 12) % 12] <= DryUpToGPerM2) return (wettest + step * i + 12) % 12;
        return null;
    }

    /// <summary>A layer that holds water between two tight ones while air can get in.</summary>
    private static string? Trapped(Stack stack, LiningFit fit)
    {
        if (fit == LiningFit.Bonded) return null;
        for (int i = 1; i < stack.Layers.Count - 1; i++)
            if (stack.Layers[i] is SolidLayer { Material.HoldsWater: true } held && Tight(0, i) && Tight(i + 1, stack.Layers.Count)) return held.Name;
        return null;

        bool Tight(int from, int to)
        {
            for (int i = from; i < to; i++)
                if (stack.Layers[i] is SolidLayer solid && solid.DiffusionThicknessM >= TightFromM) return true;
            return false;
        }
    }

    internal static int IndexOf(Vehicle vehicle, string name)
    {
        for (int i = 0; i < vehicle.Zones.Count; i++)
            if (vehicle.Zones[i].Name == name) return i;
        throw new ArgumentException($"There is no zone called {name}.", nameof(name));
    }
}
