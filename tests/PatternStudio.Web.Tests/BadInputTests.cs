using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using PatternStudio.Studio;
using PatternStudio.Studio.Accounts;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Features.Settings;
using PatternStudio.Web.Features.SwatchBook;
using PatternStudio.Web.Features.Tour;
using PatternStudio.Web.Features.YarnShelf;

namespace PatternStudio.Web.Tests;

/// <summary>Every field of the forms about materials and of the settings, with what can't be: it is told at the field, and nothing is kept.</summary>
public sealed class BadInputTests : StudioPageTest
{
    private static readonly string TooLong = new('x', 2_001);

    public static TheoryData<string, string> YarnFields => new()
    {
        { "Name", "" }, { "Name", "   " }, { "Name", TooLong }, { "Name", "Torn \ud83e" },
        { "Weight of a ball", "heavy" }, { "Weight of a ball", "50 m" }, { "Weight of a ball", "-50" }, { "Weight of a ball", "0" }, { "Weight of a ball", "1e400" }, { "Weight of a ball", "999999999" },
        { "Length of a ball", "long" }, { "Length of a ball", "125 g" }, { "Length of a ball", "-1" }, { "Length of a ball", "<b>125</b>" }, { "Length of a ball", "99999999" },
        { "Fibre", TooLong }, { "Colour name", TooLong }, { "Care", TooLong }, { "Care", "40 \ud83e°" },
        { "Price of a ball", "cheap" }, { "Price of a ball", "-3" }, { "Price of a ball", "999999999" }, { "Currency", "EURO" }, { "Currency", "4.5" },
    };

    [Theory]
    [MemberData(nameof(YarnFields))]
    public async Task Of_a_yarn(string label, string written)
    {
        Yarns yarns = Services.GetRequiredService<Yarns>();
        IRenderedComponent<YarnForm> form = Render<YarnForm>(with => with
            .Add(it => it.Input, new YarnInput { Name = "Marram", Price = "4.50", Currency = "EUR" })
            .Add(it => it.Keep, async (details, _) => Outcome.Refused((await yarns.AddAsync(Caller, details)).Messages)));
        form.Field(label).Input(written);
        form.Button("Keep the yarn").Click();

        form.WaitForAssertion(() => Assert.False(string.IsNullOrWhiteSpace(form.WrongWith(label))));
        Assert.Equal(written, form.Field(label).GetAttribute("value"));
        Assert.Empty(await yarns.ListAsync(Caller));
    }

    public static TheoryData<string, string> LotFields => new()
    {
        { "Whole balls", "two" }, { "Whole balls", "1.5" }, { "Whole balls", "-1" }, { "Whole balls", "99999999999" }, { "Whole balls", "3 g" },
        { "Begun balls weigh", "some" }, { "Begun balls weigh", "-4" }, { "Begun balls weigh", "20 m" }, { "Begun balls weigh", "999999999" },
        { "Dye lot", TooLong }, { "Place", TooLong }, { "Note", TooLong }, { "Note", "a \ud83e" },
    };

    [Theory]
    [MemberData(nameof(LotFields))]
    public async Task Of_a_lot(string label, string written)
    {
        Stash stash = Services.GetRequiredService<Stash>();
        var label50 = new YarnDetails("Marram", "", 3, 125, 50, "", "");
        Guid yarn = (await Services.GetRequiredService<Yarns>().AddAsync(Caller, label50)).Value;
        IRenderedComponent<LotForm> form = Render<LotForm>(with => with
            .Add(it => it.Input, new LotInput { YarnId = yarn, Balls = "2" }).Add(it => it.Yarn, label50)
            .Add(it => it.Keep, async (details, _) => Outcome.Refused((await stash.AddAsync(Caller, details)).Messages)));
        form.Field(label).Input(written);
        form.Button("Keep the lot").Click();

        form.WaitForAssertion(() => Assert.False(string.IsNullOrWhiteSpace(form.WrongWith(label))));
        Assert.Equal(written, form.Field(label).GetAttribute("value"));
        Assert.Empty(await stash.ListAsync(Caller));
    }

