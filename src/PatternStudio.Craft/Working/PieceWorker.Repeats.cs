using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>Rows that stand for rows.</summary>
internal sealed partial class PieceWorker
{
    /// <summary>Puts the steps of the row referred to in the place of 'Rep Row 2'. Null where there is no such row.</summary>
    private EquatableArray<Step>? Resolve(EquatableArray<Step> steps, int number, int depth)
    {
        if (steps.FirstOrDefault(step => step is RepeatStep { Ending: [AsRowStep] }) is RepeatStep { Ending: [AsRowStep like] } closing)
        {
            if (depth > 16 || Referred(like, number) is not var (other, itsNumber) || Resolve(other.Steps, itsNumber, depth + 1) is not { } known || RowChanges.EndingOf(known) is not { IsEmpty: false } ending) return null;
            return Resolve(RowChanges.WithEnding(steps, closing, ending), number, depth + 1);
        }
        if (!steps.Any(step => step is AsRowStep)) return steps;
        if (depth <= 16 && steps is [AsRowStep { IsUnchanged: true } only] && Referred(only, number) is var (referred, first)) return Resolve(WhateverIsThere(OverStitches(referred, number)), first, depth + 1);
        var resolved = new List<Step>();
        EquatableArray<Step> restated = [];
        foreach (Step step in steps)
        {
            if (Restates(step, restated)) continue;
            restated = [];
            if (step is not AsRowStep same)
            {
                resolved.Add(step);
                continue;
            }
            if (same.WithChanges && !OnlySaysGrowth(same.Span, same.Rows) || depth > 16 || Referred(same, number) is not var (row, named))
            {
                if (!same.WithChanges && !IsBeforeTheText(same.Rows) && !context.Says(same.Span, " of ")) Report(new Mishap(MishapKind.NoSuchRow, same.Span) { Named = same.Rows.IsEmpty ? "" : same.Rows[0].ToString(), Row = $"Row {number}" });
                return null;
            }
            if (Resolve(WhateverIsThere(OverStitches(row, number)), named, depth + 1) is not { } inner || RowChanges.Apply(inner, same, context.Number) is not { } changed) return null;
            resolved.AddRange(same.Moved is { } moved ? Moved(changed, moved) : changed);
            restated = inner;
        }
        return resolved.ToEquatableArray();
    }

    /// <summary>'Rep Row 3, increasing 8 dc each row': true where the rows named grow by so many as they stand.</summary>
    private bool OnlySaysGrowth(TextSpan words, IEnumerable<int> numbers) =>
        ToldGrowth.Of(context.Pattern.Source.Slice(words)) is { } told && numbers.Any() && numbers.All(number => GrowthOf(number) == told);

    private long? GrowthOf(int number)
    {
        WorkedRow? row = rows.LastOrDefault(worked => worked.Number == number && worked.Status == RowStatus.Checked);
        return row is { Into: >= 0 and var below } ? new Tally(row.Runs, context.Conventions).Total - new Tally(rows[below].Runs, context.Conventions).Total : null;
    }

    /// <summary>'The same as the 5th, close double crochet, increasing in the centre of each scallop': words that only say again what that row does.</summary>
    private static bool Restates(Step step, EquatableArray<Step> row) => step switch
    {
        StitchStep { Where: { Choice: PlaceChoice.Each, Count: null } } each => row.OfType<StitchStep>().Any(other => other.Stitch == each.Stitch && other.Where is { Choice: PlaceChoice.Each, Count: null }),
        UncountedStep { Reason: UncountedReason.Shaping } => row.Any(other => other is UncountedStep { Reason: UncountedReason.Shaping }),
        _ => false,
    };

    /// <summary>The row's words with one stitch in another place; what was missed between such stitches is not missed here.</summary>
    private static EquatableArray<Step> Moved(EquatableArray<Step> steps, StitchStep moved) =>
        steps.Where(step => step is not SkipStep).Select(step => step switch
        {
            StitchStep stitch when stitch.Stitch == moved.Stitch => stitch with { Where = moved.Where, PerPlace = moved.PerPlace, Count = null },
            RepeatStep repeat => repeat with { Steps = Moved(repeat.Steps, moved) },
            _ => step,
        }).ToEquatableArray();

