using PatternStudio.Craft.Reading.Headings;
using PatternStudio.Craft.Reading.Places;
using PatternStudio.Craft.Reading.Steps;
using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Lines;

/// <summary>
/// Reads rows told by other rows: 'Rep Row 2', 'As Row 2', 'same as 5th row' as a row's own words, and 'Rep Rows 2 and 3 for 12 more rows'
/// as an entry of its own.
/// </summary>
internal static class RowReferences
{
    private const int MostTimes = 100;
    private static readonly Phrase As = new("and? work|make|follow the? same? as|like|directions for? in? the? directions? for? the?");
    private static readonly Phrase SameAs = new("the? same as|like for? in? the?");
    private static readonly Phrase InTheSameWay = new("work in the? same way|manner|fashion as|like");
    private static readonly Phrase Same = new("the? work? same|like as? for? in?");
    private static readonly Phrase LikeFor = new("and? work? like|as for? in? the?");
    private static readonly Phrase RowWord = new("row|rnd");
    private static readonly Phrase Rep = new("cont? to? rep|alternate|alternating|work the? instructions|directions? for? of? the?");
    private static readonly Phrase Last = new("last|prev");
    private static readonly Phrase OfPiece = new("of|in|on|until|to the?");
    private static readonly Phrase Then = new("and? then rep?");
    private static readonly Phrase EndingWithRow = new("end|finishing with|on|after a|an? row|rnd|rs|ws|right|wrong");
    private static readonly Phrase MoreInEach = new("work # more");
    private static readonly Phrase UntilWords = new("until|till");
    private static readonly Phrase AlternateWords = new("alternately|in turn|order|sequence");

    /// <summary>The rows named: 'Row 2', 'Rows 2 and 3', 'the 3rd, 4th and 5th rows', 'last row', 'last 2 rows'.</summary>
    public sealed record Named(EquatableArray<int> Rows, bool Previous, int? LastRows);

    /// <summary>Takes the rows named; null where none are.</summary>
    public static Named? TakeRows(Cursor cursor)
    {
        int from = cursor.At;
        cursor.TakeWord("the");
        if (cursor.Take(Last))
        {
            int? rows = Numbers.TakePlain(cursor);
            if (cursor.TakeWord("row") || cursor.TakeWord("rnd")) return new Named([], true, rows);
        }
        else if (cursor.TakeWord("row") || cursor.TakeWord("rnd") || cursor.Now.IsWord("r") && cursor.Ahead(1).Kind == TokenKind.Number && cursor.TakeWord("r"))
        {
            if (cursor.Kind == TokenKind.Number && Numbers.TakePlain(cursor) is { } first) return new Named(RowNumbers.TakeMore(cursor, first), false, null);
        }
        else if (Numbers.TakeOrdinal(cursor) is { } ordinal)
        {
            EquatableArray<int> rows = RowNumbers.TakeMoreOrdinals(cursor, ordinal);
            if (cursor.TakeWord("row") || cursor.TakeWord("rnd")) return new Named(rows, false, null);
        }
        cursor.At = from;
        return null;
    }

    /// <summary>'Rep Row 2', 'As Row 2' as (the beginning of) a row's body.</summary>
    public static bool ReadAsRow(Cursor cursor, StepList steps)
    {
        int from = cursor.At;
        if (cursor.Now.IsWord("and") && cursor.Context.Source.Slice(cursor.Ahead(1).Span).EndsWith("ing", StringComparison.OrdinalIgnoreCase)) return false;
        if (ReadOrdinalsOnly(cursor, steps)) return true;
        bool said = cursor.Take(InTheSameWay) || cursor.Take(As) || cursor.Take(SameAs) || cursor.Take(Rep) || cursor.TakeWord("as") || cursor.Take(LikeFor);
        if (!said || TakeRows(cursor) is not { } named)
        {
            cursor.At = from;
            return false;
        }
        EquatableArray<int> rows = TakeThenRows(cursor, named.Rows);
        SizedNumber? times = TakeTimes(cursor);
        if (times is { IsPlain: true } && times.Values[0] is > 0 and < MostTimes and { } told)
        {
            // 'Rep Rows 3 and 4 twice, then rep Row 3'.
            EquatableArray<int> inAll = Enumerable.Repeat(rows, told).SelectMany(row => row).ToEquatableArray();
            EquatableArray<int> more = TakeThenRows(cursor, inAll);
            if (more.Count > inAll.Count) (rows, times) = (more, null);
        }
        cursor.Take(AlternateWords);
        if (cursor.Is(OfPiece)) Clauses.TakeToComma(cursor);
        TakeEnding(cursor);
        StitchStep? moved = TakeAlways(cursor);
        steps.Add(RowChangeWords.Take(cursor, new AsRowStep(rows, default) { PreviousRow = named.Previous, Times = times, Moved = moved }, from));
        return true;
    }

    /// <summary>'The same as the 5th', 'Like the 1st and 2nd', 'Same as 10th row, …'.</summary>
    private static bool ReadOrdinalsOnly(Cursor cursor, StepList steps)
    {
        int from = cursor.At;
        if (cursor.Take(Same))
        {
            cursor.TakeWord("the");
            if (cursor.Take(Last) && !cursor.Is(RowWord)) return AddReference(cursor, steps, from, [], previous: true);
            if (Numbers.TakeOrdinal(cursor) is { } first)
            {
                EquatableArray<int> rows = RowNumbers.TakeMoreOrdinals(cursor, first);
                if (!cursor.Is(RowWord) && (cursor.AtEnd || Cursor.IsSeparator(cursor.Kind))) return AddReference(cursor, steps, from, rows, previous: false);
            }
        }
        cursor.At = from;
        return false;
    }

