using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Tests.Checking;

/// <summary>After a slip of the pen the slip is told, and the rows above go on from what was likely meant. Totals by arithmetic, as remarked; common practice, no source.</summary>
public sealed class SlipTests
{
    /// <summary>The chain of 6 is a dc and 3 chains; one dc more, and six with the star before 'ch 3': 8 dc and 8 loops. Row 3 puts 3 sc into each.</summary>
    [Fact]
    public void Rows_above_a_lost_star_are_worked_where_one_place_only_comes_out()
    {
        const string text = "Ch 5, join to form a ring, ch 1 and work 8 s c in ring, join in 1st s c.\n2nd Row: Ch 6, d c in next s c, ch 3, d c in next s c, repeat from * 5 times, ch 3, join in 3rd st of ch.\n3rd Row: Ch 1, 3 s c in each loop, join.";
        Assert.Equal("8 ? 24", Totals(text));
        Assert.Equal([FindingCodes.RepeatWithoutStar], Errors(text));
    }

    /// <summary>'1 sc, 1 sc' twice or '1 sc' … : where several places come out, none is chosen.</summary>
    [Fact]
    public void A_lost_star_that_may_stand_in_several_places_is_left_open() =>
        Assert.Equal("8 ? ?", Totals("Ch 5, join to form a ring, ch 1 and work 8 s c in ring, join in 1st s c.\n2nd Row: Ch 1, s c in same st, s c in next s c, ch 3, s c in next s c, ch 2, s c in next s c, ch 1, repeat from * once, s c in each remaining s c, join.\n3rd Row: Ch 1, 2 s c in each s c, join."));

    /// <summary>4 + 2 × 4 = 12 of 24: six times 4 would use them up, so the round above has 24.</summary>
    [Fact]
    public void Rows_above_a_repeat_told_too_few_times_go_on_from_the_turns_that_were_meant()
    {
        const string text = "Ch 6, join to form a ring, ch 1 and work 24 s c in ring, join.\n2nd Round: Ch 1, * 1 s c in each of the next 3 s c, d c in next s c, repeat from * twice, join.\n3rd Round: Ch 1, 1 s c in each st, join.";
        Assert.Equal("24 12 24", Totals(text));
        Assert.Equal([FindingCodes.StitchesLeft], Errors(text));
    }

    /// <summary>With ch 4 the chain is the first of 12 tr; as told there are 11.</summary>
    [Fact]
    public void Rows_above_a_chain_that_is_too_short_to_be_joined_to_go_on_from_the_chain_meant()
    {
        const string text = "Ch 6, join to form a ring, ch 1 and work 12 s c in ring, join.\n2nd Round: Ch 1, tr c in next s c, 1 tr c in each of the next 10 s c, join in 4th st of ch.\n3rd Round: Ch 1, 1 s c in each tr c, join.";
        Assert.Equal([FindingCodes.JoinToNothing], Errors(text));
        Assert.EndsWith(" 12", Totals(text));
    }

    /// <summary>24 more is no count of the round, which has 16 + 8.</summary>
    [Fact]
    public void How_many_stitches_are_more_is_no_count() =>
        Assert.Empty(Errors("Ch 6, join to form a ring, ch 1 and work 16 s c in ring, join.\n2nd Round: Ch 1, * 1 s c in next s c, 2 s c in next s c, repeat from * all around, join (8 sts increased in round)."));

    private static string[] Errors(string text) => [.. PatternCheck.Check(text).Findings.Where(finding => finding.Severity == Severity.Error).Select(finding => finding.Code)];

    private static string Totals(string text) => string.Join(' ', PatternCheck.Check(text).Sizes[0].Rows.Select(row => row.Status == RowStatus.Checked ? row.Stitches.ToString() : "?"));
}
