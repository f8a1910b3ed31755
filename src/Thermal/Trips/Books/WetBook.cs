using Thermal.Trips.Damp;
using Thermal.Trips.Heat;
using Thermal.Zones;

namespace Thermal.Trips.Books;

/// <summary>Water on faces, step by step.</summary>
internal sealed class WetBook
{
    /// <summary>A face counts as wet from this on, g/m². Source: OURS, a fine dew that a finger marks.</summary>
    internal const double WetFromGPerM2 = 1;

    private readonly TripCase asked;
    private readonly Body body;
    private readonly double[] mostKg, mostFrostKg, wetS, lowestC;
    private readonly DateTime[] mostAt;

    /// <param name="asked">Vehicle and journey.</param>
    /// <param name="body">Its faces.</param>
    internal WetBook(TripCase asked, Body body)
    {
        (this.asked, this.body) = (asked, body);
        int n = body.Parts.Length;
        (mostKg, mostFrostKg, wetS, lowestC, mostAt) = (new double[n], new double[n], new double[n], new double[n], new DateTime[n]);
        Array.Fill(lowestC, double.PositiveInfinity);
    }

    /// <summary>Takes in a step.</summary>
    internal void Take(StepFacts step)
    {
        DampStepper damp = step.Damp;
        for (int p = 0; p < mostKg.Length; p++)
        {
            double kg = damp.LiquidKg[p] + damp.FrostKg[p];
            if (kg > mostKg[p]) (mostKg[p], mostAt[p]) = (kg, step.Local);
            mostFrostKg[p] = Math.Max(mostFrostKg[p], damp.FrostKg[p]);
            if (1000 * kg > WetFromGPerM2 * body.Parts[p].AreaM2) wetS[p] += step.StepS;
            lowestC[p] = Math.Min(lowestC[p], step.Heat.State.InnerFaceC[p]);
        }
    }

    /// <summary>Water now on glass and frames, of it frost, and on everything else, g.</summary>
    internal static (double GlassG, double FrostG, double LiningsG) Now(StepFacts step)
    {
        double glass = 0, frost = 0, linings = 0;
        for (int p = 0; p < step.Body.Parts.Length; p++)
        {
            double g = 1000 * (step.Damp.LiquidKg[p] + step.Damp.FrostKg[p]);
            if (step.Body.Parts[p].Kind is SurfaceKind.Glass or SurfaceKind.Frame)
            {
                glass += g;
                frost += 1000 * step.Damp.FrostKg[p];
            }
            else linings += g;
        }
        return (glass, frost, linings);
    }

    /// <summary>The places that got wet, most water first.</summary>
    internal IReadOnlyList<WetPlace> Places(StepFacts step)
    {
        List<WetPlace> places = [];
        for (int p = 0; p < mostKg.Length; p++)
        {
            if (!(1000 * mostKg[p] > WetFromGPerM2 * body.Parts[p].AreaM2)) continue;
            Part part = body.Parts[p];
            places.Add(new(part.Name, asked.Case.Vehicle.Surfaces[part.Surface].Name, part.Kind, part.AreaM2, 1000 * mostKg[p], mostAt[p], 1000 * mostFrostKg[p],
                1000 * step.Damp.MeltedKg[p], 1000 * step.Damp.SettledKg[p], 1000 * step.Damp.RunOffKg[p], wetS[p] / 3600, 1000 * (step.Damp.LiquidKg[p] + step.Damp.FrostKg[p]), lowestC[p]));
        }
        return [.. places.OrderByDescending(place => place.MostG)];
    }
}
