using Thermal.Envelope;
using Thermal.Trips.Heat;
using Thermal.Zones;

namespace Thermal.Tests;

/// <summary>What tests of the moving heat share: a body driven by a steady night, and whole steps.</summary>
internal static class MovingHeat
{
    /// <summary>A drive that holds the vehicle in the steady night a balance was solved for, with the covers of the night.</summary>
    internal static Drive HeldIn(Body body, ZoneState night)
    {
        Drive drive = new(body)
        {
            OutsideC = night.Inputs.OutsideC,
            SkyC = night.Inputs.OutsideC - night.Inputs.SkyBelowAirK,
            AirPastMPerS = night.Inputs.WindMPerS,
            WantedC = night.Inputs.LivingC,
            HeaterHighestW = 1e6,
        };
        for (int z = 0; z < drive.OutsideAirKgPerS.Length; z++) drive.OutsideAirKgPerS[z] = night.OutsideAirM3PerH[z] / 3600 * night.OutsideDensityKgPerM3;
        for (int i = 0; i < drive.LinkAirKgPerS.Length; i++)
        {
            ZoneLink link = body.Vehicle.Links[i];
            drive.LinkAirKgPerS[i] = link.AirM3PerM2H.Value * link.AreaM2 / 3600 * night.OutsideDensityKgPerM3;
            drive.LinkOpen[i] = link.State == LinkState.Open;
        }
        for (int p = 0; p < body.Parts.Length; p++)
            if (body.Parts[p].Opening >= 0)
            {
                Opening opening = body.Vehicle.Surfaces[body.Parts[p].Surface].Openings[body.Parts[p].Opening];
                drive.CoverOn[p] = opening.Coverings.ToList().FindIndex(cover => cover.Name == opening.CoverAtNight);
            }
        return drive;
    }

    /// <summary>A layer of given density and heat.</summary>
    internal static SolidLayer Layer(double thicknessM, double conductivityWPerMK, double densityKgPerM3, double heatJPerKgK) => Sketches.Sheet(thicknessM, conductivityWPerMK) with
    {
        Material = Sketches.Of(conductivityWPerMK) with { DensityKgPerM3 = Sketches.Exactly(densityKgPerM3), SpecificHeatJPerKgK = Sketches.Exactly(heatJPerKgK) },
    };

    /// <summary>One room of nothing but air behind the given panels.</summary>
    internal static Vehicle BareRoom(double volumeM3, params IReadOnlyList<Surface> panels) =>
        Sketches.Body([Sketches.Room("living", ZoneKind.Living, volumeM3)], panels) with { FurnishingsJPerM2K = 0 };

    /// <summary>Its body at sea level.</summary>
    internal static Body Cut(this Vehicle vehicle, FilmRule films = FilmRule.Lumped, double cellS = ChainCut.UsualCellS) => Body.Of(vehicle, films, 101_325, cellS);

    /// <summary>Air that holds a given heat at 101 325 Pa, m³; the gas law written anew here.</summary>
    internal static double AirVolumeM3(double heatJPerK) => heatJPerK / (101_325 / (287.042 * 283.15) * 1006);

    /// <summary>Wind that makes the lumped outside film h = 4 + 4v + 4.59 W/(m²·K), m/s.</summary>
    internal static double WindOfFilm(double filmWPerM2K) => (filmWPerM2K - 4 - 0.9 * 5.1) / 4;

    /// <summary>Whole steps in a drive that moves: the caller sets it for the time of each stage.</summary>
    internal static HeatStepper Run(this HeatStepper stepper, int steps, double stepS, Drive drive, Action<double> set)
    {
        for (int i = 0; i < steps; i++)
        {
            set((i + HeatStepper.StageFactor) * stepS);
            stepper.Stage(0, stepS, drive);
            set((i + 1) * stepS);
            stepper.Stage(1, stepS, drive);
        }
        return stepper;
    }

    /// <summary>Whole steps in one drive.</summary>
    internal static HeatStepper Run(this HeatStepper stepper, int steps, double stepS, Drive drive)
    {
        for (int i = 0; i < steps; i++)
        {
            stepper.Stage(0, stepS, drive);
            stepper.Stage(1, stepS, drive);
        }
        return stepper;
    }
}
