using System.Text;

namespace PatternStudio.Craft.Tests.Properties;

/// <summary>
/// Writes patterns in ordinary words without regard to whether they come out: some rows fit, many do not. Every construct that is
/// worked by runs occurs, so that both ways of working can be compared on right rows and on wrong ones.
/// </summary>
internal sealed class AnyPattern(Choices choices)
{
    private readonly StringBuilder text = new();
    private bool round;

    public static string Write(Choices choices) => new AnyPattern(choices).Write();

    private string Write()
    {
        round = choices.Once(4);
        int row = round ? Ring() : Chain();
        for (int rows = choices.Number(1, 5); rows > 0; rows--) row = choices.Once(4) && row > 2 ? Refer(row) : Row(row);
        return text.ToString();
    }

    private int Chain()
    {
        int width = choices.Of(12, 24, 24, 60, 60, 120, 120, 840, 2400) + choices.Number(0, 3);
        text.AppendLine($"Ch {width + 1}.");
        text.Append(choices.Of(
            "Row 1: Sc in 2nd ch from hook and in each ch across.",
            "Row 1: Sc in 2nd ch from hook, *ch 1, sk next ch, sc in next ch; rep from * across.",
            "Row 1: Dc in 4th ch from hook and in each ch across.",
            "Row 1: Sc in 2nd ch from hook, *sk next 2 chs, 5 dc in next ch, sk next 2 chs, sc in next ch; rep from * across.",
            "Row 1: Hdc in 3rd ch from hook, hdc in next ch, *ch 2, sk next 2 chs, hdc in each of next 2 chs; rep from * across.")).AppendLine();
        return 2;
    }

    private int Ring()
    {
        text.AppendLine(choices.Of(
            "Rnd 1: 6 sc in magic ring.",
            "Ch 4, join with sl st in first ch to form ring.\nRnd 1: Ch 3 (counts as dc), 11 dc in ring, join with sl st in top of beg ch-3.",
            "Ch 6, join with sl st in first ch to form ring.\nRnd 1: Ch 1, [sc in ring, ch 2] 300 times, join with sl st in first sc.",
            "Rnd 1: Ch 1, 240 sc in ring, join with sl st in first sc."));
        return 2;
    }

    private int Row(int number)
    {
        bool range = choices.Once(6);
        int last = range ? number + choices.Number(1, 3) : number;
        text.Append(round ? "Rnd" : "Row").Append(range ? $"s {number}–{last}: " : $" {number}: ");
        text.Append(Opening()).Append(Body()).AppendLine(".");
        return last + 1;
    }

    private int Refer(int number)
    {
        int last = number + choices.Number(0, 6), of = choices.Number(2, number - 1);
        string rows = round ? "Rnd" : "Row";
        text.AppendLine(of < number - 1 && choices.Once(2)
            ? $"{rows}s {number}–{last + 1}: Rep {rows}s {of} and {of + 1}."
            : last == number ? $"{rows} {number}: Rep {rows} {of}." : $"{rows}s {number}–{last}: Rep {rows} {of}.");
        return Math.Max(last, of < number - 1 ? last + 1 : last) + 1;
    }

    private string Opening() => round
        ? choices.Of("Ch 1, ", "", "Ch 3 (counts as dc), ", "Sl st in next st, ch 1, ")
        : choices.Of("Ch 1, turn, ", "Ch 3 (counts as dc), turn, ", "Ch 2 (does not count as a st), turn, ", "Turn, ", "Ch 4 (counts as dc and ch 1), turn, ");

    private string Body()
    {
        var parts = new List<string>();
        if (!choices.Once(2)) parts.Add(Clauses(choices.Number(1, 2), 1));
        parts.Add(Repeat());
        if (choices.Once(3)) parts.Add(choices.Of("sc in last st", "dc in top of tch", "sc in each of last 2 sts", "2 sc in last st", "ch 1, dc in last dc"));
        if (round && choices.Once(2)) parts.Add("join with sl st in first st");
        string body = string.Join(", ", parts);
        return body.Length > 0 ? char.ToUpperInvariant(body[0]) + body[1..] : body;
    }

    private string Repeat()
    {
        string inner = Clauses(choices.Number(1, 4), 2);
        return choices.Number(0, 7) switch
        {
            0 => $"*{inner}; rep from * {(round ? "around" : "across")}",
            1 => $"*{inner}; rep from * to last {choices.Number(1, 3)} sts, {AnyClauses.Stitch(choices)} in each st {(round ? "around" : "across")}",
            2 => $"*{inner}; rep from * {choices.Number(1, 40)} more times",
            3 => $"[{inner}] {choices.Number(2, 60)} times",
            4 => $"({inner}) twice",
            5 => $"*{inner}; rep from * across, ending last rep with sc in last st",
            6 => $"{AnyClauses.Stitch(choices)} in each st {(round ? "around" : "across")}",
            _ => $"*{inner}; rep from * to end",
        };
    }

    private string Clauses(int several, int depth) => string.Join(", ", Enumerable.Range(0, several).Select(_ =>
        depth > 1 && choices.Once(9) ? $"[{Clauses(choices.Number(1, 2), depth - 1)}] {choices.Number(2, 3)} times" : AnyClauses.Clause(choices)));
}
