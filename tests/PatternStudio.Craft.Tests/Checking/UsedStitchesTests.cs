using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Reading;
using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Tests.Checking;

/// <summary>The list of abbreviations, kept from the words. Names in both terms: Craft Yarn Council, 'Crochet abbreviations' and 'US/UK conversion' (../reference).</summary>
public sealed class UsedStitchesTests
{
    [Fact]
    public void Rows_and_special_stitches_name_what_a_maker_must_know()
    {
        const string Text =
            """
            US terms
            Special stitches
            Puff stitch (puff): [Yo, insert hook in st, yo and draw up a loop] 3 times in same st, yo and draw through all 7 loops on hook.
            Shell: 5 dc in same st.

            Ch 22.
            Row 1: Sc in 2nd ch from hook and in each ch across. (21 sc)
            Row 2: Ch 1, turn, sc in first sc, *puff in next sc, sc in next sc; rep from * across. (21 sts)
            Row 3: Ch 1, turn, sc in first st, *sk next st, shell in next st, sk next st, sc in next st; rep from * across.
            """;
        Pattern pattern = PatternReader.Read(Text);

        var list = UsedStitches.Of(pattern);

        Assert.Equal(["ch|chain", "sc|single crochet", "dc|double crochet"], list.Where(stitch => stitch.Told is null).Select(stitch => string.Join('|', stitch.Names)));
        Assert.Equal(["", "dc|double crochet", "tr|treble"], list.Where(stitch => stitch.Told is null).Select(stitch => string.Join('|', stitch.Others)));
        Assert.Equal(["Puff stitch (puff)", "Shell: 5 dc in"], list.Where(stitch => stitch.Told is not null).Select(stitch => pattern.Source.Slice(stitch.Told!.Value)[..(stitch.Names[0].StartsWith('S') || stitch.Names[0] == "shell" ? 14 : 18)]));
    }

    [Fact]
    public void A_pattern_in_UK_terms_has_its_names_first()
    {
        Pattern pattern = PatternReader.Read("UK terms\n\nCh 21.\nRow 1: Dc in 2nd ch from hook and in each ch across, turn. (20 dc)\nRow 2: Ch 3 (counts as tr), miss first dc, tr in each dc across. (20 tr)");

        Assert.Equal(["ch: ", "dc: sc", "tr: dc"], UsedStitches.Of(pattern).Select(stitch => $"{stitch.Names[0]}: {stitch.Others.FirstOrDefault()}"));
    }

    [Fact]
    public void Joins_and_slip_stitches_are_there_and_nothing_else_is() =>
        Assert.Equal(["ch", "sl st", "dc"], UsedStitches.Of(PatternReader.Read("US terms\n\nCh 4, join with sl st to form a ring.\nRnd 1: Ch 3 (counts as dc), 11 dc in ring, join with sl st in top of beg ch-3. (12 dc)\nFasten off.")).Select(stitch => stitch.Names[0]));

    [Fact]
    public void Words_without_rows_use_nothing() => Assert.Empty(UsedStitches.Of(PatternReader.Read("A thought about sc and dc.")));

    /// <summary>Every right pattern: each stitch once, with a name, and no two by one abbreviation.</summary>
    [Theory]
    [MemberData(nameof(Files))]
    public void No_stitch_is_listed_twice(string file)
    {
        var list = UsedStitches.Of(PatternReader.Read(File.ReadAllText(Repository.Path(file))));
        Assert.NotEmpty(list);
        Assert.All(list, stitch => Assert.NotEqual("", stitch.Names[0]));
        Assert.Equal(list.Count, list.Select(stitch => stitch.Id).Distinct().Count());
        Assert.Equal(list.Count, list.Select(stitch => stitch.Names[0]).Distinct().Count());
    }

    public static TheoryData<string> Files => Properties.WorkedByRunsTests.Files;
}
