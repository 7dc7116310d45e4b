using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>
/// Rows that come round. Once as many rows as are repeated have come out as they did the time before, all further ones will: what a row comes to depends on its
/// words, on the row below and on what that row left behind for it, and all three are the same again. So they are kept as so many turns.
/// </summary>
internal sealed partial class PieceWorker
{
    /// <summary>Fewer are worked sooner than counted.</summary>
    private const int FewestAhead = 4;

    /// <summary>What a row leaves for the next, beside itself.</summary>
    private sealed record Left(int Rows, int Number, int Mishaps, string Colour, bool TurnsNext, bool StaysNext, EquatableArray<Step> Carried);

    /// <summary>What each row left, since a row instruction began to repeat.</summary>
    private sealed class Repeating(int period)
    {
        public int Period => period;

        public List<Left> Left { get; } = [];
    }

    /// <summary>
    /// Called after each row of a repeat: where the rows come round, takes those ahead at once, the last one apart (a stated count is compared with that one).
    /// </summary>
    /// <param name="repeat">What was seen of the repeat so far.</param>
    /// <param name="ahead">How many rows of it are still to come.</param>
    /// <returns>How many rows were taken.</returns>
    private int ComeRound(Repeating repeat, int ahead)
    {
        if (repeat.Period == 0 || context.Unroll) return 0;
        repeat.Left.Add(new Left(rows.Count, lastNumber, mishaps.Count, colour, turnsNext, staysNext, carried));
        int taken = Math.Min(ahead, MostRows - rows.Count) - 1;
        if (taken < FewestAhead || ground is not { Doubtful: false, AsStated: null } || !ReferenceEquals(ground.Row, rows[^1])) return 0;
        // Where the sides change, rows of one instruction come round after two.
        for (int cycle = repeat.Period; cycle <= 2 * repeat.Period; cycle += repeat.Period)
            if (ComesRound(repeat.Left, cycle))
            {
                Take(repeat.Left[^(1 + cycle - (taken % cycle))], cycle, taken);
                return taken;
            }
        return 0;
    }

    private bool ComesRound(List<Left> left, int cycle)
    {
        if (left.Count <= cycle || rows.Count <= 2 * cycle) return false;
        Left now = left[^1], before = left[^(1 + cycle)];
        if (now.Rows != before.Rows + cycle || now.Number != before.Number + cycle || now.Mishaps != before.Mishaps) return false;
        if (now.Colour != before.Colour || now.TurnsNext != before.TurnsNext || now.StaysNext != before.StaysNext || now.Carried.Identity != before.Carried.Identity) return false;
        for (int i = rows.Count - cycle; i < rows.Count; i++)
            if (!IsAgain(rows[i], rows[i - cycle], cycle)) return false;
        return true;
    }

    /// <summary>True where a row is another one over again, so many rows on.</summary>
    private static bool IsAgain(WorkedRow row, WorkedRow before, int cycle) =>
        row.Status == RowStatus.Checked && before.Status == RowStatus.Checked && row.Kind == before.Kind && row.Kind != RowKind.Foundation
        && row.Number == before.Number + cycle && row.Index == before.Index + cycle && row.Into == row.Index - 1 && before.Into == before.Index - 1
        && row.Runs.Identity is { } runs && runs == before.Runs.Identity && row.Counts.Identity == before.Counts.Identity && row.Spaces.Identity == before.Spaces.Identity
        && row.Total == before.Total && row.StoppedAt == before.StoppedAt && ReferenceEquals(row.Stated, before.Stated) && row.CountAgrees == before.CountAgrees
        && row.Side == before.Side && row.Turned == before.Turned && row.Joined == before.Joined && row.Spiral == before.Spiral
        && row.CalledBy == before.CalledBy && row.Section == before.Section;

    /// <summary>Goes on so many rows; <paramref name="leaves"/> is what the last of them leaves.</summary>
    private void Take(Left leaves, int cycle, int taken)
    {
        rows.ComeRound(cycle, taken);
        byNumber.ComeRound(lastNumber, cycle, taken);
        if (repeating.Last == lastNumber) repeating.Last += taken;
        lastNumber += taken;
        (colour, turnsNext, staysNext, carried) = (leaves.Colour, leaves.TurnsNext, leaves.StaysNext, leaves.Carried);
        ground = new Ground(rows[^1]);
    }

    /// <summary>After how many rows the words of a repeat come again; 0 where that can't be told from them.</summary>
    private int Period(params RowInstruction[] repeated)
    {
        int period = repeated.Length;
        foreach (AsRowStep same in repeated.SelectMany(row => row.Steps).OfType<AsRowStep>())
        {
            if (!same.IsUnchanged || same.PreviousRow || same.Rows.IsEmpty || same.Rows.Any(number => byNumber[number] is not { } row || row.Steps.Any(step => step is AsRowStep))) return 0;
            period *= same.Rows.Count;
        }
        return period <= MostRows ? period : 0;
    }
}
