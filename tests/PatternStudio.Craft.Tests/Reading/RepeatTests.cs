using PatternStudio.Craft.Reading;
using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Tests.Reading;

/// <summary>
/// 'work [x] 5 times' = 5; '*x; rep from * 5 times' = 6; 'rep from * across' = as many as fit (the asterisk page of a stitch handbook,
/// zanotowane.pl/837/653; the pair of stars: anniescatalog.com, symbols).
/// </summary>
public sealed class RepeatTests
{
    [Theory]
    [InlineData("[Sc in next st, ch 1] 5 times.", "[]{sc next st; ch 1} x5")]
    [InlineData("(Sc 2, inc) x 6.", "(){sc x2; inc} x6")]
    [InlineData("(Sc in next st, ch 1) twice.", "(){sc next st; ch 1} x2")]
    [InlineData("(Dc in next dc, 2 dc in next dc) around.", "(){dc next dc; 2dc next dc} around")]
    [InlineData("[Dc in next st, {ch 1, sk 1 st} 3 times] twice.", "[]{dc next st; {}{ch 1; sk 1 st} x3} x2")]
    public void Brackets_give_the_number_in_all(string row, string steps) => Assert.Equal(steps, Reader.Steps(row));

    [Theory]
    [InlineData("*Sc in next st, ch 1; rep from * 5 times.", "*{sc next st; ch 1} x6")]
    [InlineData("*Sc in next st, ch 1; rep from * 5 times more.", "*{sc next st; ch 1} x6")]
    [InlineData("*Sc in next st, ch 1; rep from * twice more.", "*{sc next st; ch 1} x3")]
    [InlineData("*Sc in next st, ch 1; repeat from * once.", "*{sc next st; ch 1} x2")]
    [InlineData("*Sc in next st, ch 1; rep from * across.", "*{sc next st; ch 1} to-end")]
    [InlineData("*Sc in next st, ch 1; rep from * around, join.", "*{sc next st; ch 1} around; join slst")]
    [InlineData("*Sc in next st, ch 1; rep from * to last 2 sts, sc in last 2 sts.", "*{sc next st; ch 1} to-last 2 st; sc last 2 st")]
    [InlineData("*Sc in next st, ch 1; rep from *.", "*{sc next st; ch 1} unstated")]
    public void A_star_is_worked_once_and_then_as_often_as_said(string row, string steps) => Assert.Equal(steps, Reader.Steps(row));

    [Theory]
    [InlineData("*Sc in next 3 sts, 2 sc in next st* 5 times.", "*-*{sc next 3 st; 2sc next st} x5")]
    [InlineData("*Sc in next st, ch 1*; rep from * to * 4 more times.", "*{sc next st; ch 1} x5")]
    [InlineData("*Sc in next 4 sts**, ch 2; rep from * across, ending last rep at **.", "*{sc next 4 st; ch 2} to-end last stops 1")]
    [InlineData("*Ch 3, sc in next sp; rep from * across, ending with sc in last sc, turn.", "*{ch 3; sc next sp} to-end ending {sc last sc}; turn")]
    [InlineData("** Ch 6, * d c in next loop, ch 2, repeat from * 3 times, repeat from ** twice.", "**{ch 6; *{dc next sp; ch 2} x4} x3")]
    [InlineData("* Ch 3, s c in next loop, repeat from * once, * ch 5, s c in next loop, repeat from * 4 times.", "*{ch 3; sc next sp} x2; *{ch 5; sc next sp} x5")]
    [InlineData("1 treble, 3 chain, miss 1, 8 times.", "words{tr x1; ch 3; sk 1 st} x8")]
    [InlineData("Sc in next st, ch 1, repeat all around.", "words{sc next st; ch 1} around")]
    public void Marks_pair_nest_and_stop(string row, string steps) => Assert.Equal(steps, Reader.Steps(row));

    [Fact]
    public void A_repeat_without_its_star_is_reported_and_not_guessed()
    {
        Pattern pattern = PatternReader.Read("Ch 21.\nRow 1: Sc in next st, rep from * across.");
        Assert.Equal(ReadingTroubleKind.RepeatWithoutStar, Assert.Single(pattern.Troubles).Kind);
        Assert.Contains("UNREAD", TreeText.Of(pattern), StringComparison.Ordinal);
    }

    [Fact]
    public void A_star_that_nothing_repeats_is_reported() =>
        Assert.Equal(ReadingTroubleKind.StarWithoutRepeat, Assert.Single(PatternReader.Read("Ch 21.\nRow 1: *Sc in next st, ch 1.").Troubles).Kind);
}
