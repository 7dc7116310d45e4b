using PatternStudio.Craft.Checking;

namespace PatternStudio.Craft.Tests.Checking;

/// <summary>Granny squares. Round 1 of 12 dc and 4 spaces: crochetbouquet.co.uk, classic granny square; the growth (a group in every side space, two in every corner): craftyghoul.com/2014/01/05.</summary>
public sealed class HandbookSquareTests
{
    private const string Granny =
        """
        Ch 4, join with sl st to form ring.
        Rnd 1: Ch 3 (counts as dc), 2 dc in ring, ch 2, [3 dc in ring, ch 2] 3 times, join with sl st to top of beg ch-3. (12 dc, 4 ch-2 sps)
        Rnd 2: Sl st in next 2 dc and in ch-2 sp, ch 3 (counts as dc), (2 dc, ch 2, 3 dc) in same sp, ch 1, [(3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1] 3 times, join with sl st to top of beg ch-3.
        """;

    /// <summary>Round n: 12n dc, 4 corner spaces, 4(n − 1) side spaces.</summary>
    [Fact]
    public void Six_rounds_of_a_traditional_granny_come_to_the_table()
    {
        IReadOnlyList<RowReport> rounds = Handbook.Rows(Granny + "\n" + string.Join('\n', Enumerable.Range(3, 4).Select(Round)));
        Assert.Equal(6, rounds.Count);
        for (int n = 1; n <= 6; n++)
        {
            Assert.Equal(12 * n, rounds[n - 1].Counts["dc"]);
            Assert.Equal(4, rounds[n - 1].Spaces["ch-2"]);
            Assert.Equal(4 * (n - 1), rounds[n - 1].Spaces.GetValueOrDefault("ch-1"));
        }
    }

    private static string Round(int n)
    {
        string sides = n == 3 ? "3 dc in next ch-1 sp, ch 1, " : $"[3 dc in next ch-1 sp, ch 1] {n - 2} times, ";
        return $"Rnd {n}: Sl st in next 2 dc and in ch-2 sp, ch 3 (counts as dc), (2 dc, ch 2, 3 dc) in same sp, ch 1, {sides}*(3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1, {sides}rep from * 2 more times, join with sl st to top of beg ch-3. ({12 * n} dc, 4 ch-2 sps, {4 * (n - 1)} ch-1 sps)";
    }

    /// <summary>A solid granny has 4n − 1 dc to a side, 16n − 4 in all: octojellycrochetstudio.com/2021/02/16 for 7, 11, 15.</summary>
    [Fact]
    public void Four_rounds_of_a_solid_granny_come_to_the_table()
    {
        string rounds = "Make a magic ring.\nRnd 1: Ch 3 (counts as dc), 2 dc in ring, ch 2, [3 dc in ring, ch 2] 3 times, join with sl st to top of beg ch-3. (12 dc, 4 ch-2 sps)\n"
            + string.Join('\n', Enumerable.Range(2, 3).Select(Solid));
        Assert.Equal([12, 28, 44, 60], Handbook.Totals(rounds));
    }

    private static string Solid(int n)
    {
        // The round begins in the first side of round 1, so that corners before it grow behind its end.
        int side = (4 * (n - 1)) - 1, behind = 2 * (n - 2);
        string end = behind > 0 ? $", dc in last {behind} dc" : "";
        return $"Rnd {n}: Ch 3 (counts as dc), dc in next {side - behind - 1} dc, [(2 dc, ch 2, 2 dc) in next ch-2 sp, dc in next {side} dc] 3 times, (2 dc, ch 2, 2 dc) in next ch-2 sp{end}, join with sl st to top of beg ch-3. ({(16 * n) - 4} dc, 4 ch-2 sps)";
    }
}
