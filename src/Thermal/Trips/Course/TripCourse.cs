using Thermal.Air;
using Thermal.Envelope;
using Thermal.Trips.Books;
using Thermal.Trips.Damp;
using Thermal.Trips.Heat;
using Thermal.Trips.Living;
using Thermal.Trips.Outdoors;
using Thermal.Zones;

namespace Thermal.Trips.Course;

/// <summary>One passage through a trip with one heading where it is unknown: hours cut into equal steps, no longer than asked, also at the ends of legs.</summary>
/// <remarks>
/// In a step the weather, the sun and what people do are those of its middle or means over it. Both stages of the heat go before that of the water with
/// the same drive; heater, battery, tanks and carbon dioxide follow. Everything starts at one temperature and with air as humid as outside: the first
/// hours are those of a vehicle that comes out of its parking place, and nothing is reckoned before them.
/// </remarks>
internal sealed class TripCourse
{
    /// <summary>Heading where a leg has none, degrees. Source: OURS, nose south.</summary>
    internal const double UsualHeadingDeg = 180;
    /// <summary>Share of people's sensible heat that is radiation, fraction. Source: PRACTICE, seated people 0.5 to 0.6, from memory.</summary>
    internal const double BodyRadiantFraction = 0.6;

    private readonly TripCase asked;
    private readonly double headingDeg;
    private readonly Drive drive;
    private readonly DampDrive damp;
    private readonly Drying drying = new();
    private readonly EngineHeat engine = new();
    private readonly double[] linkM3PerS;
    private readonly int cab;
    private readonly WeatherTrack[] weathers;
    private SunTrack sun = null!;
    private LegLife life = null!;

    /// <param name="asked">Vehicle with its details solved, and journey.</param>
    /// <param name="body">The vehicle's faces and rooms.</param>
    /// <param name="headingDeg">Heading of legs without one, degrees.</param>
    internal TripCourse(TripCase asked, Body body, double headingDeg)
    {
        (this.asked, this.headingDeg) = (asked, headingDeg);
        weathers = [.. asked.Trip.Legs.Select(leg => new WeatherTrack(leg))];
        OutdoorsNow outside = new();
        weathers[0].Fill(asked.Trip.StartLocal, outside);
        double startC = asked.Trip.StartC ?? outside.AirC, startRatio = MoistAir.HumidityRatioKgPerKg(outside.VapourPa, outside.PressurePa);
        (drive, damp) = (new(body), new(body.Vehicle.Zones.Count));
        linkM3PerS = new double[body.Vehicle.Links.Count];
        int living = ZoneBalance.LivingIndex(body.Vehicle);
        cab = CabOr(living, body.Vehicle);
        Facts = new()
        {
            Body = body,
            Heat = new(body, startC),
            Damp = new(body, startRatio, startC, outside.PressurePa),
            Drive = drive,
            Doing = new(),
            Outside = outside,
            Air = new(asked.Case),
            Board = new(asked.Case, asked.Trip, body, startC),
            CarbonDioxide = new(body),
            Living = living,
        };
        Hours = new(asked, body);
        Energy = new(asked.Case.Tanks.Count, asked.Case.Pipes.Count);
        Wet = new(asked, body);
        (Means, Insides, Mould, Metal) = (new(body), new(body, Facts.Damp.BuildUps), new(body, Facts.Damp.BuildUps), new(body, Facts.Damp.BuildUps));
    }

    internal StepFacts Facts { get; }
    internal HourBook Hours { get; }
    internal EnergyBook Energy { get; }
    internal ComfortBook Comfort { get; } = new();
    internal SumBook Sums { get; } = new();
    internal WetBook Wet { get; }
    internal InsideBook Insides { get; }
    internal MouldBook Mould { get; }
    internal MetalBook Metal { get; }
    private HourMeans Means { get; }

    /// <summary>Goes through it.</summary>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    internal void Run(Action<double>? progress, CancellationToken cancel)
    {
        Begin(0);
        for (int hour = 0; hour < Hours.HoursCount; hour++)
        {
            cancel.ThrowIfCancellationRequested();
            DateTime from = asked.Trip.StartLocal.AddHours(hour), to = asked.Trip.StartLocal.AddHours(hour + 1), end = to < asked.Trip.EndLocal ? to : asked.Trip.EndLocal;
            if (from >= asked.Trip.Legs[Facts.Leg].EndLocal) Begin(Facts.Leg + 1);
            int leg = Facts.Leg;
            RunHour(hour, from, end);
            CloseHour(end);
            Hours.Close(hour, (end - from).TotalSeconds, leg, Facts);
            if (hour % 24 == 23) progress?.Invoke((hour + 1.0) / Hours.HoursCount);
        }
        progress?.Invoke(1);
    }

    private void RunHour(int hour, DateTime from, DateTime end)
    {
        for (DateTime at = from; at < end;)
        {
            Leg leg = asked.Trip.Legs[Facts.Leg];
            if (at >= leg.EndLocal)
            {
                Begin(Facts.Leg + 1);
                continue;
            }
            DateTime until = leg.EndLocal < end ? leg.EndLocal : end;
            double seconds = (until - at).TotalSeconds;
            int steps = (int)Math.Ceiling(seconds / asked.Trip.StepS - 1e-9);
            for (int i = 0; i < steps; i++)
            {
                Step(leg, at.AddSeconds(seconds * i / steps), seconds / steps);
                Hours.Take(hour, Facts);
                Energy.Take(Facts);
                Comfort.Take(Facts);
                Sums.Take(Facts);
                Wet.Take(Facts);
                Means.Take(Facts);
            }
            at = until;
        }
    }

