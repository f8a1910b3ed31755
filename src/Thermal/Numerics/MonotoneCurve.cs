namespace Thermal.Numerics;

/// <summary>A smooth curve of cubic pieces through points, rising where they rise and falling where they fall: it makes no bumps of its own.</summary>
/// <remarks>Slopes are weighted harmonic means of the neighbouring secants, 0 at a turn, by three points at the ends (Fritsch and Carlson; Fritsch and Butland).</remarks>
internal sealed class MonotoneCurve
{
    private readonly double[] _x, _y, _slopes;

    /// <summary>Through at least three points, x ascending.</summary>
    internal MonotoneCurve(double[] x, double[] y)
    {
        (_x, _y) = (x, y);
        int last = x.Length - 1;
        _slopes = new double[x.Length];
        for (int i = 1; i < last; i++) _slopes[i] = Inner(Secant(i - 1), Secant(i), x[i] - x[i - 1], x[i + 1] - x[i]);
        _slopes[0] = End(Secant(0), Secant(1), x[1] - x[0], x[2] - x[1]);
        _slopes[last] = End(Secant(last - 1), Secant(last - 2), x[last] - x[last - 1], x[last - 1] - x[last - 2]);
    }

    /// <summary>Value between the first and the last point.</summary>
    internal double At(double x)
    {
        int found = Array.BinarySearch(_x, x), i = Math.Clamp(found >= 0 ? found : ~found - 1, 0, _x.Length - 2);
        double width = _x[i + 1] - _x[i], s = (x - _x[i]) / width, rise = _y[i + 1] - _y[i];
        return _y[i] + s * rise + s * (1 - s) * ((1 - s) * (width * _slopes[i] - rise) + s * (rise - width * _slopes[i + 1]));
    }

    private double Secant(int i) => (_y[i + 1] - _y[i]) / (_x[i + 1] - _x[i]);

    private static double Inner(double before, double after, double widthBefore, double widthAfter)
    {
        if (before * after <= 0) return 0;
        double w0 = 2 * widthAfter + widthBefore, w1 = widthAfter + 2 * widthBefore;
        return (w0 + w1) / (w0 / before + w1 / after);
    }

    private static double End(double near, double far, double nearWidth, double farWidth)
    {
        double slope = ((2 * nearWidth + farWidth) * near - nearWidth * far) / (nearWidth + farWidth);
        if (slope * near <= 0) return 0;
        return near * far <= 0 && Math.Abs(slope) > 3 * Math.Abs(near) ? 3 * near : slope;
    }
}
