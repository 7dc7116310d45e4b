using Bunit;
using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Reading;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;
using PatternStudio.Web.Features.Desk;

namespace PatternStudio.Web.Tests.Desk;

public sealed class StitchListTests : PageTest
{
    private static readonly Pattern Puffs = PatternReader.Read(
        """
        US terms
        Special stitch
        Puff stitch (puff): [Yo, insert hook in st, yo and draw up a loop] 3 times in same st, yo and draw through all 7 loops on hook.

        Ch 22.
        Row 1: Sc in 2nd ch from hook and in each ch across. (21 sc)
        Row 2: Ch 1, turn, sc in first sc, *puff in next sc, sc in next sc; rep from * across. (21 sts)
        """);

    private TextSpan? gone;

    [Fact]
    public void Names_what_the_rows_use_in_both_terms_and_leads_to_what_the_pattern_tells_itself()
    {
        IRenderedComponent<StitchList> list = Show();

        Assert.StartsWith("Stitches and abbreviations: ch, sc, ", list.Find("summary").Reads(), StringComparison.Ordinal);
        Assert.Contains("ch chain sc single crochet (in the UK dc, double crochet)", list.Find("dl").Reads(), StringComparison.Ordinal);
        list.Find("dd button").Click();
        Assert.StartsWith("Puff stitch", Puffs.Source.Slice(gone!.Value), StringComparison.Ordinal);
    }

    [Fact]
    public void Is_copied_as_patterns_print_it()
    {
        JSInterop.SetupVoid("navigator.clipboard.writeText", "- ch: chain\n- sc: single crochet").SetVoidResult();
        IRenderedComponent<StitchList> list = Show();
        list.Button("Copy as a list").Click();

        Assert.Equal("Copied", list.Find("[role=status]").Reads());
    }

    /// <summary>On a page that is not secure there is no clipboard: nothing breaks, and it is said.</summary>
    [Fact]
    public void Where_the_browser_does_not_let_it_copy_it_says_so()
    {
        JSInterop.SetupVoid("navigator.clipboard.writeText", _ => true).SetException(new Microsoft.JSInterop.JSException("no clipboard"));
        IRenderedComponent<StitchList> list = Show();
        list.Button("Copy as a list").Click();

        Assert.Equal("The browser does not let this page copy.", list.Find("[role=status]").Reads());
    }

    [Fact]
    public void Nothing_is_shown_for_a_pattern_without_rows() =>
        Assert.Equal("", Render<StitchList>(with => with.Add(list => list.Stitches, [])).Markup.Trim());

    private IRenderedComponent<StitchList> Show() => Render<StitchList>(with => with
        .Add(list => list.Stitches, UsedStitches.Of(Puffs))
        .Add(list => list.Go, span => gone = span));
}
