using Bunit;
using PatternStudio.Studio.Designs;
using PatternStudio.Web.Features.Desk;

namespace PatternStudio.Web.Tests.Desk;

public sealed class VitalNumbersTests : PageTest
{
    [Fact]
    public void Every_number_tells_how_it_was_computed()
    {
        SizeResults size = Rows.Size([]) with
        {
            Size = new FinishedSize(50.8, 40.6, "16 sts and 20 rows = 10 cm, from the swatch of 3 May"),
            Yarn = new YarnNeed(123.4, 209.8, 3, "0.12 g for each stitch, from the swatch of 3 May"),
        };

        string shown = Show(size).Find("section").Reads();

        Assert.Contains("51 × 40.5 cm", shown);
        Assert.Contains("20 × 16 in", shown); // 50.8 cm and 40.6 cm are 20 and 16 inches (1 in = 2.54 cm by definition)
        Assert.Contains("123 g", shown);
        Assert.Contains("210 m", shown);
        Assert.Contains("Balls to buy 3", shown);
        Assert.Contains("16 sts and 20 rows = 10 cm, from the swatch of 3 May", shown);
        Assert.Contains("0.12 g for each stitch, from the swatch of 3 May", shown);
    }

    [Fact]
    public void What_is_not_known_says_so_and_why()
    {
        SizeResults size = Rows.Size([]) with { WhyNoSize = "No swatch is chosen.", WhyNoYarn = "The swatch was not weighed." };

        IRenderedComponent<VitalNumbers> numbers = Show(size);

        Assert.Equal(["not known", "not known", "not known"], numbers.FindAll(".figure").Select(figure => figure.Reads()));
        Assert.Equal(
            [
                "Why? is this not known: Finished size No swatch is chosen.",
                "Why? is this not known: Yarn needed The swatch was not weighed.",
                "Why? is this not known: Balls to buy The swatch was not weighed.",
            ],
            numbers.FindAll("details").Select(details => details.Reads()));
    }

    [Fact]
    public void Without_a_yarn_the_grams_are_known_but_not_the_balls()
    {
        SizeResults size = Rows.Size([]) with { Yarn = new YarnNeed(80, null, null, "from the swatch of 3 May") };

        string shown = Show(size).Find("section").Reads();

        Assert.Contains("80 g metres not known", shown);
        Assert.Contains("Balls to buy not known Why? is this not known: Balls to buy Choose the yarn", shown);
    }

    [Fact]
    public void Several_pieces_have_sizes_of_their_own()
    {
        SizeResults size = Rows.Size([]) with
        {
            Pieces =
            [
                new PieceResults("Square", 12, "in rounds", new FinishedSize(12, 12, "from the swatch"), ""),
                new PieceResults("Border", 1, "", null, "A border has no size of its own."),
            ],
        };

        Assert.Contains("2 pieces Square × 12: 12 × 12 cm Border: not known", Show(size).Find(".vital > div").Reads());
    }

    private IRenderedComponent<VitalNumbers> Show(SizeResults size) =>
        Render<VitalNumbers>(with => with.Add(numbers => numbers.Numbers, size));
}
