namespace PatternStudio.Craft.Tests.Properties;

/// <summary>A written row with the stitches it comes to.</summary>
/// <param name="Line">1-based line of the text that calls for it.</param>
/// <param name="Stitches">The row as listed with pencil.</param>
/// <param name="Number">Its number.</param>
internal sealed record PencilRow(int Line, int Number, IReadOnlyList<PencilStitch> Stitches)
{
    public int Count => Stitches.Count(stitch => !stitch.IsSpace);
}

/// <summary>Writes patterns that are right, in rows or in rounds, each row with its count, and lists beside the text what every row comes to.</summary>
internal sealed class RightPattern
{
    private readonly Choices choices;
    private readonly List<string> lines = [];
    private readonly List<PencilRow> rows = [];
    private readonly List<(RightRow Row, string Words)> written = [];
    private readonly bool round;

    private RightPattern(Choices choices)
    {
        this.choices = choices;
        round = choices.Once(3);
        Begin();
        for (int more = choices.Number(1, 6); more > 0; more--)
            if (!choices.Once(3) || !Refer()) Write();
    }

    public string Text => string.Join('\n', lines) + "\n";

    public IReadOnlyList<PencilRow> Rows => rows;

    public bool IsRound => round;

    public static RightPattern Of(Choices choices) => new(choices);

    /// <summary>The text with the count of one of its written rows changed, and that row's line.</summary>
    public (string Text, int Line) WithWrongCount(Choices which)
    {
        int[] counted = [.. Enumerable.Range(0, lines.Count).Where(line => lines[line].EndsWith(')'))];
        int line = counted[which.Number(0, counted.Length - 1)], open = lines[line].LastIndexOf('(') + 1;
        string inside = lines[line][open..^1];
        int end = inside.IndexOf(' ', StringComparison.Ordinal), count = int.Parse(inside[..end], System.Globalization.CultureInfo.InvariantCulture);
        string changed = lines[line][..open] + (which.Once(2) ? count + 1 : count - 1) + inside[end..] + ")";
        return (string.Join('\n', lines.Select((text, i) => i == line ? changed : text)) + "\n", line + 1);
    }

    private void Begin()
    {
        int width = choices.Of(12, 18, 24, 36, 60, 144, 600) + choices.Number(0, 5);
        if (round)
        {
            lines.Add($"Rnd 1: {width} sc in magic ring. ({width} sc)");
            rows.Add(new(1, 1, [.. Enumerable.Repeat(new PencilStitch("sc", 0, 0), width)]));
            return;
        }
        lines.Add($"Ch {width + 1}.");
        lines.Add($"Row 1: Sc in 2nd ch from hook and in each ch across. ({width} sc)");
        rows.Add(new(2, 1, [.. Enumerable.Range(0, width).Select(i => new PencilStitch("sc", 0, width - 1 - i))]));
    }

    private void Write()
    {
        (RightRow row, string words) = RightRows.For(rows[^1].Count, choices, round);
        IReadOnlyList<PencilStitch> made = row.WorkOn(rows[^1].Stitches, turned: !round) ?? throw new InvalidOperationException($"{words} on {rows[^1].Count}");
        Add($"{Noun} {rows[^1].Number + 1}: {words}. {Stated(made)}", made);
        written.Add((row, words));
    }

    /// <summary>'Rows 5–8: Rep Row 4.', where that row comes out on its own row above.</summary>
    private bool Refer()
    {
        if (written.Count == 0) return false;
        int from = rows[^1].Number + 1, most = choices.Number(1, 4);
        var made = new List<IReadOnlyList<PencilStitch>>();
        while (made.Count < most && written[^1].Row.WorkOn(made.Count > 0 ? made[^1] : rows[^1].Stitches, turned: !round) is { } again && again.Count(stitch => !stitch.IsSpace) is > 7 and < 4000) made.Add(again);
        if (made.Count == 0 || !int.TryParse(lines[^1].Split(' ')[1].TrimEnd(':'), out int last)) return false;
        string heading = made.Count == 1 ? $"{Noun} {from}" : $"{Noun}s {from}–{from + made.Count - 1}";
        lines.Add($"{heading}: Rep {Noun} {last}. {Stated(made[^1])}");
        foreach (IReadOnlyList<PencilStitch> row in made) rows.Add(new(lines.Count, rows[^1].Number + 1, row));
        return true;
    }

    private string Noun => round ? "Rnd" : "Row";

    private void Add(string line, IReadOnlyList<PencilStitch> made)
    {
        lines.Add(line);
        rows.Add(new(lines.Count, rows[^1].Number + 1, made));
    }

    private static string Stated(IReadOnlyList<PencilStitch> made)
    {
        IEnumerable<string> spaces = made.Where(stitch => stitch.IsSpace).GroupBy(stitch => stitch.Chains).OrderBy(length => length.Key)
            .Select(length => $", {length.Count()} ch-{length.Key} sp{(length.Count() == 1 ? "" : "s")}");
        return $"({made.Count(stitch => !stitch.IsSpace)} sts{string.Concat(spaces)})";
    }
}