    /// <summary>'Row 2: same as Row 1', where Row 1 goes along the foundation: what were chains there are stitches here.</summary>
    private EquatableArray<Step> OverStitches(RowInstruction referred, int number)
    {
        bool alongChain = rows.FirstOrDefault(row => ReferenceEquals(row.Instruction.Steps.Identity, referred.Steps.Identity) && row.Kind != RowKind.Foundation) is { Into: >= 0 } first && rows[first.Into].Kind == RowKind.Foundation;
        if (!alongChain || number <= 1 || !referred.Steps.Any(HoldsChain)) return referred.Steps;
        if (!overStitches.TryGetValue(referred, out EquatableArray<Step> steps))
            overStitches[referred] = steps = referred.Steps.Select(OverStitch).ToEquatableArray();
        return steps;
    }

    /// <summary>
    /// 'A double in each double of last row', worked again over a row of doubles and trebles ('4. Same as 2d row'): the words name what that row met; here it is whatever
    /// stitch is there.
    /// </summary>
    private EquatableArray<Step> WhateverIsThere(EquatableArray<Step> steps)
    {
        if (steps.Count(step => step is StitchStep) != 1 || !steps.All(step => step is StitchStep { Where: { Choice: PlaceChoice.Each, Count: null, Kind.Noun: PlaceNoun.Stitch } } or ChainStep or TurnStep or RemarkStep)) return steps;
        if (OnlyStitchBelow() is not null) return steps;
        if (!ofAnyKind.TryGetValue(steps, out EquatableArray<Step> any))
            ofAnyKind[steps] = any = steps.Select(step => step is StitchStep stitch ? stitch with { Where = stitch.Where! with { Kind = PlaceKind.AnyStitch } } : step).ToEquatableArray();
        return any;
    }

    private readonly Dictionary<EquatableArray<Step>, EquatableArray<Step>> ofAnyKind = [];

    private readonly Dictionary<RowInstruction, EquatableArray<Step>> overStitches = new(ReferenceEqualityComparer.Instance);

    private static bool NamesChain(Step step) =>
        step is StitchStep { Where: { Choice: PlaceChoice.Nth or PlaceChoice.Each, Within: null, Further: null, Kind.Noun: PlaceNoun.Chain } };

    private static bool HoldsChain(Step step) => NamesChain(step) || step is RepeatStep repeat && repeat.Steps.Any(HoldsChain);

    private static Step OverStitch(Step step) => step switch
    {
        RepeatStep repeat => repeat with { Steps = repeat.Steps.Select(OverStitch).ToEquatableArray() },
        StitchStep { Where: { } where } stitch when NamesChain(step) => stitch with { Where = where with { Kind = new PlaceKind(PlaceNoun.StitchOrChain) } },
        _ => step,
    };

    /// <summary>True where the first of the rows named comes before the first row told here: it is told elsewhere, or in prose.</summary>
    private bool IsBeforeTheText(EquatableArray<int> numbers) => !numbers.IsEmpty && !byNumber.IsEmpty && numbers.Min() < byNumber.Lowest;

    /// <summary>'Rows 4–20: Rep Rows 2 and 3': the rows are taken in turn, starting with the first of them at the first repeating row.</summary>
    /// <param name="number">The number of the row that says so.</param>
    /// <returns>The row named, and its number; null where there is none.</returns>
    private (RowInstruction Row, int Number)? Referred(AsRowStep same, int number)
    {
        int first = FirstRepeating(same, number);
        int wanted = same.PreviousRow || same.Rows.IsEmpty ? first - 1 : same.Rows[(number - first) % same.Rows.Count];
        return wanted < number && byNumber[wanted] is { } row ? (row, wanted) : null;
    }

