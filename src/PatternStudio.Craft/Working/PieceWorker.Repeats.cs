using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>Rows that stand for rows.</summary>
internal sealed partial class PieceWorker
{
    /// <summary>Puts the steps of the row referred to in the place of 'Rep Row 2'. Null where there is no such row.</summary>
    private EquatableArray<Step>? Resolve(EquatableArray<Step> steps, int number, int depth)
    {
        if (!steps.Any(step => step is AsRowStep)) return steps;
        if (depth <= 16 && steps is [AsRowStep { WithChanges: false } only] && Referred(only, number) is { } referred) return Resolve(OverStitches(referred, number), number, depth + 1);
        var resolved = new List<Step>();
        foreach (Step step in steps)
        {
            if (step is not AsRowStep same)
            {
                resolved.Add(step);
                continue;
            }
            if (same.WithChanges || depth > 16 || Referred(same, number) is not { } row)
            {
                if (!same.WithChanges && !IsBeforeTheText(same.Rows) && !context.Says(same.Span, " of ")) Report(new Mishap(MishapKind.NoSuchRow, same.Span) { Named = same.Rows.IsEmpty ? "" : same.Rows[0].ToString(), Row = $"Row {number}" });
                return null;
            }
            if (Resolve(OverStitches(row, number), number, depth + 1) is not { } inner) return null;
            resolved.AddRange(inner);
        }
        return resolved.ToEquatableArray();
    }

    /// <summary>'Row 2: same as Row 1', where Row 1 goes along the foundation: what were chains there are stitches here.</summary>
    private EquatableArray<Step> OverStitches(RowInstruction referred, int number)
    {
        bool alongChain = rows.FirstOrDefault(row => ReferenceEquals(row.Instruction.Steps.Identity, referred.Steps.Identity) && row.Kind != RowKind.Foundation) is { Into: >= 0 } first && rows[first.Into].Kind == RowKind.Foundation;
        if (!alongChain || number <= 1 || !referred.Steps.Any(step => step is RepeatStep repeat && repeat.Steps.Any(NamesNthChain))) return referred.Steps;
        if (!overStitches.TryGetValue(referred, out EquatableArray<Step> steps))
            overStitches[referred] = steps = referred.Steps.Select(step => step is RepeatStep repeat ? repeat with { Steps = repeat.Steps.Select(OverStitch).ToEquatableArray() } : step).ToEquatableArray();
        return steps;
    }

    private readonly Dictionary<RowInstruction, EquatableArray<Step>> overStitches = new(ReferenceEqualityComparer.Instance);

    private static bool NamesNthChain(Step step) => step is StitchStep { Where: { Choice: PlaceChoice.Nth, Within: null, Further: null, Kind.Noun: PlaceNoun.Chain } };

    private static Step OverStitch(Step step) =>
        NamesNthChain(step) && step is StitchStep stitch ? stitch with { Where = stitch.Where! with { Kind = new PlaceKind(PlaceNoun.StitchOrChain) } } : step;

    /// <summary>True where the first of the rows named comes before the first row told here: it is told elsewhere, or in prose.</summary>
    private bool IsBeforeTheText(EquatableArray<int> numbers) => !numbers.IsEmpty && !byNumber.IsEmpty && numbers.Min() < byNumber.Lowest;

    /// <summary>'Rows 4–20: Rep Rows 2 and 3': the rows are taken in turn, starting with the first of them at the first repeating row.</summary>
    private RowInstruction? Referred(AsRowStep same, int number)
    {
        if (same.PreviousRow || same.Rows.IsEmpty) return byNumber[FirstRepeating(same, number) - 1];
        int first = FirstRepeating(same, number);
        int wanted = same.Rows[(number - first) % same.Rows.Count];
        return wanted < number ? byNumber[wanted] : null;
    }

    /// <summary>The row whose words are worked: the one at the end of 'Rep Row 2'. Where it failed itself, its repeats fail with it.</summary>
    private RowInstruction Origin(RowInstruction row, int number)
    {
        for (int depth = 0; depth < 16 && row.Steps.FirstOrDefault(step => step is AsRowStep) is AsRowStep same && Referred(same, number) is { } referred; depth++)
            row = referred;
        return byInstruction.GetValueOrDefault(row, row);
    }

    /// <summary>The first of the rows that share this very reference.</summary>
    private int FirstRepeating(AsRowStep same, int number)
    {
        // Known from the row before: to walk back from each of a thousand rows would take long.
        if (ReferenceEquals(repeating.Reference, same) && repeating.Last >= number - 1 && repeating.First <= number)
        {
            repeating.Last = number;
            return repeating.First;
        }
        int first = number;
        while (byNumber[first - 1] is { } before && before.Steps.Any(step => ReferenceEquals(step, same))) first--;
        repeating = (same, first, number);
        return first;
    }

    private (AsRowStep? Reference, int First, int Last) repeating;

