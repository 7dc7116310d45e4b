using Bunit;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Localization;
using PatternStudio.Studio;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Features.SwatchBook;

namespace PatternStudio.Web.Tests.SwatchBook;

public sealed class SwatchFormTests : PageTest
{
    private readonly List<SwatchDetails> kept = [];
    private IReadOnlyList<FieldMessage> refusal = [];
    private SwatchDetails? theirs;

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

        Assert.EndsWith("Write a number above zero, such as 18 or 18½.", form.WrongWith("Stitches"), StringComparison.Ordinal);
        Assert.Null(form.WrongWith("Rows or rounds"));
        Assert.Equal(written, form.Field("Stitches").GetAttribute("value"));
        Assert.Empty(kept);
    }

    [Fact]
    public void A_count_that_is_missing_is_asked_for()
    {
        IRenderedComponent<SwatchForm> form = Show();
        form.Field("Rows or rounds").Input("20");
        form.Button("Keep the swatch").Click();

        Assert.Equal("Count them over the width and height given; halves are fine.", form.WrongWith("Stitches"));
    }

    /// <summary>1 in = 2.54 cm, 1 oz = 28.349523125 g (international yard and pound, 1959): 4½ in = 11.43 cm, ½ oz = 14.1748 g.</summary>
    [Fact]
    public void Inches_ounces_fractions_and_commas_are_read_and_said_back()
    {
        IRenderedComponent<SwatchForm> form = Show();
        form.Field("Stitches").Input("16 1/2");
        form.Field("Rows or rounds").Input("20½");
        form.Field("over a width of").Input("4½ in");
        form.Field("over a height of").Input("10,5");
        form.Field("Weight").Input("0.5 oz");
        Assert.Contains("taken as 11.43 cm", form.Markup, StringComparison.Ordinal);
        Assert.Contains("taken as 14.17 g", form.Markup, StringComparison.Ordinal);
        form.Button("Keep the swatch").Click();

        SwatchDetails swatch = Assert.Single(kept);
        Assert.Equal((16.5, 20.5, 11.43, 10.5), (swatch.Stitches, swatch.Rows, Math.Round(swatch.WidthCm, 6), swatch.HeightCm));
        Assert.Equal(14.1748, swatch.WeightGrams!.Value, 4);
    }

    [Theory]
    [InlineData("over a width of", "10 cm 4 in")]
    [InlineData("over a width of", "-10")]
    [InlineData("over a width of", "1,000")]
    [InlineData("over a width of", "10 g")]
    [InlineData("Weight", "12 cm")]
    [InlineData("Hook", "G")]
    public void What_can_be_meant_in_two_ways_or_is_no_such_measure_is_told_at_its_field(string label, string written)
    {
        IRenderedComponent<SwatchForm> form = Show();
        form.Field("Stitches").Input("16");
        form.Field("Rows or rounds").Input("20");
        form.Field(label).Input(written);
        form.Button("Keep the swatch").Click();

        Assert.NotNull(form.WrongWith(label));
        Assert.Equal(written, form.Field(label).GetAttribute("value"));
        Assert.Empty(kept);
    }

    /// <summary>16 stitches in 10 cm are 6.25 mm wide; with a 20 mm hook that is a third of the hook, and nobody works so.</summary>
    [Fact]
    public void A_number_that_can_hardly_be_is_asked_at_its_field_and_kept_when_it_is_so()
    {
        IRenderedComponent<SwatchForm> form = Show();
        form.Field("Stitches").Input("16");
        form.Field("Rows or rounds").Input("20");
        form.Field("Hook").Input("20");
        form.Button("Keep the swatch").Click();

        Assert.Empty(kept);
        Assert.Contains("Is the hook right?", form.Field("Hook").ParentElement!.ParentElement!.TextContent, StringComparison.Ordinal);
        form.Button("Keep it as it is").Click();
        Assert.Equal(20, Assert.Single(kept).HookMm);
    }

    [Fact]
    public void Repeats_tiles_rounds_rows_and_named_patterns_are_kept_as_such()
    {
        IRenderedComponent<SwatchForm> form = Show();
        form.Field("Counted").Change("Repeats");
        form.Field("Repeats").Input("4");
        form.Field("Stitches in one repeat").Input("6");
        form.Field("Rows or rounds").Input("8");
        form.Field("Worked in").Change("rows");
        form.Field("From row").Input("2");
        form.Field("to row").Input("3");
        form.Button("Keep the swatch").Click();
        form.Field("Counted").Change("Rounds");
        form.Field("Rounds worked").Input("2");
        form.Field("measure across").Input("7");
        form.Field("Worked in").Change("named");
        form.Field("Name of the stitch pattern").Input("border");
        form.Button("Keep the swatch").Click();

        Assert.Equal((Counting.Repeats, 4, 6, 2, 3), (kept[0].Counted, kept[0].Stitches, kept[0].StitchesEach, kept[0].FromRow, kept[0].ToRow));
        Assert.Equal((Counting.Rounds, 2, 7, "border"), (kept[1].Counted, kept[1].Rows, kept[1].WidthCm, kept[1].Pattern));
    }

    [Fact]
    public void What_somebody_else_kept_meanwhile_is_shown_and_either_may_stay()
    {
        theirs = new SwatchDetails(17, 20, 10, 10, 8, null, null, "", new DateOnly(2026, 11, 25));
        IRenderedComponent<SwatchForm> form = Show();
        form.Field("Stitches").Input("16");
        form.Field("Rows or rounds").Input("20");
        form.Button("Keep the swatch").Click();

        Assert.Equal(["Stitches: 17 (yours: 16)", "Weight: 8 (yours: nothing)"], form.FindAll(".theirs li").Select(line => line.Reads()));
        Assert.Equal("16", form.Field("Stitches").GetAttribute("value"));
        theirs = null;
        form.Button("Keep mine instead").Click();
        Assert.Equal(16, Assert.Single(kept).Stitches);
    }

    [Fact]
    public void Theirs_can_be_taken()
    {
        theirs = new SwatchDetails(17, 20, 10, 10, 8, null, null, "", new DateOnly(2026, 11, 25));
        IRenderedComponent<SwatchForm> form = Show();
        form.Field("Stitches").Input("16");
        form.Field("Rows or rounds").Input("20");
        form.Button("Keep the swatch").Click();
        form.Button("Put theirs into the form").Click();

        Assert.Equal("17", form.Field("Stitches").GetAttribute("value"));
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

        Assert.Equal(before, SwatchInput.Of(before).Read(Services.GetRequiredService<IStringLocalizer<SwatchWords>>()).Value);
    }

    [Fact]
    public void What_the_studio_refuses_is_told_at_its_field_too()
    {
        refusal = [new FieldMessage("HookMm", "A hook has 0.4 to 50 mm.")];
        IRenderedComponent<SwatchForm> form = Show();
        form.Field("Stitches").Input("16");
        form.Field("Rows or rounds").Input("20");
        form.Field("Hook").Input("5");
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
        .Add(form => form.Keep, swatch =>
        {
            if (refusal.Count == 0 && theirs is null) kept.Add(swatch.Details);
            return Task.FromResult(new ChangeOutcome<SwatchDetails>(refusal, theirs));
        }));
}
