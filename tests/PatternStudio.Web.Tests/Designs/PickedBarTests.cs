using Bunit;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Exchange;
using PatternStudio.Web.Features.Designs;
using PatternStudio.Web.Features.Designs.Exchange;

namespace PatternStudio.Web.Tests.Designs;

public sealed class PickedBarTests : PageTest
{
    [Fact]
    public void Says_how_many_are_picked_and_offers_all_that_fit()
    {
        Assert.Contains("Pick all 2000", Bar(3, 2000).Find("section").Reads());
        Assert.DoesNotContain("Pick all", Bar(3, 3).Find("section").Reads());
        Assert.StartsWith("1 design picked", Bar(1, 3).Find("section").Reads(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_state_and_a_tag_are_handed_on()
    {
        var told = new List<string>();
        IRenderedComponent<PickedBar> bar = Render<PickedBar>(with => with.Add(it => it.Count, 2).Add(it => it.Total, 2)
            .Add(it => it.MoveTo, (DesignState state) => told.Add($"{state}")).Add(it => it.Tag, (string tag) => told.Add(tag)).Add(it => it.Untag, (string tag) => told.Add($"-{tag}")));
        bar.Find("select").Change("Testing");
        bar.Find("select").Change("");
        bar.Find("input").Change("baby");
        bar.Find("form").Submit();
        bar.Find("input").Change("old");
        bar.Button("Take tag off").Click();

        Assert.Equal(["Testing", "baby", "-old"], told);
    }

    [Fact]
    public void A_report_tells_of_each_file_what_became_of_it()
    {
        IncomingText good = new("a.txt", "Cloth", "Ch 5.", "", "There is a 'Cloth' already."), bad = new("b.pdf", "", "", "It is a PDF.", ""), late = good with { File = "c.txt" };
        string before = Render<TextsTable>(with => with.Add(it => it.Texts, [good, bad])).Find("tbody").Reads();
        string after = Render<TextsTable>(with => with.Add(it => it.Texts, [good, bad, late]).Add(it => it.Report, [new(good, Guid.Empty), new(bad, null), new(late, null)])).Find("tbody").Reads();

        Assert.Equal("a.txt Cloth Will be taken There is a 'Cloth' already. b.pdf Not taken It is a PDF.", before);
        Assert.Equal("a.txt Cloth Taken There is a 'Cloth' already. b.pdf Not taken It is a PDF. c.txt Cloth Stopped before", after);
    }

    private IRenderedComponent<PickedBar> Bar(int count, int total) => Render<PickedBar>(with => with.Add(it => it.Count, count).Add(it => it.Total, total));
}
