using AngleSharp.Dom;
using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using PatternStudio.Studio.Designs;
using PatternStudio.Web.Features.Designs.Start;

namespace PatternStudio.Web.Tests.Designs;

/// <summary>A design is begun empty, from a pasted pattern, from a stitch, or from another design.</summary>
public sealed class StartPageTests : StudioPageTest
{
    private const string Title = "Title", Pattern = "Pattern, if you have one";

    [Fact]
    public async Task A_title_alone_begins_an_empty_design()
    {
        IRenderedComponent<StartPage> page = Render<StartPage>();
        page.Field(Title).Input("  Sea lace  ");
        page.Find("form").Submit();

        await SeesAsync(page, "Sea lace", "");
    }

    [Fact]
    public async Task A_pasted_pattern_is_called_by_its_first_line_and_tidied_unless_it_is_to_stay_as_pasted()
    {
        const string Mail = "> Mudlark cloth\n>\n> Ch 20.\n> Fasten off.";
        IRenderedComponent<StartPage> page = Render<StartPage>();
        page.Field(Pattern).Input(Mail);
        Assert.Contains("Quotation marks of a mail dropped: 4 lines", page.Find(".tidied").Reads(), StringComparison.Ordinal);
        page.Find("form").Submit();
        await SeesAsync(page, "Mudlark cloth", "Mudlark cloth\n\nCh 20.\nFasten off.");

        IRenderedComponent<StartPage> again = Render<StartPage>();
        again.Field(Title).Input("As pasted");
        again.Field(Pattern).Input(Mail);
        again.Find(".tidied input[type=checkbox]").Change(true);
        again.Find("form").Submit();
        await SeesAsync(again, "As pasted", Mail);
    }

    public static TheoryData<string, string, string, string> Bad => new()
    {
        { "", "", Title, "The design needs a name. Enter one." },
        { new string('a', 201), "", Title, "The name of the design has 201 characters. Shorten it to 200 or fewer." },
        { "Torn \ud83e", "", Title, "The name of the design holds a character that can't be kept." },
        { "Cloth", new string('c', 2_000_001), Pattern, "The pattern has 2,000,001 characters; 2,000,000 can be kept." },
    };

    [Theory]
    [MemberData(nameof(Bad), DisableDiscoveryEnumeration = true)]
    public async Task What_can_not_be_is_told_at_its_field_and_nothing_typed_is_lost(string title, string text, string field, string says)
    {
        IRenderedComponent<StartPage> page = Render<StartPage>();
        page.Field(Title).Input(title);
        page.Field(Pattern).Input(text);
        page.Find("form").Submit();

        page.WaitForAssertion(() => Assert.StartsWith(says, page.WrongWith(field), StringComparison.Ordinal));
        Assert.Equal(title, page.Field(Title).GetAttribute("value"));
        Assert.Equal(0, (await Library.ListAsync(Caller, new())).Total);
    }

    [Fact]
    public async Task Script_in_title_and_pattern_stays_words()
    {
        const string Script = "<script>alert(1)</script>";
        IRenderedComponent<StartPage> page = Render<StartPage>();
        page.Field(Title).Input(Script);
        page.Field(Pattern).Input($"{Script}\n\nCh 9. {Script}");
        Assert.Empty(page.FindAll("script"));
        page.Find("form").Submit();

        page.WaitForAssertion(() => Assert.Contains("designs/", Services.GetRequiredService<NavigationManager>().Uri, StringComparison.Ordinal));
        Assert.Equal(Script, Assert.Single((await Library.ListAsync(Caller, new())).Designs).Title);
    }

    [Fact]
    public async Task A_stitch_is_found_and_begun_as_wide_as_wanted()
    {
        IRenderedComponent<StartPage> page = Begin("stitch");
        page.Find("input[type=search]").Input("fans");
        Assert.Equal(2, page.FindAll(".stitch-card").Count);
        Stitch(page, "Shells").Click();
        page.Field("Repeats").Input("9");
        page.Find("form").Submit();

        page.WaitForAssertion(() => Assert.Contains("designs/", Services.GetRequiredService<NavigationManager>().Uri, StringComparison.Ordinal));
        DesignSummary begun = Assert.Single((await Library.ListAsync(Caller, new())).Designs);
        Assert.Equal(("Shells", 0), (begun.Title, begun.Errors));
    }

    [Theory]
    [InlineData("")]
    [InlineData("0")]
    [InlineData("-3")]
    [InlineData("3.5")]
    [InlineData("6 cm")]
    [InlineData("many")]
    [InlineData("99999999999")]
    [InlineData("<b>6</b>")]
    public void Repeats_that_are_none_are_told_at_their_field(string written)
    {
        IRenderedComponent<StartPage> page = Begin("stitch");
        page.FindAll(".stitch-card")[0].Click();
        page.Field("Repeats").Input(written);
        page.Find("form").Submit();

        page.WaitForAssertion(() => Assert.Contains("a whole number from 3 to", page.WrongWith("Repeats"), StringComparison.Ordinal));
    }

    [Fact]
    public async Task Another_design_is_copied_under_a_title_of_its_own()
    {
        await Desk.CreateAsync(Caller, "Sea lace", "Ch 9.");
        IRenderedComponent<StartPage> page = Begin("design");
        page.WaitForAssertion(() => Stitch(page, "Sea lace"));
        Stitch(page, "Sea lace").Click();
        page.Field("Title of the new design").Input(" ");
        page.Find("form").Submit();
        page.WaitForAssertion(() => Assert.Equal("The design needs a name. Enter one.", page.WrongWith("Title of the new design")));
        page.Field("Title of the new design").Input("Sea lace shawl");
        page.Find("form").Submit();

        await SeesAsync(page, "Sea lace shawl", "Ch 9.");
    }

    private IRenderedComponent<StartPage> Begin(string from)
    {
        Services.GetRequiredService<NavigationManager>().NavigateTo($"designs/new?from={from}");
        return Render<StartPage>();
    }

    private static IElement Stitch(IRenderedComponent<StartPage> page, string name) =>
        page.FindAll(".stitch-card").Single(card => card.QuerySelector("strong")!.TextContent == name);

    private async Task SeesAsync(IRenderedComponent<StartPage> page, string title, string text)
    {
        page.WaitForAssertion(() => Assert.Matches("designs/[0-9a-f-]{36}$", Services.GetRequiredService<NavigationManager>().Uri));
        OpenDesign open = (await Desk.OpenAsync(Caller, Guid.Parse(Services.GetRequiredService<NavigationManager>().Uri[^36..])))!;
        Assert.Equal((title, text), (open.Title, open.Text));
    }
}