    /// <summary>What the field is in, then what is written into it.</summary>
    public static TheoryData<string, string, string> SwatchFields => new()
    {
        { "", "Stitches", "" }, { "", "Stitches", "99999999" }, { "", "Rows or rounds", "twenty" }, { "", "over a width of", "10 g" }, { "", "over a width of", "" }, { "", "over a height of", "0" }, { "", "over a height of", "99999 cm" },
        { "", "Weight", "a little" }, { "", "Weight", "7 m" }, { "", "Weight", "-7" }, { "", "Hook", "H" + TooLong[..30] }, { "", "Hook", "900" }, { "", "Measured on", "yesterday" }, { "", "Note", TooLong }, { "", "Note", "a \ud83e" },
        { SwatchInput.SomeRows, "From row", "two" }, { SwatchInput.SomeRows, "From row", "99999999999" }, { SwatchInput.SomeRows, "to row", "" }, { SwatchInput.SomeRows, "to row", "-1" },
        { SwatchInput.Named, "Name of the stitch pattern", "" }, { SwatchInput.Named, "Name of the stitch pattern", TooLong },
    };

    [Theory]
    [MemberData(nameof(SwatchFields))]
    public async Task Of_a_swatch(string workedIn, string label, string written)
    {
        Swatches swatches = Services.GetRequiredService<Swatches>();
        Guid design = (await Desk.CreateAsync(Caller, "Cloth", "Ch 9.")).Value;
        SwatchInput input = SwatchInput.New(new DateOnly(2026, 11, 25));
        (input.Stitches, input.Rows, input.WorkedIn, input.FromRow, input.ToRow, input.Pattern) = ("16", "20", workedIn, "2", "3", "Shells");
        IRenderedComponent<SwatchForm> form = Render<SwatchForm>(with => with
            .Add(it => it.Input, input)
            .Add(it => it.Keep, async swatch => Outcome.Refused((await swatches.AddAsync(Caller, design, swatch.Details)).Messages)));
        form.Field(label).Input(written);
        form.Button("Keep the swatch").Click();
        // A number that can hardly be is asked about first; whoever insists hears what can't be at all.
        if (form.FindAll("button").Any(button => button.TextContent == "Keep it as it is")) form.Button("Keep it as it is").Click();

        form.WaitForAssertion(() => Assert.False(string.IsNullOrWhiteSpace(form.WrongWith(label))));
        Assert.Equal(written, form.Field(label).GetAttribute("value"));
        Assert.Empty(await swatches.ListAsync(Caller, design));
    }

    [Fact]
    public async Task Script_in_a_yarn_stays_words()
    {
        await Services.GetRequiredService<Yarns>().AddAsync(Caller, new YarnDetails("<script>alert(1)</script>", "<img src=x onerror=alert(1)>", null, null, null, "", ""));

        IRenderedComponent<YarnLine> line = Render<YarnLine>(with => with.Add(it => it.Yarn, Services.GetRequiredService<Yarns>().ListAsync(Caller).Result[0].Details));

        Assert.Empty(line.FindAll("script, img"));
        Assert.Contains("<script>alert(1)</script>", line.Find("strong").TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx", "Your name has 81 characters. Shorten it to 80 or fewer.")]
    [InlineData("Mi\0ra", "Your name holds a character that can't be kept.")]
    public async Task Of_the_settings(string written, string says)
    {
        Services.AddScoped<Guide>();
        IRenderedComponent<SettingsPage> page = Render<SettingsPage>();
        page.Field("Your name").Input(written);
        page.Find("form").Submit();

        page.WaitForAssertion(() => Assert.StartsWith(says, page.WrongWith("Your name"), StringComparison.Ordinal));
        Assert.Equal("", await Services.GetRequiredService<People>().NameOfAsync(Caller));
    }

    [Fact]
    public async Task A_name_is_kept_with_the_settings()
    {
        Services.AddScoped<Guide>();
        IRenderedComponent<SettingsPage> page = Render<SettingsPage>();
        page.Field("Your name").Input("Mira <b>Holm</b>");
        page.Find("form").Submit();

        page.WaitForAssertion(() => Assert.EndsWith("settings?kept=true", Services.GetRequiredService<NavigationManager>().Uri, StringComparison.Ordinal));
        Assert.Equal("Mira <b>Holm</b>", await Services.GetRequiredService<People>().NameOfAsync(Caller));
    }
}