    private void CloseHour(DateTime end)
    {
        Facts.Damp.CloseHour();
        Means.Close();
        Insides.Close(end);
        Mould.Close(Means);
        Metal.Close(Means);
        Means.Clear();
    }

    private void Begin(int index)
    {
        Leg leg = asked.Trip.Legs[index];
        Facts.Leg = index;
        life = new(leg, asked.Trip.Habits, asked.Case.Habits);
        sun = new(leg, leg.HeadingDeg ?? headingDeg, Facts.Body, asked.Case.Power?.Panels ?? []);
        Facts.Habits = life.Habits;
    }

    private void Step(Leg leg, DateTime local, double stepS)
    {
        double clockH = local.TimeOfDay.TotalHours, hours = stepS / 3600;
        (Facts.Local, Facts.StepS) = (local, stepS);
        weathers[Facts.Leg].Fill(local.AddSeconds(stepS / 2), Facts.Outside);
        sun.MoveTo(Facts.Outside.WeatherStep);
        life.Fill(clockH, hours, sun.IsDown, drying, Facts.Doing);
        SetDrive(leg, clockH, hours);
        double heaterW = 0;
        for (int stage = 0; stage < 2; stage++)
        {
            Facts.Heat.Stage(stage, stepS, drive);
            Facts.Damp.Stage(stage, stepS, Facts.Heat.State, drive, damp);
            heaterW += HeatStepper.WeightFraction(stage) * Facts.Heat.HeaterW;
        }
        Facts.HeaterW = heaterW;
        for (int i = 0; i < linkM3PerS.Length; i++) linkM3PerS[i] = drive.LinkAirKgPerS[i] * MoistAir.DryAirGasConstantJPerKgK * (Facts.Outside.AirC + MoistAir.ZeroCelsiusK) / Facts.Outside.PressurePa;
        Facts.CarbonDioxide.Step(stepS, PeopleRoom, Facts.Doing.CarbonDioxideM3PerS, Facts.Air.OutsideAirM3PerH, linkM3PerS);
        Facts.Board.Step(stepS, leg, Facts.Doing, Facts.Outside, Facts.Heat.State, heaterW, Facts.Air.FanOn, SunW());
    }

    private int PeopleRoom => Facts.Doing.IsDriving ? cab : Facts.Living;

    private void SetDrive(Leg leg, double clockH, double hours)
    {
        Doings doing = Facts.Doing;
        HeatState heat = Facts.Heat.State;
        OutdoorsNow outside = Facts.Outside;
        (drive.OutsideC, drive.SkyC, drive.WantedC) = (outside.AirC, outside.SkyC, doing.WantedC);
        Facts.SunOnFlatWPerM2 = sun.OnFlatWPerM2;
        SetCovers(doing.CoversOn);
        sun.Fill(drive);
        Facts.Air.Fill(leg, Facts.Habits, doing, outside, heat, ComfortBook.VapourPa(Facts, Facts.Living), Facts.Board.HasCurrent(leg), Facts.HeaterW > 0, drive);
        drive.AirPastMPerS = Facts.Air.AirPastMPerS;
        Array.Clear(drive.ConvectiveW);
        Array.Clear(drive.RadiantW);
        Facts.EngineW = engine.StepW(doing.IsDriving, Facts.Habits.EngineHeatW, heat.AirC[cab]);
        drive.ConvectiveW[cab] += Facts.EngineW;
        drive.ConvectiveW[PeopleRoom] += (1 - BodyRadiantFraction) * doing.PeopleW;
        drive.RadiantW[PeopleRoom] += BodyRadiantFraction * doing.PeopleW;
        drive.ConvectiveW[Facts.Living] += doing.CookingW;
        (Facts.LoadsW, Facts.StoresW) = Facts.Board.Fill(leg, Facts.Habits, clockH, hours, heat, drive);
        (damp.OutsidePa, damp.AirPressurePa) = (outside.VapourPa, outside.PressurePa);
        damp.OutsideRatioKgPerKg = MoistAir.HumidityRatioUncheckedKgPerKg(outside.VapourPa, outside.PressurePa);
        Array.Clear(damp.SourceKgPerS);
        damp.SourceKgPerS[PeopleRoom] += doing.PeopleKgPerS;
        damp.SourceKgPerS[Facts.Living] += doing.CookingKgPerS + doing.ShowersKgPerS + doing.DryingKgPerS;
    }

    /// <summary>Each opening's cover of the night goes on or off.</summary>
    private void SetCovers(bool on)
    {
        for (int p = 0; p < drive.CoverOn.Length; p++)
        {
            drive.CoverOn[p] = -1;
            if (!on || Facts.Body.Parts[p].Coverings.Count == 0) continue;
            Part part = Facts.Body.Parts[p];
            string? atNight = Facts.Body.Vehicle.Surfaces[part.Surface].Openings[part.Opening].CoverAtNight;
            for (int c = 0; c < part.Coverings.Count; c++)
                if (part.Coverings[c].Name == atNight) drive.CoverOn[p] = c;
        }
    }

    private double SunW()
    {
        if (asked.Case.Power is not { } power) return 0;
        double sunW = 0;
        for (int i = 0; i < power.Panels.Count; i++) sunW += Power.SolarYield.PanelW(power.Panels[i], sun.OnPanelWPerM2(i), Facts.Outside.AirC);
        return sunW;
    }

    /// <summary>Index of the cab; of the living space where there is none.</summary>
    private static int CabOr(int living, Vehicle vehicle)
    {
        for (int i = 0; i < vehicle.Zones.Count; i++)
            if (vehicle.Zones[i].Kind == ZoneKind.Cab) return i;
        return living;
    }
}
