using Thermal.Climates;

namespace Thermal.Files.Weathers;

/// <summary>Every quantity by the step, gaps filled by straight lines and remarked.</summary>
internal sealed class FilledSteps
{
    private readonly double[]?[] values = new double[WeatherColumn.QuantityCount][];
    private readonly List<(int From, int To, List<string> Columns)> gaps = [];

    internal required EvenSteps Steps { get; init; }

    internal double[]? this[Quantity quantity] => values[(int)quantity];

    /// <summary>Lays the rows on their steps and fills; null, with the problems named, where a gap is too long or at an end.</summary>
    internal static FilledSteps? Of(WeatherRows rows, EvenSteps steps, ProblemList problems)
    {
        FilledSteps filled = new() { Steps = steps };
        bool isWhole = true;
        for (Quantity quantity = 0; (int)quantity < WeatherColumn.QuantityCount; quantity++)
        {
            if (!rows.Has(quantity)) continue;
            double[] laid = new double[steps.Count];
            Array.Fill(laid, double.NaN);
            IReadOnlyList<double> read = rows.Of(quantity);
            for (int row = 0; row < read.Count; row++) laid[steps.Positions[row]] = read[row];
            filled.values[(int)quantity] = laid;
            isWhole &= filled.Fill(laid, quantity, rows, problems);
        }
        return isWhole ? filled : null;
    }

    /// <summary>One remark for each gap, with the columns that share it, in the order of time.</summary>
    internal IEnumerable<WeatherRemark> Remarks(DateTime startLocal) =>
        from gap in gaps
        orderby gap.From, gap.To
        select new WeatherRemark(WeatherRemarkKind.GapFilled)
        {
            StepCount = gap.To - gap.From, Columns = gap.Columns, FromLocal = startLocal + gap.From * Steps.Step, ToLocal = startLocal + gap.To * Steps.Step,
        };

    /// <summary>Takes the mean with the step before; a whole year closes on itself, else the first step keeps its own.</summary>
    internal void MoveHalfStepBack(Quantity quantity)
    {
        if (values[(int)quantity] is not { } series) return;
        double before = Steps.Count * Steps.Step == TimeSpan.FromDays(365) ? series[^1] : series[0];
        for (int i = 0; i < series.Length; i++) (series[i], before) = ((before + series[i]) / 2, series[i]);
    }

    private bool Fill(double[] series, Quantity quantity, WeatherRows rows, ProblemList problems)
    {
        bool isWhole = true;
        for (int i = 0; i < series.Length; i++)
        {
            if (!double.IsNaN(series[i])) continue;
            int to = i;
            while (to < series.Length && double.IsNaN(series[to])) to++;
            if (i == 0 || to == series.Length || (to - i) * Steps.Step > EvenSteps.LongestGap)
            {
                isWhole = false;
                int row = Math.Max(0, Array.BinarySearch(Steps.Positions, i) is >= 0 and int found ? found : 0);
                problems.Add(rows.Lines[row], 1, rows.NameOf(quantity), $"is empty from {Steps.First + i * Steps.Step:yyyy-MM-dd HH:mm} to {Steps.First + (to - 1) * Steps.Step:yyyy-MM-dd HH:mm}; gaps at an end or of more than {EvenSteps.LongestGap.TotalHours} h are not filled: give the values, or leave these rows out at an end of the file.");
            }
            else
            {
                double left = series[i - 1], rise = (series[to] - left) / (to - i + 1);
                for (int step = i; step < to; step++) series[step] = left + (step - i + 1) * rise;
                Note(i, to, rows.NameOf(quantity));
            }
            i = to;
        }
        return isWhole;
    }

    private void Note(int from, int to, string column)
    {
        int at = gaps.FindIndex(gap => gap.From == from && gap.To == to);
        if (at < 0) gaps.Add((from, to, [column]));
        else gaps[at].Columns.Add(column);
    }
}
