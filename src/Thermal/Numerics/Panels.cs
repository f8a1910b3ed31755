using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Thermal.Numerics;

/// <summary>
/// Dense kernels on panels stored by columns. They work on whole tiles of eight rows by four columns and read past the last row of a panel;
/// <see cref="Slack"/> values behind the last panel make that safe, and what is read there is never used.
/// </summary>
internal static class Panels
{
    private const int TileRows = 8;

    /// <summary>Values that must stand behind the last panel.</summary>
    internal const int Slack = 2 * TileRows;

    /// <summary>Height of the columns of a product over so many rows.</summary>
    internal static int Padded(int rows) => (rows + TileRows - 1) / TileRows * TileRows;

    /// <summary>
    /// Products of rows: product[i + j·Padded(rows)] = Σ over the first <paramref name="depth"/> columns of panel[row i]·panel[row j],
    /// for rows i from 0 to rows − 1 and j from 0 to 3, all rows counted from <paramref name="first"/>.
    /// </summary>
    internal static void FourProducts(ReadOnlySpan<double> panel, int first, int height, int depth, int rows, Span<double> product)
    {
        int padded = Padded(rows);
        ref double source = ref MemoryMarshal.GetReference(panel), target = ref MemoryMarshal.GetReference(product);
        for (int tile = 0; tile < padded; tile += TileRows)
        {
            Vector256<double> a0 = default, a1 = default, a2 = default, a3 = default, b0 = default, b1 = default, b2 = default, b3 = default;
            nuint at = (nuint)(first + tile), by = (nuint)first;
            for (int k = 0; k < depth; k++, at += (nuint)height, by += (nuint)height)
            {
                Vector256<double> upper = Vector256.LoadUnsafe(ref source, at), lower = Vector256.LoadUnsafe(ref source, at + 4);
                Vector256<double> factor = Vector256.Create(Unsafe.Add(ref source, by));
                (a0, b0) = (Vector256.MultiplyAddEstimate(upper, factor, a0), Vector256.MultiplyAddEstimate(lower, factor, b0));
                factor = Vector256.Create(Unsafe.Add(ref source, by + 1));
                (a1, b1) = (Vector256.MultiplyAddEstimate(upper, factor, a1), Vector256.MultiplyAddEstimate(lower, factor, b1));
                factor = Vector256.Create(Unsafe.Add(ref source, by + 2));
                (a2, b2) = (Vector256.MultiplyAddEstimate(upper, factor, a2), Vector256.MultiplyAddEstimate(lower, factor, b2));
                factor = Vector256.Create(Unsafe.Add(ref source, by + 3));
                (a3, b3) = (Vector256.MultiplyAddEstimate(upper, factor, a3), Vector256.MultiplyAddEstimate(lower, factor, b3));
            }
            nuint to = (nuint)tile, step = (nuint)padded;
            a0.StoreUnsafe(ref target, to);
            b0.StoreUnsafe(ref target, to + 4);
            a1.StoreUnsafe(ref target, to + step);
            b1.StoreUnsafe(ref target, to + step + 4);
            a2.StoreUnsafe(ref target, to + 2 * step);
            b2.StoreUnsafe(ref target, to + 2 * step + 4);
            a3.StoreUnsafe(ref target, to + 3 * step);
            b3.StoreUnsafe(ref target, to + 3 * step + 4);
        }
    }

    /// <summary>target += factor·source; equal lengths.</summary>
    internal static void AddMultiple(double factor, ReadOnlySpan<double> source, Span<double> target)
    {
        ref double from = ref MemoryMarshal.GetReference(source), to = ref MemoryMarshal.GetReference(target);
        Vector256<double> factors = Vector256.Create(factor);
        int i = 0;
        for (; i <= source.Length - 4; i += 4)
            Vector256.MultiplyAddEstimate(factors, Vector256.LoadUnsafe(ref from, (nuint)i), Vector256.LoadUnsafe(ref to, (nuint)i)).StoreUnsafe(ref to, (nuint)i);
        for (; i < source.Length; i++) target[i] += factor * source[i];
    }

    /// <summary>column[place[i]] −= product[i]; places ascending and as many as products.</summary>
    internal static void Subtract(ReadOnlySpan<double> product, ReadOnlySpan<int> place, Span<double> column)
    {
        if (place[^1] - place[0] == place.Length - 1) AddMultiple(-1, product, column.Slice(place[0], place.Length));
        else
            for (int i = 0; i < product.Length; i++) column[place[i]] -= product[i];
    }

    /// <summary>Σ of products; equal lengths.</summary>
    internal static double Dot(ReadOnlySpan<double> one, ReadOnlySpan<double> other)
    {
        ref double from = ref MemoryMarshal.GetReference(one), to = ref MemoryMarshal.GetReference(other);
        Vector256<double> sums = default;
        int i = 0;
        for (; i <= one.Length - 4; i += 4)
            sums = Vector256.MultiplyAddEstimate(Vector256.LoadUnsafe(ref from, (nuint)i), Vector256.LoadUnsafe(ref to, (nuint)i), sums);
        double sum = Vector256.Sum(sums);
        for (; i < one.Length; i++) sum += one[i] * other[i];
        return sum;
    }
}
