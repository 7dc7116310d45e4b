using Bunit;
using PatternStudio.Web.Features.Desk;
using PatternStudio.Web.Shell.Parts;

namespace PatternStudio.Web.Tests.Shell;

public sealed class TabStripTests : PageTest
{
    [Theory]
    [InlineData("ArrowRight", DeskView.Chart)]
    [InlineData("ArrowLeft", DeskView.Materials)]
    [InlineData("End", DeskView.Materials)]
    [InlineData("Home", DeskView.Rows)]
    public void Keys_move_between_tabs_and_go_round(string key, DeskView reached)
    {
        JSInterop.Mode = JSRuntimeMode.Loose;
        DeskView? chosen = null;
        IRenderedComponent<TabStrip<DeskView>> tabs = Render<TabStrip<DeskView>>(with => with
            .Add(strip => strip.Label, "Views")
            .Add(strip => strip.Tabs, [DeskView.Rows, DeskView.Chart, DeskView.Materials])
            .Add(strip => strip.Selected, DeskView.Rows)
            .Add(strip => strip.SelectedChanged, tab => chosen = tab)
            .Add(strip => strip.Title, tab => tab.ToString())
            .Add(strip => strip.PanelId, tab => $"panel-{tab}"));

        tabs.Find("[role=tablist]").KeyDown(key);

        Assert.Equal(reached, chosen);
    }
}