    private static bool AddReference(Cursor cursor, StepList steps, int from, EquatableArray<int> rows, bool previous)
    {
        StitchStep? moved = TakeAlways(cursor);
        steps.Add(RowChangeWords.Take(cursor, new AsRowStep(rows, default) { PreviousRow = previous, Moved = moved }, from));
        return true;
    }

    /// <summary>', the 1 double always on the 3rd chain': the stitch of that row goes there, and nothing is missed between.</summary>
    private static StitchStep? TakeAlways(Cursor cursor)
    {
        int from = cursor.At;
        while (cursor.Kind is TokenKind.Comma or TokenKind.Dash or TokenKind.Dot or TokenKind.Semicolon) cursor.At++;
        cursor.TakeWord("the");
        SizedNumber? number = Numbers.Take(cursor);
        if (cursor.TakeStitch() is { } stitch && cursor.TakeWord("always") && Placements.Take(cursor) is { Further: null } where && (cursor.AtEnd || Cursor.IsSeparator(cursor.Kind)))
        {
            if (where is { Choice: PlaceChoice.Nth or PlaceChoice.First, Kind.Noun: PlaceNoun.Chain, Within: null }) where = where with { Choice = PlaceChoice.Nth, Ordinal = where.Ordinal ?? 1, Within = PlaceKind.ChainSpace() };
            return new StitchStep(stitch, number ?? SizedNumber.Of(1, where.Span), null, where, cursor.SpanFrom(from));
        }
        cursor.At = from;
        return null;
    }

    /// <summary>'Rep Row 6, then Row 7, then Row 6', 'Rep Rows 2 and 3 once, then rep Row 2 once more'.</summary>
    private static EquatableArray<int> TakeThenRows(Cursor cursor, EquatableArray<int> rows)
    {
        var all = rows.ToList();
        for (int from = cursor.At; ; from = cursor.At)
        {
            cursor.Take(TokenKind.Comma);
            if (cursor.Take(Then) && TakeRows(cursor) is { Previous: false } more) all.AddRange(Enumerable.Repeat(more.Rows, TimesSaid(cursor)).SelectMany(row => row));
            else
            {
                cursor.At = from;
                return all.ToEquatableArray();
            }
        }
    }

    private static int TimesSaid(Cursor cursor)
    {
        int from = cursor.At;
        if (TakeTimes(cursor) is { IsPlain: true } times && times.Values[0] is > 0 and < MostTimes and { } said) return said;
        cursor.At = from;
        return 1;
    }

    /// <summary>', ending with a Row 2', 'until 3 sts remain': the heading says which rows they are.</summary>
    private static void TakeEnding(Cursor cursor)
    {
        int from = cursor.At;
        cursor.Take(TokenKind.Comma);
        if (cursor.Take(MoreInEach) || cursor.Take(EndingWithRow) || cursor.Take(UntilWords)) Clauses.TakeToComma(cursor);
        else cursor.At = from;
    }

    private static SizedNumber? TakeTimes(Cursor cursor)
    {
        int from = cursor.At;
        cursor.Take(TokenKind.Comma);
        if (Extents.TakeTimes(cursor) is { } times) return times.Count;
        cursor.At = from;
        return null;
    }

    /// <summary>'…, turn, repeat 6th, 7th, 8th and 9th rows 20 times': behind the words of a row, rows named with a number of times are rows of their own.</summary>
    public static RepeatRows? ReadRepeatOfRows(Cursor cursor, StepList steps)
    {
        int from = cursor.At;
        if (RowRepeats.Take(cursor) is { Rows.Count: > 1, Until: RowsUntil.MoreTimes } repeat && steps.Steps.Any(step => step is StitchStep or GroupStep or RepeatStep)) return repeat;
        cursor.At = from;
        return null;
    }

    /// <summary>'Next row: Rep dec row.': that row once.</summary>
    private static bool OnceMore(ReadingContext context, ref RepeatRows repeat)
    {
        if (context.LineHasNoHeading || !context.HeadingIsNext || repeat is not { Shaping: not null, Until: RowsUntil.AsWished }) return false;
        repeat = repeat with { Until = RowsUntil.MoreRows, Count = SizedNumber.Of(1) };
        return true;
    }

    /// <summary>'Rep Rows 2 and 3 for 12 more rows', 'Repeat 2nd row until piece measures 40 cm': an entry of its own.</summary>
    public static RepeatRows? ReadRepeat(Cursor cursor, StepList steps)
    {
        int from = cursor.At;
        if (RowRepeats.Take(cursor) is { } repeat && (OnceMore(cursor.Context, ref repeat) || cursor.Context.LineHasNoHeading || cursor.Context.HeadingIsNext && repeat.Until != RowsUntil.AsWished || !steps.Steps.All(step => step is RemarkStep or CountedSoFar or ColourStep))) return repeat;
        cursor.At = from;
        return null;
    }
}
