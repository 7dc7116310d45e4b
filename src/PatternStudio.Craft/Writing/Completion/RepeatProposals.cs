using System.Buffers;

namespace PatternStudio.Craft.Writing.Completion;

/// <summary>How often steps are worked again: as often as the row comes out with, in every size.</summary>
internal sealed class RepeatProposals(RowsAbove above, Trials trials)
{
    /// <summary>All that can be typed of '8 (9, 10) times'.</summary>
    private static readonly SearchValues<char> AfterBracket = SearchValues.Create("0123456789 (,)times");

    private string Across => above.Around ? "around" : "across";

    /// <param name="line">The line up to the cursor.</param>
    /// <param name="cursor">Where it ends.</param>
    /// <param name="soFar">The row with the repeat's steps worked once; null where it can't be worked.</param>
    public IEnumerable<Proposal> Of(string line, LineSpot cursor, RowSoFar? soFar)
    {
        if (LineSpot.OpenStar(line) is >= 0 and int star && cursor.Steps.Length > star + 1) return FromStar(cursor.Steps, star, soFar);
        return line.LastIndexOf(']') is > 0 and int close && line.AsSpan(close + 1).IndexOfAnyExcept(AfterBracket) < 0 ? OfBrackets(line, close) : [];
    }

    private IEnumerable<Proposal> FromStar(string steps, int star, RowSoFar? soFar)
    {
        string passage = steps.TrimEnd(' ', ',', ';', '.');
        bool ComesOut(string words) => trials.Holds($"{passage}; {words}.");
        yield return new($"rep from * {Across}", "the starred steps again and again") { Holds = () => ComesOut($"rep from * {Across}") };
        yield return new("rep from * to end", "the starred steps again and again") { Holds = () => ComesOut($"rep from * {Across}") };
        if (soFar is null || Turns(steps[..star], soFar) is not { } turns) yield break;
        if (turns.All(turn => turn.Left > 0))
        {
            string last = SizedWords.Of(turns.Select(turn => turn.Left)) is "1" ? "rep from * to last st" : $"rep from * to last {SizedWords.Of(turns.Select(turn => turn.Left))} sts";
            yield return new(last, "as often as it fits in") { Holds = () => Leaves($"{passage}; {last}", turns) };
        }
        else if (turns.All(turn => turn is { Left: 0, Times: > 0 }))
        {
            string more = SizedWords.Of(turns.Select(turn => turn.Times)) is "1" ? "rep from * once more" : $"rep from * {SizedWords.Of(turns.Select(turn => turn.Times))} more times";
            yield return new(more, "to the end of the row") { Holds = () => ComesOut(more) };
        }
    }

    private IEnumerable<Proposal> OfBrackets(string line, int close)
    {
        int open = line.LastIndexOf('[', close);
        if (open < 0 || RowSoFar.Of(trials, line[..open] + line[(open + 1)..close]) is not { } once || Turns(line[..open], once) is not { } turns) yield break;
        string times = SizedWords.Of(turns.Select(turn => turn.Times + 1));
        if (times == "1") yield break;
        yield return new($"{times} times", turns.All(turn => turn.Left == 0) ? "to the end of the row" : "as often as it fits in", Spot.AfterBrackets)
        {
            Holds = () => Leaves($"{line[..(close + 1)]} {times} times", turns),
        };
    }

    /// <summary>How often more the steps fit into what is left, and how many places are over, in each size; null where that is not known in all.</summary>
    private (long Times, long Left)[]? Turns(string before, RowSoFar once)
    {
        RowSoFar? start = before.TrimEnd() is [.., ':'] ? null : RowSoFar.Of(trials, before);
        if (!once.HasNumbers || start is not null && start.Sizes.Count != once.Sizes.Count) return null;
        var turns = new List<(long, long)>();
        foreach ((SizeSoFar size, int index) in once.Sizes.Select((size, index) => (size, index)))
        {
            long taken = size.Places(start?.Sizes[index].At ?? 0, size.At);
            if (taken <= 0 || size.Below is null) return null;
            turns.Add((size.Left / taken, size.Left % taken));
        }

        return [.. turns];
    }

    private bool Leaves(string steps, (long Times, long Left)[] turns) =>
        trials.HasTime && RowSoFar.Of(trials, steps) is { } worked && worked.Sizes.Select(size => size.Left).SequenceEqual(turns.Select(turn => turn.Left));
}
