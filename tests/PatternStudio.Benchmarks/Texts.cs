using System.Text;

namespace PatternStudio.Benchmarks;

/// <summary>The texts that are timed.</summary>
internal static class Texts
{
    /// <summary>Plain single crochet in rows.</summary>
    public static string Cloth(int stitches, int rows) => $"""
        Ch {stitches + 1}.
        Row 1: Sc in 2nd ch from hook and in each ch across. ({stitches} sc)
        Row 2: Ch 1, turn, sc in each sc across. ({stitches} sc)
        Rows 3–{rows}: Rep Row 2. ({stitches} sc)
        """;

    /// <summary>A blanket in straight rows: a start, a repeat, an end; only its width and length change, not the length of its text.</summary>
    public static string Blanket(int repeats, int rows) => $"""
        Ch {repeats * 6 + 8}.
        Row 1: Sc in 2nd ch from hook and in each ch across. ({repeats * 6 + 7} sc)
        Row 2: Ch 1, turn, sc in first 2 sc, *sc in next 2 sc, dc in next 2 sc, hdc in next 2 sc; rep from * to last 5 sc, sc in last 5 sc. ({repeats * 6 + 7} sts)
        Row 3: Ch 1, turn, sc in each st across. ({repeats * 6 + 7} sc)
        Rows 4–{rows}: Rep Rows 2 and 3.
        Fasten off.

        """;

    /// <summary>A lace blanket: V-stitches in the spaces of the row below.</summary>
    public static string Lace(int repeats, int rows) => $"""
        V-stitch (V-st): (dc, ch 1, dc) in same st or sp.

        Ch {repeats * 3 + 8}.
        Row 1: Dc in 4th ch from hook, *sk next 2 chs, V-st in next ch; rep from * to last 4 chs, sk next 2 chs, dc in last 2 chs. ({repeats} V-sts, 4 dc)
        Row 2: Ch 3 (counts as dc), turn, dc in next dc, V-st in ch-1 sp of each V-st across, dc in last dc, dc in top of tch. ({repeats} V-sts, 4 dc)
        Rows 3–{rows}: Rep Row 2.
        Fasten off.

        """;

    /// <summary>A triangle that grows by two stitches in each row.</summary>
    public static string Triangle(int rows) => $"""
        Ch 4.
        Row 1: Sc in 2nd ch from hook and in each ch across. (3 sc)
        Row 2: Ch 1, turn, 2 sc in first sc, sc in each sc across to last sc, 2 sc in last sc.
        Rows 3–{rows}: Rep Row 2.
        Fasten off.

        """;

    /// <summary>A design of so many written rows, each with its own words and its count.</summary>
    public static string Design(int rows)
    {
        var text = new StringBuilder("**Lantern Bay Throw**\n\nLevel: Easy. US terms.\nYarn: Saltmarsh Aran by Saltmarsh Stitches (worsted, 4), 12 balls. Hook: 5 mm.\nGauge: 14 sc and 16 rows = 10 cm (4 in).\n\nCh 182.\nRow 1: Sc in 2nd ch from hook and in each ch across. (181 sc)\n");
        for (int row = 2; row <= rows; row++)
            text.AppendLine((row % 4) switch
            {
                0 => $"Row {row}: Ch 1, turn, sc in first sc, *sc in next ch-1 sp, dc in next sc; rep from * across. (181 sts)",
                1 => $"Row {row}: Ch 1, turn, sc in each st across. (181 sc)",
                2 => $"Row {row}: Ch 3 (counts as dc), turn, dc in next sc, *sk next sc, 3 dc in next sc, sk next sc; rep from * to last 2 sc, dc in each of last 2 sc. (181 dc)",
                _ => $"Row {row}: Ch 1, turn, sc in first dc, *ch 1, sk next dc, sc in next dc; rep from * to last 2 dc, ch 1, sk next dc, sc in top of tch. (91 sc, 90 ch-1 sps)",
            });
        return text.AppendLine("Fasten off.").ToString();
    }
}
