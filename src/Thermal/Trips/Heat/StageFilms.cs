using Thermal.Envelope;

namespace Thermal.Trips.Heat;

/// <summary>What the faces of all parts exchange heat with in one stage, found from the temperatures of the stage before.</summary>
/// <remarks>
/// Inside: convection by the way heat flows at the face at that moment (a floor warmer than its air warms it as a warm floor does),
/// radiation to the radiant node of the room. Warm air stands under the roof: at faces over a room the air is warmer than the mean, at
/// those under it colder by the same share of the difference to outside, while the room is warmer than outside. A heater that blows stirs
/// the air of the living space. Outside: convection by
/// wind, longwave to sky and, for the rest of what the face sees, to surroundings at air temperature.
/// </remarks>
internal sealed class StageFilms
{
    /// <summary>How much warmer the air is under the roof, and colder over the floor, than the mean, per kelvin above outside. Source: OURS, about 1 K each at 20 K.</summary>
    internal const double StandsAboveFactor = 0.05;

    /// <summary>Least convection at the faces of the living space while its heater blows, W/(m²·K). Source: OURS, a fan of some ten room volumes an hour; still air alone would stand 8 to 10 K above the faces.</summary>
    internal const double BlownWPerM2K = 4;

    private readonly Body body;
    private readonly bool lumped;
    private readonly FlowDirection[] innerWays, outerWays;
    private readonly double[] innerFrontC, outerFrontC;
    private readonly FaceSide[] inner, outer;
    private readonly WeatherSide[] weather;
    private double windWPerM2K, lumpedWindWPerM2K;
    private int blownRoom;

    internal StageFilms(Body body, double startC)
    {
        this.body = body;
        lumped = body.Films == FilmRule.Lumped;
        int n = body.Parts.Length;
        innerWays = [.. body.Parts.Select(part => SurfaceResistance.DirectionOf(part.TiltDeg))];
        outerWays = [.. body.Parts.Select(part => SurfaceResistance.DirectionOf(180 - part.TiltDeg))];
        (innerFrontC, outerFrontC) = (new double[n], new double[n]);
        Array.Fill(innerFrontC, startC);
        Array.Fill(outerFrontC, startC);
        (inner, outer, weather) = (new FaceSide[n], new FaceSide[n], new WeatherSide[n]);
    }

    /// <summary>Faces towards the room inside.</summary>
    internal FaceSide[] Inner => inner;
    /// <summary>Outer faces of partitions.</summary>
    internal FaceSide[] Outer => outer;
    /// <summary>Outer faces of all others.</summary>
    internal WeatherSide[] Weather => weather;
    /// <summary>Foremost outer face, of a cover where one is on, °C.</summary>
    internal double[] OuterFrontC => outerFrontC;

    /// <summary>How much colder than the air a fully open sky makes ties outside, per kelvin that the sky is below the air.</summary>
    internal double TieSkyFactor { get; private set; }

    /// <summary>Sets all of them.</summary>
    /// <param name="drive">What acts.</param>
    /// <param name="state">Temperatures of the stage before.</param>
    /// <param name="blown">Index of the room whose air a heater stirs; -1 for none.</param>
    internal void Set(Drive drive, HeatState state, int blown)
    {
        blownRoom = blown;
        windWPerM2K = SurfaceResistance.OutsideConvectiveWPerM2K(drive.AirPastMPerS);
        double black = SurfaceResistance.UsualEmissivityFraction * SurfaceResistance.OutsideBlackWPerM2K;
        lumpedWindWPerM2K = windWPerM2K + black;
        TieSkyFactor = lumped ? 0 : black / lumpedWindWPerM2K;
        for (int p = 0; p < inner.Length; p++)
        {
            Part part = body.Parts[p];
            Covering? cover = drive.CoverOn[p] >= 0 ? part.Coverings[drive.CoverOn[p]] : null;
            double coverM2KPerW = cover is null ? 0 : cover.AddedResistanceM2KPerW.Value;
            bool coverInside = cover is { Side: CoveringSide.Inside };
            double before = part.Films.AgainstM2KPerW + (coverInside ? coverM2KPerW : 0);
            double behind = part.Films.VentilatedM2KPerW + (coverInside ? 0 : coverM2KPerW);
            SetFace(ref inner[p], part, part.Zone, innerWays[p], innerFrontC[p], part.Films.LumpedInsideM2KPerW, before, drive, state);
            if (part.OtherZone >= 0) SetFace(ref outer[p], part, part.OtherZone, outerWays[p], outerFrontC[p], part.Films.LumpedOutsideM2KPerW!.Value, behind, drive, state);
            else SetWeather(ref weather[p], part, outerFrontC[p], behind, drive.SunUptakeW[p], drive);
        }
    }

