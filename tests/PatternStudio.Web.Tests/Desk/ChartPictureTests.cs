using Bunit;
using PatternStudio.Craft.Charting;
using PatternStudio.Craft.Charting.InSpace;
using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Measuring;
using PatternStudio.Web.Features.Desk;

namespace PatternStudio.Web.Tests.Desk;

public sealed class ChartPictureTests : PageTest
{
    private const string Cloth = "Ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across. (20 sc)\nRow 2: Ch 1, turn, sc in each sc across. (20 sc)\n";

    private static ChartWish Wish(string text, ChartChoice? choice = null, Measured<RowSchedule>? schedule = null) =>
        new(PatternCheck.Check(text), 0, schedule, "Quay cloth", choice ?? new ChartChoice());

    [Fact]
    public void A_chart_is_drawn_under_its_design_title_and_sent_as_a_scene()
    {
        ChartPicture picture = ChartPicture.Draw(Wish(Cloth));
        Assert.Equal("Quay cloth", picture.Drawing!.Title);
        Assert.NotEmpty(picture.Scene);
    }

    [Fact]
    public void The_same_words_are_not_drawn_twice()
    {
        Assert.True(Wish(Cloth).SameAs(Wish(Cloth)));
        Assert.False(Wish(Cloth).SameAs(Wish(Cloth + "Fasten off.")));
        Assert.False(Wish(Cloth).SameAs(Wish(Cloth, new ChartChoice { LeftHanded = true })));
        // Other measures of the same words make another outline.
        Assert.False(Wish(Cloth, new ChartChoice { Outline = true }).SameAs(Wish(Cloth, new ChartChoice { Outline = true })));
    }

    /// <summary>20 stitches at 16 to 10 cm are 12.5 cm.</summary>
    [Fact]
    public void An_outline_has_the_measures_or_says_why_there_are_none()
    {
        CheckedPattern pattern = PatternCheck.Check(Cloth);
        Swatch swatch = Swatch.Parse("16 sc, 18 rows = 10 x 10 cm", pattern.Pattern.Terms.Terminology).Value!;
        ChartPicture known = ChartPicture.Draw(Wish(Cloth, new ChartChoice { Outline = true }, RowSchedule.Compute(pattern, new MeasuringBasis([swatch], null), 0)));
        Assert.Contains(known.Drawing!.Rows[0].Marks.OfType<Words>(), words => words.Text == "12.5 cm (5 in)");
        ChartPicture unknown = ChartPicture.Draw(Wish(Cloth, new ChartChoice { Outline = true }, RowSchedule.Compute(pattern, new MeasuringBasis([], null), 0)));
        Assert.Null(unknown.Drawing);
        Assert.Contains("no swatch", unknown.Why, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Cloth, false)]
    [InlineData("With A, ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across. (20 sc)\nRow 2: With B, ch 1, turn, sc in each sc across. (20 sc)\n", true)]
    public void Colours_are_offered_where_there_are_several(string text, bool several) =>
        Assert.Equal(several, ChartFacts.Of(PatternCheck.Check(text).Sizes[0].Fabric).HasColours);

    [Fact]
    public void A_chart_in_colours_has_those_of_the_yarns_and_is_drawn_anew_with_others()
    {
        const string Stripes = "With A, ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across. (20 sc)\nRow 2: With B, ch 1, turn, sc in each sc across. (20 sc)\n";
        ChartWish plain = Wish(Stripes, new ChartChoice { InColour = true }), dyed = plain with { Yarns = [new("B", "#5d6f3a", "Wrackline Cotton, Kelp")] };

        Drawing drawing = ChartPicture.Draw(dyed).Drawing!;

        Assert.Equal("#5d6f3a", drawing.Colours[1].Hex);
        Assert.Contains("B: Wrackline Cotton, Kelp", string.Join(' ', Render<ChartKey>(with => with.Add(it => it.Drawing, drawing)).FindAll("li").Select(line => line.Reads())), StringComparison.Ordinal);
        Assert.False(dyed.SameAs(plain));
        Assert.True((dyed with { Choice = new() }).SameAs(plain with { Choice = new() }));
    }

    [Fact]
    public void The_key_stands_in_words_beside_its_symbols()
    {
        IRenderedComponent<ChartKey> key = Render<ChartKey>(with => with.Add(it => it.Drawing, ChartPicture.Draw(Wish("US terms\n" + Cloth)).Drawing!));
        Assert.Contains("sc: single crochet (dc: double crochet)", string.Join(' ', key.FindAll("li").Select(line => line.Reads())), StringComparison.Ordinal);
        Assert.All(key.FindAll(".key-symbol svg"), symbol => Assert.Equal("true", symbol.GetAttribute("aria-hidden")));
    }

    /// <summary>6 sc in round 1 and 6 more in each round lie flat (common practice); worked even they draw in.</summary>
    [Fact]
    public void Flatness_says_from_where_on_and_how_it_was_found()
    {
        CheckedPattern bowl = PatternCheck.Check(
            "US terms\nRnd 1: 6 sc in magic ring. (6 sc)\nRnd 2: 2 sc in each sc around. (12 sc)\nRnd 3: *Sc in next sc, 2 sc in next sc; rep from * around. (18 sc)\nRnds 4-9: Sc in each sc around. (18 sc)\n");
        IRenderedComponent<ChartFlatness> shown = Render<ChartFlatness>(with => with.Add(it => it.Pieces, FlatnessFinder.FindAll(bowl.Sizes[0].Fabric.Pieces, new StitchForms(bowl.Pattern))));
        Assert.Contains("rises to a bowl from Rnd", shown.Find(".lies p").TextContent, StringComparison.Ordinal);
        Assert.Contains("Rnd 3: 18 stitches, 18 would lie flat: flat.", shown.Find(".how").TextContent, StringComparison.Ordinal);
    }
}
