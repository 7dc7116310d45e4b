namespace PatternStudio.Craft.Tests.Properties;

/// <summary>Single clauses of a row: a stitch and its place, a skip, chains, a group, a change of colour.</summary>
internal static class AnyClauses
{
    public static string Stitch(Choices choices) => choices.Of("sc", "dc", "hdc", "tr");

    public static string Clause(Choices choices)
    {
        string stitch = Stitch(choices);
        return choices.Number(0, 17) switch
        {
            0 => $"{stitch} in next st",
            1 => $"{stitch} in next {choices.Number(2, 5)} sts",
            2 => $"ch {choices.Number(1, 3)}",
            3 => choices.Of("sk next st", "sk next 2 sts", "sk next ch-1 sp", "sk next ch-2 sp"),
            4 => $"{choices.Number(2, 3)} {stitch} in next st",
            5 => choices.Of("sc2tog over next 2 sts", "dc2tog", "dc3tog over next 3 sts", "hdc2tog"),
            6 => $"{stitch} in next {choices.Of("ch-1 sp", "ch sp", "ch-2 sp", "ch-3 sp")}",
            7 => choices.Of("(dc, ch 1, dc) in next st", "(2 dc, ch 2, 2 dc) in next ch-2 sp", "(sc, ch 3, sc) in next st", "(hdc, dc, hdc) in next sp"),
            8 => $"{stitch} in next {choices.Of("sc", "dc", "hdc", "ch")}",
            9 => $"{stitch} in same st",
            10 => choices.Of("change to B", "with A", "with B"),
            11 => $"{stitch} in each of next {choices.Number(2, 4)} sts",
            12 => choices.Of("FPdc around next st", "BPdc around next dc", "sc in BLO of next st"),
            13 => "sk next st, dc in next st, dc in skipped st",
            14 => choices.Of("ch 3, sl st in 3rd ch from hook", "picot"),
            15 => choices.Of("dc in next st 2 rows below", "tr in next sc 2 rows below"),
            16 => choices.Of("5 dc in next st", "sc between next 2 sts", "sl st in next st"),
            _ => choices.Of("sc in next 2 sc", "sc in next 3 ch", "ch 2, sk next 2 sts", "ch 1, sk next st"),
        };
    }
}