    /// <summary>Keeps the fronts of a part once its stage is solved.</summary>
    internal void Keep(int p, double innerC, double outerC, Drive drive, HeatState state)
    {
        Part part = body.Parts[p];
        innerFrontC[p] = inner[p].FrontC(innerC, AtFaceC(inner[p].StandsAboveFactor, state.AirC[part.Zone], drive.OutsideC), state.RadiantC[part.Zone]);
        outerFrontC[p] = part.OtherZone >= 0
            ? outer[p].FrontC(outerC, AtFaceC(outer[p].StandsAboveFactor, state.AirC[part.OtherZone], drive.OutsideC), state.RadiantC[part.OtherZone])
            : weather[p].FrontC(outerC);
    }

    /// <summary>Convection inside, W/(m²·K): as for heat that leaves this way while the air is warmer, and as for the opposite way while the face is.</summary>
    internal static double ConvectiveWPerM2K(FlowDirection way, double airC, double faceC) => SurfaceResistance.InsideConvectiveWPerM2K(
        airC >= faceC || way == FlowDirection.Horizontal ? way : way == FlowDirection.Up ? FlowDirection.Down : FlowDirection.Up);

    /// <summary>The same in a room, whose heater may blow, W/(m²·K).</summary>
    internal double ConvectiveWPerM2K(int room, double stillWPerM2K) => room == blownRoom ? Math.Max(stillWPerM2K, BlownWPerM2K) : stillWPerM2K;

    private static double AtFaceC(double standsAbove, double airC, double outsideC) => airC + standsAbove * (airC - outsideC);

    private void SetFace(ref FaceSide side, Part part, int room, FlowDirection way, double frontC, double lumpedM2KPerW, double beforeM2KPerW, Drive drive, HeatState state)
    {
        double area = part.AreaM2 * part.Films.FaceFactor, before = beforeM2KPerW > 0 ? part.AreaM2 / beforeM2KPerW : 0;
        double sun = drive.SunInsideW[room] * part.AreaM2 / body.Rooms[room].InnerM2;
        if (lumped)
        {
            side.Set(area / lumpedM2KPerW, 0, before, sun, 0);
            return;
        }
        double air = state.AirC[room];
        double above = way == FlowDirection.Horizontal || !(air > drive.OutsideC) ? 0 : way == FlowDirection.Up ? StandsAboveFactor : -StandsAboveFactor;
        side.Set(area * ConvectiveWPerM2K(room, ConvectiveWPerM2K(way, AtFaceC(above, air, drive.OutsideC), frontC)),
            area * Longwave.CoefficientWPerM2K(SurfaceResistance.UsualEmissivityFraction, frontC, state.RadiantC[room]), before, sun, above);
    }

    private void SetWeather(ref WeatherSide side, Part part, double frontC, double behindM2KPerW, double sunW, Drive drive)
    {
        double area = part.AreaM2 * part.Films.FaceFactor, behind = behindM2KPerW > 0 ? part.AreaM2 / behindM2KPerW : 0;
        double film, fromW;
        if (lumped || part.Films.Outer == OuterFilm.Still)
        {
            film = part.Films.Outer == OuterFilm.Still && !lumped ? area / part.Films.StillM2KPerW
                : part.Films.LumpedOutsideM2KPerW is { } fixedM2KPerW ? area / fixedM2KPerW : area * lumpedWindWPerM2K;
            fromW = film * drive.OutsideC;
        }
        else
        {
            double view = drive.SkyViewFraction[part.Surface], e = SurfaceResistance.UsualEmissivityFraction;
            double sky = area * view * Longwave.CoefficientWPerM2K(e, frontC, drive.SkyC);
            double rest = area * (windWPerM2K + (1 - view) * Longwave.CoefficientWPerM2K(e, frontC, drive.OutsideC));
            (film, fromW) = (sky + rest, sky * drive.SkyC + rest * drive.OutsideC);
        }
        side.Set(film, fromW, sunW, behind);
    }
}
