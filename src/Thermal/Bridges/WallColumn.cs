using Thermal.Envelope;

namespace Thermal.Bridges;

/// <summary>A build-up as it stands in a section: layers from the outside (y = 0) inwards, with the resistances that its U counts.</summary>
/// <remarks>Battens of the build-up itself are left out: what is drawn is the place between them. So is the correction for gaps.</remarks>
internal sealed class WallColumn
{
    // A little less than the thinnest layer there is, m: thinner slices come from lengths that are equal on paper.
    internal const double LeastM = 0.999e-6;

    // How far a detail is felt, chosen by us: beyond 3 thicknesses exp(−3π) = 0.0001 of it is left; along a sheet of metal of length
    // scale ℓ = √(λ·d·R) an end at 4ℓ changes the flow by 1 − tanh 4 = 0.0007.
    private const double Thicknesses = 3, FinLengths = 4, LeastReachM = 0.3;

    private readonly (string Name, double Y0M, double Y1M, double ConductivityWPerMK)[] _layers;

    internal WallColumn(Stack stack, double tiltDeg, double insideFilmM2KPerW, double outsideFilmM2KPerW)
    {
        Direction = SurfaceResistance.DirectionOf(tiltDeg);
        IReadOnlyList<double> resistances = Transmittance.Of(stack, Direction, insideFilmM2KPerW, outsideFilmM2KPerW).LayersM2KPerW;
        _layers = new (string, double, double, double)[stack.Layers.Count];
        double y = 0, counted = outsideFilmM2KPerW, total = insideFilmM2KPerW + outsideFilmM2KPerW + resistances.Sum();
        for (int i = stack.Layers.Count - 1; i >= 0; i--)
        {
            double d = stack.Layers[i].ThicknessM, r = resistances[i];
            _layers[stack.Layers.Count - 1 - i] = (stack.Layers[i].Name, y, y + d, d / r);
            double outwards = counted + r / 2, inwards = total - outwards;
            FinLengthM = Math.Max(FinLengthM, Math.Sqrt(d / r * d / (1 / outwards + 1 / inwards)));
            y += d;
            counted += r;
        }
        (ThicknessM, UWPerM2K) = (y, 1 / total);
        (InsideFilmM2KPerW, OutsideFilmM2KPerW) = (insideFilmM2KPerW, outsideFilmM2KPerW);
        BareFaceM = ThicknessM - stack.InsideSkinThicknessM;
    }

    internal FlowDirection Direction { get; }
    internal double ThicknessM { get; }
    internal double InsideFilmM2KPerW { get; }
    internal double OutsideFilmM2KPerW { get; }
    /// <summary>U beside the detail, W/(m²·K).</summary>
    internal double UWPerM2K { get; }
    /// <summary>Inner face of the outermost layer, m.</summary>
    internal double SkinM => _layers[0].Y1M;
    internal string SkinName => _layers[0].Name;
    internal double SkinConductivityWPerMK => _layers[0].ConductivityWPerMK;
    /// <summary>Face from which bare dimensions count, m.</summary>
    internal double BareFaceM { get; }
    /// <summary>Outer face of the innermost layer; the room's face where there is only one layer inside the skin, m.</summary>
    internal double LiningM => _layers.Length > 2 ? _layers[^1].Y0M : ThicknessM;
    /// <summary>Largest length √(λ·d·R) over which a warm or cold spot runs out along one of its sheets, m.</summary>
    internal double FinLengthM { get; }

    /// <summary>How far beside a detail the section must go, m.</summary>
    internal double ReachM => Math.Max(LeastReachM, Math.Max(Thicknesses * ThicknessM, FinLengths * FinLengthM));

    /// <summary>Face outside of some layers counted from the room, m.</summary>
    internal double FaceUnderM(int layersOver) => layersOver == 0 ? ThicknessM : _layers[_layers.Length - layersOver].Y0M;

    /// <summary>The layers between two places along the panel, and between two depths.</summary>
    internal IEnumerable<Piece> Pieces(double x0M, double x1M, double y0M = double.NegativeInfinity, double y1M = double.PositiveInfinity) =>
        from layer in _layers
        let low = Math.Max(layer.Y0M, y0M)
        let high = Math.Min(layer.Y1M, y1M)
        where high - low >= LeastM && x1M - x0M >= LeastM
        select new Piece(layer.Name, new(x0M, x1M, low, high), layer.ConductivityWPerMK);

    /// <summary>Air on both sides of a straight wall from x = 0 on.</summary>
    internal Boundary[] Air(double widthM, double roomFromM) =>
    [
        new(DetailSection.Outside, new(0, widthM, double.NegativeInfinity, 0), OutsideFilmM2KPerW),
        new(DetailSection.Room, new(0, widthM, roomFromM, double.PositiveInfinity), InsideFilmM2KPerW),
    ];

    internal static WallColumn Of(DetailPlace place, double insideFilmM2KPerW) => new(place.Stack, place.TiltDeg, insideFilmM2KPerW, place.OutsideFilmM2KPerW);
}
