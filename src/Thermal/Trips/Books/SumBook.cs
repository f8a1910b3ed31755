using Thermal.Trips.Heat;

namespace Thermal.Trips.Books;

/// <summary>Heat and water of the whole trip by where they came from; they close against what heat and water were stepped with.</summary>
internal sealed class SumBook
{
    private double peopleJ, engineJ, storesJ, peopleKg, cookingKg, showersKg, dryingKg;

    /// <summary>Takes in a step.</summary>
    internal void Take(StepFacts step)
    {
        double s = step.StepS;
        peopleJ += s * (step.Doing.PeopleW + step.Doing.CookingW + step.LoadsW);
        engineJ += s * step.EngineW;
        storesJ += s * step.StoresW;
        peopleKg += s * step.Doing.PeopleKgPerS;
        cookingKg += s * step.Doing.CookingKgPerS;
        showersKg += s * step.Doing.ShowersKgPerS;
        dryingKg += s * step.Doing.DryingKgPerS;
    }

    /// <summary>The book of heat.</summary>
    internal HeatBook Heat(StepFacts step)
    {
        HeatLedger ledger = step.Heat.Ledger;
        IReadOnlyList<NamedHeat> left = LeftBy(step.Body, ledger);
        double inJ = ledger.HeaterJ + peopleJ + engineJ + storesJ + ledger.SunJ + ledger.LatentJ, outWh = left.Sum(part => part.Wh);
        return new(ledger.HeaterJ / 3600, peopleJ / 3600, engineJ / 3600, ledger.SunJ / 3600, (ledger.LatentJ + storesJ) / 3600, left, ledger.StoredJ / 3600,
            (inJ - ledger.StoredJ) / 3600 - outWh);
    }

    /// <summary>The book of water.</summary>
    internal WaterBook Water(StepFacts step)
    {
        Damp.DampLedger ledger = step.Damp.Ledger;
        double left = ledger.AiredKg + ledger.ThroughSkinKg + ledger.RunOffKg + ledger.OnFacesKg + ledger.InBuildUpsKg + ledger.InTextilesKg + ledger.InAirKg;
        return new(1000 * peopleKg, 1000 * cookingKg, 1000 * showersKg, 1000 * dryingKg, 1000 * ledger.AiredKg, 1000 * ledger.ThroughSkinKg, 1000 * ledger.RunOffKg,
            1000 * ledger.OnFacesKg, 1000 * ledger.InBuildUpsKg, 1000 * ledger.InTextilesKg, 1000 * ledger.InAirKg, 1000 * (peopleKg + cookingKg + showersKg + dryingKg - left));
    }

    private static IReadOnlyList<NamedHeat> LeftBy(Body body, HeatLedger ledger)
    {
        List<NamedHeat> left = [];
        for (int i = 0; i < body.Vehicle.Surfaces.Count; i++)
        {
            Envelope.Surface surface = body.Vehicle.Surfaces[i];
            for (int o = -1; o < surface.Openings.Count; o++)
            {
                double partsJ = 0, tiesJ = 0;
                for (int p = 0; p < body.Parts.Length; p++)
                    if (body.Parts[p].Surface == i && body.Parts[p].Opening == o) partsJ += ledger.PartsOutJ[p];
                for (int t = 0; t < body.Ties.Length; t++)
                    if (body.Ties[t].Surface == i && body.Ties[t].Opening == o) tiesJ += ledger.TiesOutJ[t];
                Add(o < 0 ? surface.Name : $"{surface.Name}: {surface.Openings[o].Name}", partsJ);
                Add(o < 0 ? $"{surface.Name}: ribs and bolts" : $"{surface.Name}: edge of {surface.Openings[o].Name}", tiesJ);
            }
        }
        for (int z = 0; z < ledger.AirOutJ.Length; z++) Add($"air exchange, {body.Vehicle.Zones[z].Name}", ledger.AirOutJ[z]);
        return [.. left.OrderByDescending(part => part.Wh)];

        void Add(string name, double heatJ)
        {
            if (heatJ != 0) left.Add(new(name, heatJ / 3600));
        }
    }
}
