using Thermal.Air;
using Thermal.Bridges;
using Thermal.Envelope.Details;

namespace Thermal.Assessments;

/// <summary>A described detail in a build-up of its own, without a vehicle: what it costs, how cold it gets, whether it drips.</summary>
public static class DetailAlone
{
    /// <summary>The answer for one metre of a line, or for one point.</summary>
    /// <param name="name">What to call it.</param>
    /// <param name="panel">What to call what it stands in, such as wall.</param>
    /// <param name="detail">The detail.</param>
    /// <param name="place">Where it stands.</param>
    /// <param name="insideC">Temperature of the room, °C, -40 to 50.</param>
    /// <param name="relativeHumidityFraction">Humidity of the room over water, fraction, 0.01 to 1.</param>
    /// <param name="outsideC">Temperature outside, °C, -60 to 50.</param>
    /// <exception cref="ArgumentException">It does not fit: see <see cref="DetailFit"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    public static BridgeAnswer Of(string name, string panel, Detail detail, DetailPlace place, double insideC, double relativeHumidityFraction, double outsideC)
    {
        Guard.InRange(insideC, -40, 50, "°C");
        Guard.InRange(outsideC, -60, 50, "°C");
        double vapourPa = Guard.InRange(relativeHumidityFraction, 0.01, 1, "(fraction)") * SaturationPressure.OverWaterPa(insideC);
        SolvedDetail solved = detail switch
        {
            LineDetail line => DetailSolver.Solve(line, place),
            PointDetail point => DetailSolver.Solve(point, place),
            _ => throw new ArgumentException("A detail is a line or a point.", nameof(detail)),
        };
        double lossWPerK = solved switch { SolvedLine line => line.PsiWPerMK.Value, SolvedPoint point => point.ChiWPerK.Value, _ => 0 };
        double coldestC = outsideC + solved.ColdestFactor * (insideC - outsideC), dewPointC = DewPoint.OfPressureC(vapourPa);
        return new()
        {
            Name = name,
            Panel = panel,
            Solved = solved,
            LengthM = solved is SolvedLine ? 1 : null,
            Count = solved is SolvedPoint ? 1 : null,
            SpacingM = place.SpacingM,
            LossWPerK = lossWPerK,
            LossW = lossWPerK * (insideC - outsideC),
            ColdestC = coldestC,
            ToSpareK = coldestC - dewPointC,
            IsFrost = coldestC < 0,
            InsideC = insideC,
            OutsideC = outsideC,
            DewPointC = dewPointC,
        };
    }
}
