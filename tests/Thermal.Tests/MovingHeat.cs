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