    /// <summary>The row whose words are worked: the one at the end of 'Rep Row 2'. Where it failed itself, its repeats fail with it.</summary>
    private RowInstruction Origin(RowInstruction row, int number)
    {
        for (int depth = 0; depth < 16 && row.Steps.FirstOrDefault(step => step is AsRowStep) is AsRowStep same && Referred(same, number) is var (referred, named); depth++)
            (row, number) = (referred, named);
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

    /// <summary>
    /// 'Repeat the last 2 rows 3 times. Next 4 rows: Continue in same manner, but do not increase in any row': those rows go on, without the shaping told in them. Null for other words.
    /// </summary>
    private EquatableArray<Step>? InSameManner(EquatableArray<Step> steps, int number)
    {
        if (rowsInCycle == 0 || steps is not [RemarkStep like, UncountedStep { Reason: UncountedReason.Shaping } without] || byNumber[number - rowsInCycle] is not { } row) return null;
        bool goesOn = like.Text.StartsWith("continue", StringComparison.OrdinalIgnoreCase) && like.Text.EndsWith("in same manner", StringComparison.OrdinalIgnoreCase);
        if (!goesOn || !without.Text.StartsWith("but do not", StringComparison.OrdinalIgnoreCase)) return null;
        if (!inSameManner.TryGetValue(row, out EquatableArray<Step> plain))
            inSameManner[row] = plain = row.Steps.Where(step => step is not UncountedStep { Reason: UncountedReason.Shaping }).ToEquatableArray();
        return plain;
    }

    private readonly Dictionary<RowInstruction, EquatableArray<Step>> inSameManner = new(ReferenceEqualityComparer.Instance);

    /// <summary>How many rows the last repeat of rows went through in turn; 0 where another row has come since.</summary>
    private int rowsInCycle;

    /// <summary>
    /// 'Rep the last rnd until there are 21 sc in each section. 12th Rnd: …', 'Rep Row 2 for 10 inches. Row 30: …': how often can't be told from the words, but the number of the
    /// row that follows tells it.
    /// </summary>
    private RepeatRows UpToRowAhead(RepeatRows repeat, IEnumerable<PieceItem> behind)
    {
        bool untold = repeat.Until == RowsUntil.AsWished || repeat.Until == RowsUntil.Measures && context.MillimetresPerRow is null;
        if (!untold || behind.FirstOrDefault(item => item is not Passage) is not RowInstruction next || FirstNumber(next, context.Size) is not { } number || number <= lastNumber + 1) return repeat;
        int cycle = Math.Max(1, repeat.Rows.IsEmpty ? repeat.LastRows ?? 1 : repeat.Rows.Count);
        return (number - 1 - lastNumber) % cycle == 0 && number - lastNumber < MostRowsUntold ? repeat with { Until = RowsUntil.RowNumber, Count = SizedNumber.Of(number - 1) } : repeat;
    }

    /// <summary>A gap in the numbers wider than this is a slip of the pen.</summary>
    private const int MostRowsUntold = 200;

    private static readonly string[] ShapingWords = ["increas", "decreas", "widen", "narrow"];

    private void Repeat(RepeatRows repeat)
    {
        if (repeat.Shaping is null && ShapingWords.Any(word => context.Says(repeat.Span, word)) && !OnlySaysGrowth(repeat.Span, repeat.Rows))
        {
            // 'Rep the last row increasing 1 st at each end until …': what is repeated is not the row as told.
            if (ground is not null) ground = ground with { Doubtful = true };
            return;
        }

        int[] numbers = !repeat.Rows.IsEmpty ? [.. repeat.Rows] : [.. Enumerable.Range(lastNumber - (repeat.LastRows ?? 1) + 1, repeat.LastRows ?? 1)];
        if (numbers.Length == 0) return; // 'the last 0 rows'
        RowInstruction?[] instructions = [.. numbers.Select(number => byNumber[number])];
        if (repeat.IsEven && ShapesLast())
        {
            // 'Work even' behind a row that increases: that row is not what is meant. In lace, which rows keep the pattern is for the maker to see.
            if (!IsPlainFabric(rows[^1]) || EvenRow(repeat.Span) is not { } even)
            {
                if (ground is not null) ground = ground with { Doubtful = true };
                return;
            }
            (numbers, instructions) = ([even.Number], [even.Row]);
        }
        if (repeat.Shaping is { } shaping)
        {
            if (ShapingRow(shaping) is not { } shaped)
            {
                if (ground is not null) ground = ground with { Doubtful = true };
                return;
            }
            (numbers, instructions) = ([shaped.Number], [shaped.Row]);
        }
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
        RowInstruction[] meant = [.. instructions.Select((row, i) => AsItWas(row!, numbers[i]))];
        var turns = new Repeating(Period(meant));
        for (int i = 0; !IsDone(repeat, numbers, i, start) && !IsFull(repeat.Span); i++)
        {
            RowInstruction row = instructions[i % instructions.Length]!;
            RowInstruction again = Unheaded(meant[i % meant.Length]);
            byInstruction[again] = Origin(row, numbers[i % numbers.Length]);
            WorkRow(lastNumber + 1, again, repeat.Span);
            i += ComeRound(turns, Ahead(repeat, numbers, i + 1));
        }
        rowsInCycle = numbers.Length;
        if (repeat.Stated is { } stated && rows.Count > 0 && rows[^1].Status == RowStatus.Checked) CompareLast(stated);
    }

    /// <summary>'Rep dec row': the last row whose heading says 'dec'. Null where none does.</summary>
    private (int Number, RowInstruction Row)? ShapingRow(string named)
    {
        for (int i = rows.Count - 1; i >= sectionStart && i >= 0; i--)
            if (rows[i].Instruction.Heading.Text.Contains(named, StringComparison.OrdinalIgnoreCase)) return (rows[i].Number, rows[i].Instruction);
        return null;
    }

    /// <summary>True where the row worked last has not as many stitches as the row that it is worked into.</summary>
    private bool ShapesLast() =>
        rows.Count > 0 && rows[^1] is { Status: RowStatus.Checked, Into: >= 0 and var into } last && rows[into] is { Status: RowStatus.Checked } below && below.Kind != RowKind.Foundation && below.Total != last.Total;

    private bool IsPlainFabric(WorkedRow row) => row.Spaces.IsEmpty && rows[row.Into].Spaces.IsEmpty && IsPlain(row.Instruction.Steps);

    /// <summary>In lace the rows differ in their counts without any shaping: 'even' is then even in the pattern.</summary>
    private static bool IsPlain(EquatableArray<Step> steps) => steps.All(step => step is not (SkipStep or GroupStep or EitherStep) && (step is not RepeatStep repeat || IsPlain(repeat.Steps)));

    /// <summary>The row told last that keeps its count in the same stitch; where none is, one such stitch in each. Null where the row below has several kinds.</summary>
    private (int Number, RowInstruction Row)? EvenRow(TextSpan words)
    {
        if (new Tally(rows[^1].Runs, context.Conventions).OnlyBase is not { } stitch) return null;
        for (int i = rows.Count - 2; i >= 0; i--)
            if (rows[i] is { Status: RowStatus.Checked, Into: >= 0 and var into } row && rows[into].Kind != RowKind.Foundation && rows[into].Total == row.Total
                && new Tally(row.Runs, context.Conventions).OnlyKind == stitch) return (row.Number, row.Instruction);
        return EvenRows.Steps(new StitchId(stitch), words) is { } steps ? (lastNumber, Unheaded(rows[^1].Instruction) with { Steps = steps }) : null;
    }

    /// <summary>
    /// 'Rep Row 5' where Row 5 says 'Rep Rows 2 and 3': the row that Row 5 was is meant, not the next of those in turn. Where its words go on to even rows ('12th Row:
    /// …, then work 1 row even'), those have numbers of their own: the 12th is the one row.
    /// </summary>
    private RowInstruction AsItWas(RowInstruction row, int number)
    {
        if (row.Steps.Any(step => step is AsRowStep) && Resolve(row.Steps, number, 0) is { } steps) row = row with { Steps = steps };
        return EvenRows.Split(row.Steps) is { Even: > 0, Own: { IsEmpty: false } own } && own.Any(step => step is not RemarkStep) ? row with { Steps = own } : row;
    }

    /// <summary>
    /// 'Continue in this way, adding 1 double between widenings, until you have 30 between widenings': the rows told last, with the next numbers. Where the row
    /// numbered next shows that other rows were meant, what it is worked into is not known.
    /// </summary>
    private void Continue(ContinueInWay onward, RowInstruction? following)
    {
        if (byNumber[lastNumber - 1] is not { } before || byNumber[lastNumber] is not { } last
            || Progression.Of(before.Steps, last.Steps, context.Number) is not { } rule || context.Number(onward.Last) is not { } wanted
            || wanted <= rule.Number || (wanted - rule.Number) % rule.Growth != 0
            || following is not null && FirstNumber(following, context.Size) is { } next && next != lastNumber + (wanted - rule.Number) / rule.Growth + 1)
        {
            if (ground is not null) ground = ground with { Doubtful = true };
            return;
        }
        for (int number = rule.Number + rule.Growth; number <= wanted && !IsFull(onward.Span); number += rule.Growth)
            WorkRow(lastNumber + 1, Unheaded(last) with { Steps = rule.With(number) }, onward.Span);
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
        if (done > MostRows / 4)
        {
            full ??= repeat.Span;
            Report(new Mishap(MishapKind.TooLarge, repeat.Span) { Wanted = MostRows / 4 });
            return true;
        }
        bool lastRowFits = repeat.EndingWith is not { } ending || done > 0 && numbers[(done - 1) % numbers.Length] == ending;
        if (context.MillimetresPerRow is not { } perRow || repeat.Millimetres?.For(context.Size) is not { } wanted) return true;
        return rows.Count(row => row.Kind != RowKind.Foundation) * perRow >= wanted - perRow / 2 && lastRowFits;
    }
}
