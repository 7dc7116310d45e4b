using Bunit;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Features.Desk;

namespace PatternStudio.Web.Tests.Desk;

public sealed class ColourPanelTests : PageTest
{
    private static readonly KeptYarn Kelp = new(new Guid(1, 0, 0, new byte[8]), new YarnDetails("Wrackline Cotton", "cotton", 4, 85, 50, "Kelp", "#5D6F3A"), 1);

    [Fact]
    public void A_pattern_that_names_no_colour_is_not_asked_about_any() => Assert.Equal("", Show([""]).Markup.Trim());

    [Fact]
    public void Each_colour_shows_its_yarn_and_can_be_given_another_or_none()
    {
        var chosen = new List<(string, Guid?)>();
        IRenderedComponent<ColourPanel> panel = Show(["", "MC", "CC"], chosen);

        Assert.Equal(["MC", "CC"], panel.FindAll("label").Select(label => label.Reads()));
        Assert.Equal("background:#5D6F3A", panel.Find(".yarn-dot").GetAttribute("style"));
        Assert.Equal(Kelp.Id.ToString(), panel.FindAll("select")[0].GetAttribute("value"));
        Assert.Contains("Wrackline Cotton, Kelp", panel.Find("select").Reads(), StringComparison.Ordinal);
        panel.FindAll("select")[1].Change(Kelp.Id.ToString());
        panel.FindAll("select")[0].Change("");
        Assert.Equal([("CC", Kelp.Id), ("MC", null)], chosen);
    }

    private IRenderedComponent<ColourPanel> Show(IReadOnlyList<string> colours, List<(string, Guid?)>? chosen = null) => Render<ColourPanel>(with => with
        .Add(it => it.Colours, colours)
        .Add(it => it.Yarns, [Kelp])
        .Add(it => it.Chosen, new Dictionary<string, Guid> { ["MC"] = Kelp.Id })
        .Add(it => it.Choose, choice => chosen?.Add(choice)));
}
