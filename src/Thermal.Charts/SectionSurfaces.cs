using SkiaSharp;
using Thermal.Bridges;

namespace Thermal.Charts;

/// <summary>The outlines of a drawn section: where it meets the room, the outside, or a cut that no heat crosses, and where the room's side is wet.</summary>
internal sealed class SectionSurfaces
{
    private readonly SectionCells cells;
    private readonly SectionView view;
    private readonly Dictionary<string, List<(int From, int To)>> faces = [];
    private readonly int columns;

    internal SectionSurfaces(SectionCells cells, SectionView view, bool[] isShown)
    {
        (this.cells, this.view, columns) = (cells, view, cells.XsM.Length);
        for (int cell = 0; cell < isShown.Length; cell++)
        {
            if (!isShown[cell])
                continue;
            int i = cell % cells.Across, j = cell / cells.Across, corner = i + j * columns;
            Add(i, j, 0, -1, corner, corner + 1);
            Add(i, j, 1, 0, corner + 1, corner + 1 + columns);
            Add(i, j, 0, 1, corner + 1 + columns, corner + columns);
            Add(i, j, -1, 0, corner + columns, corner);
        }
    }

    /// <summary>Lines along the surfaces of an environment; none where it is not in the picture.</summary>
    /// <param name="environment">Its name; empty for cuts.</param>
    internal IReadOnlyList<SKPoint[]> Of(string environment) => faces.TryGetValue(environment, out List<(int From, int To)>? found)
        ? [.. Chain.Of(found).Select(chain => Simplified.Line([.. chain.Select(At)], 0.1f))]
        : [];

    /// <summary>The parts of the room's surfaces that are below a temperature.</summary>
    internal IReadOnlyList<SKPoint[]> Below(double dewPointC)
    {
        List<SKPoint[]> wet = [];
        foreach (IReadOnlyList<int> chain in faces.TryGetValue(DetailSection.Room, out List<(int From, int To)>? found) ? Chain.Of(found) : [])
        {
            List<SKPoint> run = [];
            for (int k = 0; k < chain.Count; k++)
            {
                double here = cells.TemperaturesC[chain[k]] - dewPointC, before = k > 0 ? cells.TemperaturesC[chain[k - 1]] - dewPointC : here;
                if (here * before < 0)
                    run.Add(Between(At(chain[k - 1]), At(chain[k]), (float)(before / (before - here))));
                if (here < 0)
                    run.Add(At(chain[k]));
                if (run.Count > 1 && (here >= 0 || k == chain.Count - 1))
                    wet.Add(Simplified.Line(run, 0.1f));
                if (here >= 0)
                    run.Clear();
            }
        }
        return wet;
    }

    private void Add(int i, int j, int right, int up, int from, int to)
    {
        (int x, int y) = (i + right, j + up);
        if (x >= 0 && y >= 0 && x < cells.Across && y < cells.YsM.Length - 1 && cells.Pieces[x + y * cells.Across] is not null)
            return;
        string environment = cells.Beyond(i, j, right, up) ?? "";
        if (!faces.TryGetValue(environment, out List<(int From, int To)>? list))
            faces[environment] = list = [];
        list.Add((from, to));
    }

    private SKPoint At(int point) => view.At(cells.XsM[point % columns], cells.YsM[point / columns]);

    private static SKPoint Between(SKPoint from, SKPoint to, float part) => new(from.X + (to.X - from.X) * part, from.Y + (to.Y - from.Y) * part);
}
