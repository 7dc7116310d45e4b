using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Terms;
using PatternStudio.Web.Features.Testing.Sheets;

namespace PatternStudio.Web.Tests.Testing;

/// <summary>Patterns of our own invention as testers read them.</summary>
public sealed class SheetTests
{
    private const string Band = """
        # Cockle Band
        **Sizes:** Small (Medium, Large)
        ## Materials
        - 4 mm hook

        Ch 17 (19, 21).
        **Row 1:** Sc in 2nd ch from hook and in each ch across. 16 (18, 20) sc
        Row 2: Ch 1, turn, sc in each sc across.
        Rows 3–6: Rep Row 2.
        """;

    [Fact]
    public void Rows_are_told_from_words_headings_and_items()
    {
        Sheet sheet = Read(Band, 1);
        Assert.Equal(["Small", "Medium", "Large"], sheet.Sizes);
        Assert.Equal(
            [SheetBlockKind.Words, SheetBlockKind.Heading, SheetBlockKind.Item, SheetBlockKind.Words, SheetBlockKind.Row, SheetBlockKind.Row, SheetBlockKind.Row],
            sheet.Blocks.Select(block => block.Kind));
        Assert.Equal(["Row 1", "Row 2", "Row 3 to Row 6"], sheet.Rows);
        Assert.Equal((4, 6), (sheet.Blocks[^1].Times, sheet.RowsInAll));
    }

    /// <summary>Line 7 is Row 1, line 8 Row 2, line 9 Rows 3–6 (counted from '# Cockle Band').</summary>
    [Theory]
    [InlineData("Row 1", 7)]
    [InlineData("Row 3 to Row 6", 9)]
    [InlineData("Row 5", 9)]
    [InlineData("Row 7", null)]
    [InlineData("Border, Row 1", null)]
    public void A_row_that_a_tester_names_is_found_in_the_words(string name, int? line) =>
        Assert.Equal(line, RowNames.LineOf(PatternCheck.Check(Band).Sizes[0].Rows, name));

    [Fact]
    public void The_chosen_size_is_marked_and_the_others_are_there()
    {
        SheetBlock row = Read(Band, 1).Blocks[4];
        Assert.Equal([("16", SizeMark.Other), ("18", SizeMark.Mine), ("20", SizeMark.Other)], row.Words.Where(words => words.Mark != SizeMark.None).Select(words => (words.Text, words.Mark)));
        Assert.Equal("Row 1: Sc in 2nd ch from hook and in each ch across. 16 (18, 20) sc", row.Text);
        Assert.True(row.Words[0].Bold);
    }

    /// <summary>Medium: ch 19, 18 sc. Row 2 states no count: the count as worked stands beside it. Row 1 states its own.</summary>
    [Fact]
    public void A_row_without_a_count_gets_the_one_as_worked()
    {
        Sheet sheet = Read(Band, 1);
        Assert.Equal([null, 18, 18], sheet.Blocks.Where(block => block.Kind == SheetBlockKind.Row).Select(block => block.Counted));
    }

    [Theory]
    [InlineData("17 (19) sts and 3 (4, 5) more", "3 (4, 5)")] // two numbers are no list of three sizes
    [InlineData("46 (51, 56) cm / 6¾ (7½, 8¼) in", "46 (51, 56)6¾ (7½, 8¼)")]
    [InlineData("1 [2, -] ch", "1 [2, -]")]
    [InlineData("1 [2, -, 3] ch, 8 [9, -] times", "8 [9, -]")]
    public void Lists_of_all_sizes_are_marked(string line, string lists)
    {
        IReadOnlyList<SheetWords> words = new LineWords(3, 0).Divide(line);
        Assert.Equal(line, string.Concat(words.Select(part => part.Text)));
        Assert.Equal(string.Concat(lists.Where(char.IsAsciiDigit)), string.Concat(words.Where(part => part.Mark != SizeMark.None).SelectMany(part => part.Text).Where(char.IsAsciiDigit)));
    }

    [Theory]
    [InlineData("Row 2: Ch 1, turn.", "Row 2:")]
    [InlineData("Rnds 3–6 (RS): Rep Rnd 2.", "Rnds 3–6 (RS):")]
    [InlineData("Rep Row 2 for 8 more rows.", "")]
    [InlineData("**Row 1:** Sc in each ch across.", "Row 1:")]
    public void The_name_of_a_row_is_bold(string line, string name) =>
        Assert.Equal(name, string.Concat(new LineWords(1, 0).DivideRow(line).Where(words => words.Bold).Select(words => words.Text)));

    /// <summary>'**' is a mark that repeats are counted from as well as bold letters.</summary>
    [Theory]
    [InlineData("** Dc in next 3 sts, ch 1; rep from ** to end.")]
    [InlineData("Ch 3, **dc in next st, ch 1** twice.")]
    public void Marks_of_repeats_stay(string line) => Assert.Equal(line, Assert.Single(new LineWords(1, 0).Divide(line)).Text);

    [Fact]
    public void In_the_other_terms_rows_and_stitches_are_named_otherwise()
    {
        using var shelf = new SheetShelf();
        Sheet us = shelf.Sheet(Band, null, 0), uk = shelf.Sheet(Band, Terminology.Uk, 0);
        Assert.Equal(("sc", "single crochet"), (us.Stitches[1].Abbreviation, us.Stitches[1].Name));
        Assert.Equal(("dc", "double crochet"), (uk.Stitches[1].Abbreviation, uk.Stitches[1].Name));
        Assert.Equal("Row 2: Ch 1, turn, dc in each dc across.", uk.Blocks[5].Text);
        Assert.Equal(us.Rows, uk.Rows);
    }

    [Fact]
    public void What_a_new_version_changes_is_told_row_by_row()
    {
        Sheet before = Read(Band, 0), now = Read(Band.Replace("sc in each sc across.", "sc in each st across.", StringComparison.Ordinal).Replace("4 mm", "4.5 mm", StringComparison.Ordinal) + "\nFasten off.", 0);
        Assert.Equal(
            [
                new RowChange("Materials", "4 mm hook", "4.5 mm hook"),
                new RowChange("Row 2", "Row 2: Ch 1, turn, sc in each sc across.", "Row 2: Ch 1, turn, sc in each st across."),
                new RowChange("Materials", "", "Fasten off."),
            ],
            RowChanges.Between(before, now));
        Assert.Empty(RowChanges.Between(now, now));
    }

    private static Sheet Read(string text, int size) => SheetReader.Read(PatternCheck.Check(text), size);
}
