using PatternStudio.Craft.Reading;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Writing.Completion;

/// <summary>How a line comes out in all sizes, worked after the rows above.</summary>
/// <param name="IsWrong">True where something goes wrong in it in any size.</param>
/// <param name="Sizes">The row in each size, with the rows of its piece; empty where it can't be read or worked in all of them.</param>
internal sealed record Trial(bool IsWrong, IReadOnlyList<(WorkedRows Rows, WorkedRow Row)> Sizes);

/// <summary>Works lines that might be written after the rows above: so that nothing is proposed that the row can't go on with.</summary>
internal sealed class Trials(RowsAbove above)
{
    /// <summary>Characters worked for one question, each as often as there are sizes: the writer waits for the answer.</summary>
    private const int Most = 150_000;

    /// <summary>The steps so far, and an ending or two, are tried however long the text is.</summary>
    private const int Fewest = 3;

    private readonly Dictionary<string, Trial> known = [];

    /// <summary>True while there is time for another: after the rows above of a very long text there soon is none.</summary>
    public bool HasTime => known.Count < Fewest || known.Count * (long)above.Text.Length * above.Pattern.Sizes.Count < Most;

    /// <summary>True where the line is known to come out right so far as it can be read; false where there is no time to know.</summary>
    public bool Holds(string line) => (known.ContainsKey(line) || HasTime) && !Of(line).IsWrong;

    /// <summary>How a line comes out. Where it says size lists and the rows above do not, it is worked in as many sizes as it says.</summary>
    public Trial Of(string line)
    {
        if (!known.TryGetValue(line, out Trial? trial)) known[line] = trial = Work(line);
        return trial;
    }

    private Trial Work(string line)
    {
        int start = above.Text.Length;
        Pattern pattern = PatternReader.Read(above.Text + line, above.Terms);
        bool wrong = pattern.Troubles.Any(trouble => trouble is { Kind: ReadingTroubleKind.SizeListLength } && trouble.Span.End > start);
        var sizes = new List<(WorkedRows, WorkedRow)>();
        for (int size = 0; size < pattern.Sizes.Count && !wrong; size++)
        {
            PatternWork work = PatternWorker.Work(pattern, size);
            wrong = work.Mishaps.Any(mishap => mishap.Kind != MishapKind.CannotWork && mishap.Span.End > start);
            if (LastOf(work.Fabric.Pieces, start) is { } last) sizes.Add(last);
        }

        return new Trial(wrong, wrong || sizes.Count < pattern.Sizes.Count ? [] : sizes);
    }

    /// <summary>The row that the line is; null where it is none, or not worked whole.</summary>
    private static (WorkedRows, WorkedRow)? LastOf(EquatableArray<WorkedPiece> pieces, int start)
    {
        if (pieces.Count == 0 || pieces[pieces.Count - 1].Rows is not { Count: > 0 } rows) return null;
        WorkedRow row = rows[^1];
        return row is { Status: RowStatus.Checked, Kind: not RowKind.Foundation } && row.CalledBy.End > start ? (rows, row) : null;
    }
}
