using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Checking;

/// <summary>
/// How the count goes on while rows are repeated: 'Rows 3 to 25: each row adds 2 stitches', 'each repeat of 2 rows keeps 21 stitches'. Found by
/// working the rows, and kept only where the runs of the rows prove it: see <see cref="GrowthLaws"/>.
/// </summary>
/// <param name="Section">The heading that the rows stand under; empty where there is none.</param>
/// <param name="FirstRow">The first row that it holds for.</param>
/// <param name="LastRow">The last.</param>
/// <param name="Period">After how many rows the instructions come again; at least 1.</param>
/// <param name="Step">Stitches that one period adds; negative where it takes away, 0 where the count stays.</param>
/// <param name="Starts">The totals of the first period's rows: row FirstRow + i + k × Period has Starts[i] + k × Step stitches.</param>
/// <param name="Round">True for rounds.</param>
public sealed record GrowthLaw(string Section, int FirstRow, int LastRow, int Period, long Step, EquatableArray<long> Starts, bool Round)
{
    /// <summary>The law in a sentence for the designer.</summary>
    public string Sentence => $"{Rows}: {Change}{Formula}.";

    private string Rows => $"{(Round ? "Rnds" : "Rows")} {FirstRow} to {LastRow}";

    private string Change
    {
        get
        {
            string each = Period == 1 ? Round ? "each round" : "each row" : $"each repeat of {Period} {(Round ? "rounds" : "rows")}";
            long size = Math.Abs(Step);
            return Step == 0 ? $"{each} keeps the count" : $"{each} {(Step > 0 ? "adds" : "takes away")} {size} {(size == 1 ? "stitch" : "stitches")}";
        }
    }

    /// <summary>'; row n has 2n + 1' for a law of every row; nothing where the count stays or the rows of a period differ.</summary>
    private string Formula
    {
        get
        {
            if (Period != 1 || Step == 0) return "";
            long rest = Starts[0] - Step * FirstRow;
            string times = Step == 1 ? "n" : Step == -1 ? "−n" : $"{(Step < 0 ? "−" : "")}{Math.Abs(Step)}n";
            string linear = rest == 0 ? times : Step < 0 ? $"{rest} − {(Step == -1 ? "" : Math.Abs(Step).ToString())}n" : $"{times} {(rest < 0 ? "−" : "+")} {Math.Abs(rest)}";
            return $"; {(Round ? "round" : "row")} n has {linear} stitches";
        }
    }
}
