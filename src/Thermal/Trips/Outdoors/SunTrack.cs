using Thermal.Climates;
using Thermal.Power;
using Thermal.Trips.Heat;

namespace Thermal.Trips.Outdoors;

/// <summary>Sun on every face of the vehicle and on its panels during a leg: found once for each step of the weather, then kept.</summary>
/// <remarks>
/// The sun stands where it does in the middle of the weather's step. Sky light by Hay and Davies; the vehicle throws no shadow on itself. Clear glass lets
/// pass 1 − (1 − cos θ)³ of what it does across its face: 0.88 at 60°, 0.59 at 75°; of light from all round by its integral, exactly 0.9.
/// Source: OURS, between one pane and two by Fresnel.
/// </remarks>
internal sealed class SunTrack
{
    /// <summary>What glass lets pass of light from all round, against light straight on, fraction.</summary>
    internal const double DiffuseThroughFraction = 0.9;
    /// <summary>Of the sun behind glass, what an inside cover leaves to the room, fraction; the rest goes out again. Source: OURS, light or metallised face.</summary>
    internal const double PastInsideCoverFraction = 0.3;
    /// <summary>Of the sun on an outside cover, what gets through to the glass, fraction; and what the cover takes up. Source: OURS.</summary>
    internal const double PastOutsideCoverFraction = 0.05, OutsideCoverUptakeFraction = 0.5;

    private readonly Weather weather;
    private readonly Body body;
    private readonly SurfaceAspect[] aspects;
    private readonly int[] aspectOfPart, aspectOfPanel;
    private readonly double[] onAspect, throughAspect, skyView;
    private readonly double groundFraction, horizonDeg;
    private int known = -1;

    /// <param name="leg">The leg.</param>
    /// <param name="headingDeg">Where the nose points, degrees: the leg's own, or one tried.</param>
    /// <param name="body">The vehicle's faces.</param>
    /// <param name="panels">Solar panels.</param>
    internal SunTrack(Leg leg, double headingDeg, Body body, IReadOnlyList<SolarPanel> panels)
    {
        (weather, this.body, horizonDeg) = (leg.Weather, body, leg.HorizonDeg);
        groundFraction = leg.Snow ? SurfaceAspect.SnowFraction : SurfaceAspect.BareGroundFraction;
        List<(double TiltDeg, double FacingDeg)> looks = [];
        aspectOfPart = [.. body.Parts.Select(part => IndexOf(part.TiltDeg, part.FacingDeg))];
        aspectOfPanel = [.. panels.Select(panel => IndexOf(panel.TiltDeg, panel.FacingDeg))];
        int[] ofSurface = [.. body.Vehicle.Surfaces.Select(surface => IndexOf(surface.TiltDeg, surface.FacingDeg))];
        aspects = [.. looks.Select(look => SurfaceAspect.OfPanel(look.TiltDeg, look.FacingDeg, headingDeg, leg.HorizonDeg))];
        (onAspect, throughAspect) = (new double[aspects.Length], new double[aspects.Length]);
        skyView = [.. ofSurface.Select(index => aspects[index].SkyViewFraction)];

        int IndexOf(double tiltDeg, double facingDeg)
        {
            int index = looks.IndexOf((tiltDeg, facingDeg));
            if (index >= 0) return index;
            looks.Add((tiltDeg, facingDeg));
            return looks.Count - 1;
        }
    }

    /// <summary>Sun and sky light on the flat without hills, W/m².</summary>
    internal double OnFlatWPerM2 { get; private set; }
    /// <summary>True with the sun below the horizon.</summary>
    internal bool IsDown { get; private set; } = true;

    /// <summary>Finds the sun of a step of the weather, where it is not that of the step before.</summary>
    internal void MoveTo(int weatherStep)
    {
        if (weatherStep == known) return;
        known = weatherStep;
        DateTime middle = weather.MiddleUtc(weatherStep);
        SunPosition sun = SunPosition.At(weather.LatitudeDeg, weather.LongitudeDeg, middle);
        IsDown = !(sun.ElevationDeg > horizonDeg);
        OnFlatWPerM2 = weather.GlobalWPerM2?[weatherStep] ?? 0;
        Array.Clear(onAspect);
        Array.Clear(throughAspect);
        if (!(OnFlatWPerM2 > 0)) return;
        double beam = weather.BeamNormalWPerM2?[weatherStep] ?? 0, diffuse = weather.DiffuseWPerM2?[weatherStep] ?? OnFlatWPerM2;
        double aboveAir = SunAboveAir.NormalWPerM2(middle.DayOfYear);
        for (int i = 0; i < aspects.Length; i++)
        {
            SunOnSurface on = aspects[i].Of(sun, beam, diffuse, OnFlatWPerM2, aboveAir, groundFraction, SkyModel.HayDavies);
            onAspect[i] = on.TotalWPerM2;
            throughAspect[i] = on.BeamWPerM2 * ThroughFactor(aspects[i].IncidenceFactor(sun)) + (on.SkyWPerM2 + on.GroundWPerM2) * DiffuseThroughFraction;
        }
    }

    /// <summary>What glass lets pass of light that comes in at an angle, against light straight on.</summary>
    internal static double ThroughFactor(double incidenceFactor) => 1 - (1 - incidenceFactor) * (1 - incidenceFactor) * (1 - incidenceFactor);

    /// <summary>Sun on a solar panel, W/m².</summary>
    internal double OnPanelWPerM2(int panel) => onAspect[aspectOfPanel[panel]];

    /// <summary>Fills in sun and sky seen, with the covers that the drive holds.</summary>
    internal void Fill(Drive drive)
    {
        skyView.CopyTo(drive.SkyViewFraction, 0);
        Array.Clear(drive.SunInsideW);
        for (int p = 0; p < aspectOfPart.Length; p++)
        {
            Part part = body.Parts[p];
            drive.SunUptakeW[p] = 0;
            if (part.SunUptakeFraction == 0 && part.SunThroughFraction == 0) continue;
            Envelope.CoveringSide? cover = drive.CoverOn[p] < 0 ? null : part.Coverings[drive.CoverOn[p]].Side;
            double onW = onAspect[aspectOfPart[p]] * part.AreaM2, throughW = throughAspect[aspectOfPart[p]] * part.AreaM2 * part.SunThroughFraction;
            drive.SunUptakeW[p] = onW * (cover == Envelope.CoveringSide.Outside ? OutsideCoverUptakeFraction : part.SunUptakeFraction);
            drive.SunInsideW[part.Zone] += throughW * cover switch
            {
                Envelope.CoveringSide.Outside => PastOutsideCoverFraction,
                Envelope.CoveringSide.Inside => PastInsideCoverFraction,
                _ => 1,
            };
        }
    }
}
