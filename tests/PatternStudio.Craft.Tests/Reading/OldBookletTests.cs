using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Tests.Reading;

/// <summary>Ways of speaking of the booklets of 1854 to 1953; the sentences are our own.</summary>
public sealed class OldBookletTests
{
    [Theory]
    [InlineData("3 sp, 4 d c, 2 sp.", "3 open; dc x4; 2 open")]
    [InlineData("1 open mesh, 2 solid meshes.", "1 open; 2 solid")]
    [InlineData("Ch 4, d c in 3rd st of ch 5, turn.", "ch 4; dc turningchaintop ch of tch; turn")]
    [InlineData("Join to center picot of next scallop.", "join slst centre picot of group:scallop")]
    [InlineData("Attach thread about 2 inches from corner, ch 3.", "attach  next st …; ch 3")]
    [InlineData("D c in each of the next 4 d c with ch 1 between each d c.", "dc ch1 between each 4 dc")]
    [InlineData("Continue around in same manner.", "“Continue around in same manner”")]
    [InlineData("Dec 1 st at beginning and end of row, turn.", "Shaping‘Dec 1 st at beginning and end of row’; turn")]
    [InlineData("Work in s c increasing 1 s c at each end.", "sc each st to-end; Shaping‘increasing 1 s c at each end’")]
    [InlineData("Skip about ½ inch space, s c in next space.", "ByMeasure‘Skip about ½ inch space’; sc next sp")]
    [InlineData("4 tr c (4 times over hook) in same st.", "4tr same st")]
    [InlineData("Ch 3, skip next 3 ch loop, s c in next 5 ch loop.", "ch 3; sk 1 ch-3sp; sc next ch-5sp")]
    [InlineData("Ch 3, skip next 3 ch loops, s c in next loop.", "ch 3; sk 3 chsp; sc next sp")]
    [InlineData("4 d c, ch 1, 4 d c over each remaining loop working 3 d c over remainder of 1st loop.", "(dc x4; ch 1; dc x4) each sp; 3dc first sp")]
    public void US_booklets_are_read(string row, string steps) => Assert.Equal(steps, Reader.Steps(row));

    /// <summary>The number behind the dash is the row's own where a range would go backwards.</summary>
    [Theory]
    [InlineData("Row 8—5 shells.", "Row 8: shell x5")]
    public void A_number_of_groups_behind_a_dash_is_no_row(string line, string item) => Assert.Equal(item, Reader.Pattern(line));

    [Theory]
    [InlineData("A double in each of 2 doubles, 2 in next; repeat.", "words{sc each 2 sc; 2sc next st} unstated")]
    [InlineData("10 doubles in 10 stitches.", "sc next 10 st")]
    [InlineData("Into the 4 chain 1 double crochet, 4 treble, 1 double crochet.", "(sc x1; dc x4; sc x1) next ch-4sp")]
    [InlineData("1 double in centre of each loop, 5 chain between.", "sc ch5 between each sp")]
    [InlineData("30 stitches of double crochet over the circle.", "30sc inring ring")]
    [InlineData("Same shade, 6 spots, 11 double.", "colour Same shade; spot x6; sc x11")]
    [InlineData("* 4 chain, 1 double treble. Repeat 3 times from *.", "*{ch 4; tr x1} x4")]
    public void UK_handbooks_are_read(string row, string steps) => Assert.Equal(steps, Reader.Steps(row, Terminology.Uk));

    [Theory]
    [InlineData("With Green chain (ch) 8, join to form a ring, single crochet (sc) in ring.", "colour Green; ch 8; join slst ring; sc inring ring")]
    [InlineData("Double treble crochet ([d tr c] 3 times over hook) in ring.", "dtr inring ring")]
    public void Abbreviations_introduced_on_the_way_are_passed_over(string row, string steps) => Assert.Equal(steps, Reader.Steps(row));
}
