using PatternStudio.Craft.Text;
using PatternStudio.Craft.Writing.Completion;

namespace PatternStudio.Craft.Tests.Writing.Completion;

/// <summary>Patterns of our own; what comes next is counted by hand.</summary>
public sealed class WhatComesNextTests
{
    /// <summary>9 chains, 1 of them turning chain, leave 8 sc; Row 2 makes of every two sc one sc and a ch-1 space: sc, ch 1 four times.</summary>
    private const string Mesh = "US terms\n\nCh 9.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (8 sc)\nRow 2: Ch 1, *sc in next sc, ch 1, skip next sc; rep from * across, turn. (4 sc, 4 ch-1 sps)\n";

    private const string Plain = "US terms\n\nCh 9.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (8 sc)\n";

    private const string Disc = "US terms\n\nRnd 1: 6 sc in magic ring. (6 sc)\nRnd 2: 2 sc in each sc around. (12 sc)\n";

    [Fact]
    public void The_next_row_has_the_next_number_in_the_words_of_the_rows_before()
    {
        Assert.Equal("Row 2: ", First(Plain, "", asked: true));
        Assert.Equal("Row 3: ", First(Mesh, "Ro", asked: false));
        Assert.Equal("Rnd 3: ", First(Disc, "Rn", asked: false));
        Assert.Equal("Row 1: ", First("Ch 9.\n", "", asked: true));
    }

    [Fact]
    public void A_row_is_worked_into_what_the_row_below_has()
    {
        // Turned, the hook meets Row 2 from its end: the last ch-1 space first, then the sc before it.
        string[] words = Words(Mesh, "Row 3: Ch 1, sc in ", asked: true);
        Assert.Contains("next sc", words);
        Assert.Contains("next ch-1 sp", words);
        Assert.Contains("each ch-1 sp across", words);
        Assert.DoesNotContain(words, word => word.Contains("dc", StringComparison.Ordinal) || word.Contains("ch-2", StringComparison.Ordinal));
    }

    [Fact]
    public void What_the_hook_meets_next_comes_first()
    {
        // Row 2 ends in a ch-1 space, which the turned row meets first; after a stitch in it the sc is next.
        Assert.Equal("next sc", First(Mesh, "Row 3: Ch 1, sc in next ch-1 sp, sc in ", asked: true));
        Assert.Equal("next ch-1 sp", First(Mesh, "Row 3: Ch 1, sc in next ch-1 sp, sc in next sc, sc in ", asked: true));
    }

    [Fact]
    public void Rounds_go_around()
    {
        Assert.Contains("each sc around", Words(Disc, "Rnd 3: Sc in ea", asked: false));
        Assert.Contains("rep from * around", Words(Disc, "Rnd 3: *Sc in next sc, 2 sc in next sc; re", asked: false));
    }

    [Fact]
    public void A_repeat_is_offered_only_after_its_star()
    {
        Assert.Contains("rep from * across", Words(Plain, "Row 2: Ch 1, *sc in next sc, ch 1, skip next sc; re", asked: false));
        Assert.DoesNotContain("rep from * across", Words(Plain, "Row 2: Ch 1, sc in next sc, re", asked: false));
    }

    [Fact]
    public void At_the_end_of_a_row_its_count_is_what_working_it_gives()
    {
        Assert.Contains("(8 sc)", Words(Plain, "Row 2: Ch 1, sc in each sc across. ", asked: true));
        // 6 × 2 + 6 = 18: every second of the 12 sc is increased.
        Assert.Contains("(18 sc)", Words(Disc, "Rnd 3: *Sc in next sc, 2 sc in next sc; rep from * around. ", asked: true));
        Assert.Contains("turn. (8 sc)", Words(Plain, "Row 2: Ch 1, sc in each sc across, tu", asked: false));
    }

    [Fact]
    public void A_row_that_is_not_at_its_end_has_no_count_yet() =>
        Assert.DoesNotContain(Words(Plain, "Row 2: Ch 1, sc in next 3 sc, ", asked: true), word => word.StartsWith('('));

    [Fact]
    public void Counts_are_stated_as_the_rows_above_state_theirs() =>
        Assert.Contains("[8 sts]", Words("US terms\n\nCh 9.\nRow 1: Sc in 2nd ch from hook and in each ch across. [8 sts]\n", "Row 2: Ch 1, turn, sc in each st across. ", asked: true));

    [Fact]
    public void Stitches_that_the_pattern_defines_come_before_others()
    {
        const string Defined = "US terms\nSpecial stitch: Puff stitch (puff): [Yo, insert hook in st, yo and draw up a loop] 3 times in same st, yo and draw through all 7 loops on hook.\n\n";
        Assert.Equal("puff", First(Defined + Plain["US terms\n\n".Length..], "Row 2: Ch 1, pu", asked: false));
    }

    [Fact]
    public void Stitches_are_those_of_the_terms()
    {
        Assert.Contains("half double crochet", Words(Plain, "Row 2: Ch 2, half", asked: false));
        Assert.Contains("half treble", Words("UK terms\n\nCh 9.\nRow 1: Dc in 2nd ch from hook and in each ch across. (8 dc)\n", "Row 2: Ch 2, half", asked: false));
    }

    [Fact]
    public void What_begins_with_a_capital_goes_on_with_one() =>
        Assert.Equal("Half double crochet", First(Plain, "Row 2: Half", asked: false));

    [Fact]
    public void A_word_that_is_whole_is_left_in_peace()
    {
        Assert.Empty(Words(Plain, "Row 2: Ch 1, sc", asked: false));
        Assert.Empty(Words(Plain, "Row 2: Ch 1, sc in", asked: false));
        Assert.Empty(Words(Plain, "Row 2: Ch 1, s", asked: false));
        Assert.Empty(Words(Plain, "Row 2: Ch 1, ", asked: false));
    }

    [Fact]
    public void A_choice_takes_the_place_of_what_is_typed_of_it()
    {
        const string Line = "Row 2: Ch 1, sc in ne";
        Choice choice = WhatComesNext.At(RowsAbove.Of(Plain), Line, asked: false)[0];

        Assert.Equal("next sc", choice.Words);
        Assert.Equal(Line.Length - 2, choice.From);
    }

    [Fact]
    public void Any_place_of_any_text_can_be_asked()
    {
        string text = Mesh + "Row 3: Ch 1, *(sc, ch 2 in [next\n\n((*** 5 5 5, sc in in in \ud83e";
        for (int cursor = 0; cursor <= text.Length; cursor += 3) Assert.True(WhatComesNext.At(text, cursor, asked: true).Count <= 10);
        Assert.True(WhatComesNext.At("", 0, asked: true).Count <= 10);
    }

    private static string? First(string above, string line, bool asked) => Words(above, line, asked).FirstOrDefault();

    private static string[] Words(string above, string line, bool asked)
    {
        EquatableArray<Choice> choices = WhatComesNext.At(RowsAbove.Of(above), line, asked);
        return [.. choices.Select(choice => choice.Words)];
    }
}