    private void Repeat(RepeatRows repeat)
    {
        int[] numbers = !repeat.Rows.IsEmpty ? [.. repeat.Rows] : [.. Enumerable.Range(lastNumber - (repeat.LastRows ?? 1) + 1, repeat.LastRows ?? 1)];
        RowInstruction?[] instructions = [.. numbers.Select(number => byNumber[number])];
        int missing = Array.FindIndex(instructions, row => row is null);
        if (missing >= 0)
        {
            if (lastNumber > 0 && !IsBeforeTheText(repeat.Rows)) Report(new Mishap(MishapKind.NoSuchRow, repeat.Span) { Named = numbers[missing].ToString() });
            return;
        }
        if (repeat.Until == RowsUntil.Measures && (context.MillimetresPerRow is null || repeat.Millimetres is null))
        {
            // How many rows reach that length is not known; nor is the row that the next one is worked into.
            if (ground is not null) ground = ground with { Doubtful = true };
            return;
        }
        int start = lastNumber;
        var turns = new Repeating(Period(instructions!));
        for (int i = 0; rows.Count <= MostRows && !IsDone(repeat, numbers, i, start); i++)
        {
            RowInstruction row = instructions[i % instructions.Length]!;
            RowInstruction again = Unheaded(row);
            byInstruction[again] = byInstruction.GetValueOrDefault(row, row);
            WorkRow(lastNumber + 1, again, repeat.Span);
            i += ComeRound(turns, Ahead(repeat, numbers, i + 1));
        }
        if (repeat.Stated is { } stated && rows.Count > 0 && rows[^1].Status == RowStatus.Checked) CompareLast(stated);
    }

    /// <summary>A repeated row states no count of its own: the count of the row it repeats may hold for that row only.</summary>
    private static RowInstruction Unheaded(RowInstruction row) => row with { Stated = null, Heading = row.Heading with { Side = null } };

    private void CompareLast(StatedCount stated)
    {
        WorkedRow last = rows[^1];
        var tally = new Tally(last.Runs, context.Conventions);
        (bool? agrees, StatedItem? item, long worked) = StatedComparison.Compare(stated, tally, context.Size);
        rows.ReplaceLast(last with { Stated = stated, CountAgrees = agrees });
        if (ground is { } below && ReferenceEquals(below.Row, last)) ground = below with { Row = rows[^1] };
        if (agrees == false && ground is not { Doubtful: true })
            Report(new Mishap(MishapKind.CountDiffers, item!.Span) { Wanted = item.Number.For(context.Size) ?? 0, Found = worked, Named = Name(item), Row = last.Label });
    }

    /// <summary>How many rows are still to come, where that is known beforehand; else 0.</summary>
    private int Ahead(RepeatRows repeat, int[] numbers, int done)
    {
        int count = context.Number(repeat.Count) ?? 0;
        return repeat.Until switch
        {
            RowsUntil.MoreRows => count - done,
            RowsUntil.MoreTimes => (int)Math.Min(MostRows, ((long)count * numbers.Length) - done),
            RowsUntil.RowNumber => count - lastNumber,
            _ => 0,
        };
    }

    private bool IsDone(RepeatRows repeat, int[] numbers, int done, int start)
    {
        int count = context.Number(repeat.Count) ?? 0;
        bool cycle = done % numbers.Length == 0;
        return repeat.Until switch
        {
            RowsUntil.MoreRows => done >= count,
            RowsUntil.MoreTimes => done >= (long)count * numbers.Length,
            RowsUntil.RowNumber => lastNumber >= count,
            RowsUntil.StitchesRemain => ReachedCount(count, done, start),
            RowsUntil.Measures => ReachedLength(repeat, numbers, done),
            _ => done > 0 && cycle,
        };
    }

    /// <summary>'until 3 sts remain': stops where the count is reached, passed, or no longer moves.</summary>
    private bool ReachedCount(int count, int done, int start)
    {
        WorkedRow last = rows[^1];
        if (last.Status != RowStatus.Checked) return true;
        if (last.Total == count) return true;
        return done >= 2 && rows.Count >= 3 && Math.Abs(last.Total - count) >= Math.Abs(rows[^3].Total - count) && lastNumber > start + 1;
    }

    /// <summary>'until piece measures 40 cm': through the gauge that the text states; none where it states none.</summary>
    private bool ReachedLength(RepeatRows repeat, int[] numbers, int done)
    {
        if (done > MostRows / 4) return true;
        bool lastRowFits = repeat.EndingWith is not { } ending || done > 0 && numbers[(done - 1) % numbers.Length] == ending;
        if (context.MillimetresPerRow is not { } perRow || repeat.Millimetres?.For(context.Size) is not { } wanted) return true;
        return rows.Count(row => row.Kind != RowKind.Foundation) * perRow >= wanted - perRow / 2 && lastRowFits;
    }
}
