using Bunit;
using PatternStudio.Studio;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Features.SwatchBook;

namespace PatternStudio.Web.Tests.SwatchBook;

public sealed class SwatchFormTests : PageTest
{
    private readonly List<SwatchDetails> kept = [];
    private IReadOnlyList<FieldMessage> refusal = [];

    [Fact]
    public void Keeps_what_was_measured()
    {
        IRenderedComponent<SwatchForm> form = Show();
        form.Field("Stitches").Input("16.5");
        form.Field("Rows or rounds").Input("20");
        form.Field("Weight").Input("7,4");
        form.Field("Hook").Input("4.5");
        form.Button("Keep the swatch").Click();

        Assert.Equal([new SwatchDetails(16.5, 20, 10, 10, 7.4, 4.5, null, "", new DateOnly(2026, 11, 25))], kept);
    }

    [Theory]
    [InlineData("")]
    [InlineData("0")]
    [InlineData("-4")]
    [InlineData("four")]
    [InlineData("1e400")]
    [InlineData("NaN")]
    public void A_count_that_is_no_number_above_zero_is_told_at_its_field(string written)
    {
        IRenderedComponent<SwatchForm> form = Show();
        form.Field("Stitches").Input(written);
        form.Field("Rows or rounds").Input("20");
        form.Button("Keep the swatch").Click();

        Assert.Equal("Write a number above zero, such as 18 or 18.5.", form.WrongWith("Stitches"));
        Assert.Null(form.WrongWith("Rows or rounds"));
        Assert.Empty(kept);
    }

    [Fact]
    public void A_swatch_in_a_plain_stitch_says_so()
    {
        IRenderedComponent<SwatchForm> form = Show();
        form.Field("Stitches").Input("16");
        form.Field("Rows or rounds").Input("20");
        form.Field("Worked in").Change("hdc");
        form.Button("Keep the swatch").Click();

        Assert.Equal("hdc", Assert.Single(kept).Stitch);
        Assert.Contains("half double crochet (UK: half treble", form.Field("Worked in").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void A_kept_swatch_stays_as_it_is_where_nothing_is_corrected()
    {
        var before = new SwatchDetails(16.5, 20, 10, 9.5, 7.4, 4.5, null, "blocked", new DateOnly(2026, 5, 3)) { Stitch = "dtr" };

        Assert.Equal(before, SwatchInput.Of(before).Read("", "").Value);
    }

    [Fact]
    public void What_the_studio_refuses_is_told_at_its_field_too()
    {
        refusal = [new FieldMessage("HookMm", "A hook has 0.4 to 50 mm.")];
        IRenderedComponent<SwatchForm> form = Show();
        form.Field("Stitches").Input("16");
        form.Field("Rows or rounds").Input("20");
        form.Field("Hook").Input("500");
        form.Button("Keep the swatch").Click();

        Assert.Equal("A hook has 0.4 to 50 mm.", form.WrongWith("Hook"));
    }

    [Fact]
    public void A_day_that_is_none_is_told()
    {
        IRenderedComponent<SwatchForm> form = Show();
        form.Field("Measured on").Input("");
        form.Button("Keep the swatch").Click();

        Assert.Equal("Give the day it was measured.", form.WrongWith("Measured on"));
    }

    private IRenderedComponent<SwatchForm> Show() => Render<SwatchForm>(with => with
        .Add(form => form.Input, SwatchInput.New(new DateOnly(2026, 11, 25)))
        .Add(form => form.Keep, details =>
        {
            if (refusal.Count == 0) kept.Add(details);
            return Task.FromResult(refusal);
        }));
}
