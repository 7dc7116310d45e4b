namespace PatternStudio.Craft.Tests.Checking;

/// <summary>Every sentence whole, as a maker reads it: it names the row, the place and what to do, in the pattern's own terms.</summary>
public sealed class SentenceTests
{
    public static TheoryData<string, string> Sentences => new()
    {
        { Texts.TenSc + "Row 2: Ch 1, turn, sc in each sc across. (11 sc)", "Row 2 states 11 sc, but working it gives 10. Correct the number, or the row." },
        { Texts.TenSc + "Row 2: Ch 1, turn, sc in next 12 sc.", "Row 2 runs out here: Row 1 has 10 sc in all, and this needs more. Work fewer here, or check the row below." },
        { Texts.TenSc + "Row 2: Ch 1, turn, sc in next 9 sc.", "Row 2 leaves 1 stitch of Row 1 unworked. Work into it, or say that it is left unworked." },
        { Texts.TenSc + "Row 2: Ch 1, turn, sc in next 8 sc.", "Row 2 leaves 2 stitches of Row 1 unworked. Work into them, or say that they are left unworked." },
        { Texts.TenSc + "Row 2: Ch 1, turn, sc in next 9 sc, sc in next ch-2 sp.", "Row 2 asks for a ch-2 sp, but Row 1 has none. What it has: 10 sc." },
        { "Ch 11.\nRow 1: Sc in 2nd ch from hook and in next 12 chs.", "Row 1 runs out here: the foundation has 11 chs in all, and this needs more. Work fewer here, or check the row below." },
        { "UK terms\nCh 11.\nRow 1: Dc in 2nd ch from hook and in each ch across. (10 dc)\nRow 2: Ch 1, turn, dc in next 9 dc.", "Row 2 leaves 1 stitch of Row 1 unworked. Work into it, or say that it is left unworked." },
        { "UK terms\nCh 11.\nRow 1: Dc in 2nd ch from hook and in each ch across. (10 dc)\nRow 2: Ch 1, turn, dc in each dc across. (11 dc)", "Row 2 states 11 dc, but working it gives 10. Correct the number, or the row." },
        { "Row 1: Sc in each st across.", "Row 1 works into a row below, but there is nothing below it. Begin with a chain, a ring or foundation stitches." },
        { Texts.TenSc + "Row 2: Ch 1, turn, sc in each sc across.\nRow 5: Ch 1, turn, sc in each sc across.", "Numbers 3 to 4 are missing: the numbers go from 2 to 5 here. Add those rows, or renumber." },
        { "Finished size: 20 cm (9 in)\n" + Texts.TenSc, "20 cm and 9 in are not the same length: 20 cm is about 7¾ in, and 9 in is about 23 cm. Correct one of them." },
    };

    [Theory]
    [MemberData(nameof(Sentences))]
    public void It_stands_alone(string text, string sentence) => Assert.Equal(sentence, Texts.Only(text).Message);

    [Fact]
    public void A_finding_of_one_size_names_it()
    {
        string message = Texts.Only("Sizes: Small (Medium, Large)\nCh 11 (13, 15).\nRow 1: Sc in 2nd ch from hook and in each ch across. (10 (12, 15) sc)").Message;
        Assert.Equal("Size Large: Row 1 states 15 sc, but working it gives 14. Correct the number, or the row.", message);
    }

    [Fact]
    public void A_finding_of_some_sizes_names_them_all()
    {
        const string sizes = "Sizes: Small (Medium, Large)\nCh 11 (13, 15).\nRow 1: Sc in 2nd ch from hook and in each ch across. (10 (12, 14) sc)\n";
        Assert.Equal("Sizes Small and Medium: Row 2 leaves 1 stitch of Row 1 unworked. Work into it, or say that it is left unworked.", Texts.Only(sizes + "Row 2: Ch 1, turn, sc in next 9 (11, 14) sc.").Message);
        Assert.Equal("Size Small: Row 2 leaves 1 stitch of Row 1 unworked. Work into it, or say that it is left unworked. Size Medium goes wrong here too, by other numbers.", Texts.Only(sizes + "Row 2: Ch 1, turn, sc in next 9 (10, 14) sc.").Message);
    }
}
