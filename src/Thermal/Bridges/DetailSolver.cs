using Thermal.Envelope;
using Thermal.Envelope.Details;
using Thermal.Materials;

namespace Thermal.Bridges;

/// <summary>Solves described details in the build-up they stand in.</summary>
public static class DetailSolver
{
    /// <summary>ψ, coldest point and U with ribs of a detail along a line.</summary>
    /// <param name="detail">The detail.</param>
    /// <param name="place">Where it stands.</param>
    /// <param name="cache">Sections solved before; null starts an empty one.</param>
    /// <param name="accuracy">How closely; null for the standard's one per cent.</param>
    /// <exception cref="ArgumentException">It does not fit: see <see cref="DetailFit"/>; or the place lacks the other panel or the opening.</exception>
    /// <remarks>
    /// ψ = L2D − ΣU·l with the loss films. Its bounds are those of the coupling found, not of materials and films.
    /// Source: ISO-10211, linear thermal transmittance; ISO-6946, table 7, for R_si by direction; ISO-13788 for the mould films.
    /// </remarks>
    public static SolvedLine Solve(LineDetail detail, DetailPlace place, BridgeCache? cache = null, Accuracy? accuracy = null)
    {
        Films films = new(detail, place, cache ?? new(), accuracy);
        return new()
        {
            Detail = detail,
            Place = place,
            Loss = films.Loss,
            Mould = films.Mould,
            PlainUWPerM2K = films.Drawn.PlainUWPerM2K,
            WholeCouplingWPerK = films.WholeWPerK,
            PlainCouplingWPerK = films.Drawn.PlainWPerK,
            ColdestFactor = films.Coldest.TemperatureC,
            MouldFactor = Coldest(films.Mould).TemperatureC,
            ColdestErrorFactor = films.Loss.TemperatureChangeK,
            ColdestAt = films.Coldest,
            PsiWPerMK = films.BeyondPlain(),
            UWithRibsWPerM2K = films.UWithRibsWPerM2K,
        };
    }

    /// <summary>χ and coldest point of a detail at a point.</summary>
    /// <inheritdoc cref="Solve(LineDetail, DetailPlace, BridgeCache?, Accuracy?)"/>
    /// <remarks>χ = L3D − U·A with the loss films. Source: ISO-10211, point thermal transmittance; ISO-6946, table 7; ISO-13788 for the mould films.</remarks>
    public static SolvedPoint Solve(PointDetail detail, DetailPlace place, BridgeCache? cache = null, Accuracy? accuracy = null)
    {
        Films films = new(detail, place, cache ?? new(), accuracy);
        return new()
        {
            Detail = detail,
            Place = place,
            Loss = films.Loss,
            Mould = films.Mould,
            PlainUWPerM2K = films.Drawn.PlainUWPerM2K,
            WholeCouplingWPerK = films.WholeWPerK,
            PlainCouplingWPerK = films.Drawn.PlainWPerK,
            ColdestFactor = films.Coldest.TemperatureC,
            MouldFactor = Coldest(films.Mould).TemperatureC,
            ColdestErrorFactor = films.Loss.TemperatureChangeK,
            ColdestAt = films.Coldest,
            ChiWPerK = films.BeyondPlain(),
        };
    }

    /// <summary>What a detail adds, its coldest factor and, where it repeats, U with it, all with the loss films alone: half the work where mould is not asked for.</summary>
    internal static (Bounded Added, double ColdestFactor, double? UWithRibsWPerM2K) Loss(Detail detail, DetailPlace place, BridgeCache cache)
    {
        Films films = new(detail, place, cache, null);
        return (films.BeyondPlain(), films.Coldest.TemperatureC, films.UWithRibsWPerM2K);
    }

    /// <summary>The coldest point of the room's surfaces for 1 °C inside and 0 °C outside: its temperature is its factor.</summary>
    private static SurfacePoint Coldest(SolvedSection solved) => solved.Coldest(DetailSection.Room,
        [.. solved.Environments.Select(environment => environment == DetailSection.Room ? 1.0 : 0.0)]);

    private sealed class Films
    {
        private readonly Lazy<SolvedSection> mould;

        internal Films(Detail detail, DetailPlace place, BridgeCache cache, Accuracy? accuracy)
        {
            Drawn = DetailSection.Draw(detail, place, SurfaceResistance.InsideM2KPerW(SurfaceResistance.DirectionOf(place.TiltDeg)));
            Loss = cache.Solve(Drawn.Section, accuracy);
            mould = new(() => cache.Solve(DetailSection.Draw(detail, place, SurfaceResistance.MouldOpaqueM2KPerW).Section, accuracy));
            Coldest = Coldest(Loss);
        }

        internal DrawnDetail Drawn { get; }
        internal SolvedSection Loss { get; }
        internal SolvedSection Mould => mould.Value;
        internal SurfacePoint Coldest { get; }
        internal double? UWithRibsWPerM2K => WholeWPerK / Drawn.RepeatM;
        internal double WholeWPerK => Drawn.WholeFactor * Loss.CouplingWPerK(DetailSection.Room, DetailSection.Outside);

        /// <summary>What the whole lets through beyond its plain parts.</summary>
        internal Bounded BeyondPlain()
        {
            double value = WholeWPerK - Drawn.PlainWPerK;
            double error = Drawn.WholeFactor * Loss.CouplingErrorsWPerK[1];
            return new(value - error, value, value + error, "ISO-10211", "solved in its section; bounds of the solution");
        }
    }
}
