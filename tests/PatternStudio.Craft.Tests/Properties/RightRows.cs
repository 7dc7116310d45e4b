namespace PatternStudio.Craft.Tests.Properties;

/// <summary>Rows that come out even on so many stitches.</summary>
internal static class RightRows
{
    /// <summary>A row on a row of <paramref name="width"/> stitches, with its words.</summary>
    public static (RightRow Row, string Words) For(int width, Choices choices, bool round)
    {
        string stitch = choices.Of("sc", "hdc", "dc");
        List<Move> unit = [.. Enumerable.Range(0, choices.Number(1, 3)).Select(_ => Any(stitch, choices, width))];
        if (unit.All(move => move.Takes > 1 && move.Words.StartsWith("sk", StringComparison.Ordinal))) unit = [Move.Plain(stitch, 1)];
        unit.Add(Move.Plain(stitch, choices.Number(1, 2)));
        int takes = unit.Sum(move => move.Takes), after = choices.Number(0, 3);
        int room = width - after, turns = Math.Max(0, room / takes), rest = room - turns * takes;
        List<Move> before = rest > 0 ? [Move.Plain(stitch, rest)] : [];
        List<Move> end = after > 0 ? [Move.Plain(stitch, after)] : [];
        if (turns < 3) (unit, before, end, turns) = ([Move.Plain(stitch, 1)], [], [], width);
        string inner = Words(unit), ending = end.Count > 0 ? ", " + Words(end) : "", start = before.Count > 0 ? Words(before) + ", " : "";
        string across = round ? "around" : "across";
        (string words, int times) = choices.Number(0, 4) switch
        {
            0 => ($"{start}*{inner}; rep from * {turns - 1} more times{ending}", turns),
            1 => ($"{start}[{inner}] {turns} times{ending}", turns),
            2 => ($"{start}({inner}) {turns} times{ending}", turns),
            3 when end.Count > 0 => ($"{start}*{inner}; rep from * to last {(after == 1 ? "st" : $"{after} sts")}{ending}", 0),
            _ => ($"{start}*{inner}; rep from * {across}{ending}", 0),
        };
        string opening = round ? "" : stitch switch { "sc" => "Ch 1, turn, ", "hdc" => "Ch 2 (does not count as a st), turn, ", _ => "Ch 3 (does not count as a st), turn, " };
        words = opening + words;
        return (new RightRow(before, unit, times, end), char.ToUpperInvariant(words[0]) + words[1..]);
    }

    private static string Words(IEnumerable<Move> moves) => string.Join(", ", moves.Select(move => move.Words));

    private static Move Any(string stitch, Choices choices, int width) => choices.Number(0, 6) switch
    {
        1 => width < 2000 ? Move.Increase(stitch, choices.Number(2, 3)) : Move.Together(stitch),
        2 => Move.Together(stitch),
        3 => Move.ChainOver(choices.Number(1, 3), choices.Number(1, 2)),
        4 => Move.Skip(choices.Number(1, 2)),
        5 => width < 2000 ? Move.VStitch(stitch) : Move.Plain(stitch, 2),
        _ => Move.Plain(stitch, choices.Number(1, 4)),
    };
}
