using PatternStudio.Craft.Charting;
using PatternStudio.Craft.Checking;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace PatternStudio.Publishing.Tests;

public sealed class PdfPainterTests
{
    private const string Square = "Granny square\n\nUS terms\nCh 4, sl st in first ch to form a ring.\nRnd 1: Ch 3 (counts as dc), 2 dc in ring, ch 2, *3 dc in ring, ch 2; rep from * 2 more times, sl st in top of ch-3. (12 dc)\n";

    /// <summary>A4 is 210 by 297 mm (ISO 216): 595 by 842 points.</summary>
    [Fact]
    public void A_small_chart_is_one_A4_page_with_title_and_key_and_its_letters_embedded()
    {
        using PdfDocument pdf = Open(Chart.Draw(PatternCheck.Check(Square), 0, new ChartStyle { Title = "Granny square" }));
        Page page = Assert.Single(pdf.GetPages());
        Assert.Equal((595, 842), ((int)Math.Round(page.Width), (int)Math.Round(page.Height)));
        Assert.Equal("Granny square", pdf.Information.Title);
        Assert.StartsWith("Granny square", page.Text, StringComparison.Ordinal);
        Assert.Contains("dc: double crochet", page.Text, StringComparison.Ordinal);
        Assert.Contains("(tr: treble)", page.Text, StringComparison.Ordinal);
        // A face of which a part is embedded is named by six letters and a plus (ISO 32000-1, 9.6.4).
        Assert.All(page.Letters, letter => Assert.Matches("^[A-Z]{6}\\+", letter.FontName!));
        Assert.True(page.Paths.Count > 20, "a chart is drawn in lines");
        Assert.Empty(page.GetImages());
    }

    [Fact]
    public void Readers_are_told_what_the_picture_shows()
    {
        Drawing drawing = Chart.Draw(PatternCheck.Check(Square));
        using PdfDocument pdf = Open(drawing);
        IReadOnlyList<MarkedContentElement> marked = pdf.GetPage(1).GetMarkedContents();
        Assert.Contains(marked, element => element.Tag == "Figure");
        Assert.Contains(marked, element => element.Tag == "H1");
        Assert.Contains(marked, element => element.Tag == "P");
    }

    /// <summary>100 stitches on 180 mm are 1.8 mm each: too small to work from, so larger pages follow.</summary>
    [Fact]
    public void A_large_chart_goes_on_over_pages_that_name_their_neighbours()
    {
        using PdfDocument pdf = Open(Chart.Draw(PatternCheck.Check("Ch 151.\nRow 1: Sc in 2nd ch from hook and in each ch across. (150 sc)\nRow 2: Ch 1, turn, sc in each sc across. (150 sc)\nRows 3-60: Rep Row 2. (150 sc)\n")));
        Assert.True(pdf.NumberOfPages > 2);
        Assert.Contains("part 1 of", pdf.GetPage(2).Text, StringComparison.Ordinal);
        Assert.Contains("page 3", pdf.GetPage(2).Text, StringComparison.Ordinal);
        Assert.All(pdf.GetPages(), page => Assert.True(page.Paths.Count > 0));
    }

    [Fact]
    public void A_page_of_nothing_is_a_page_that_says_so()
    {
        using PdfDocument pdf = Open(Chart.Draw(PatternCheck.Check("A title alone")));
        Assert.Contains("nothing to draw yet", pdf.GetPage(1).Text, StringComparison.Ordinal);
    }

    private static PdfDocument Open(Drawing drawing) => PdfDocument.Open(PdfPainter.Paint(drawing));
}
