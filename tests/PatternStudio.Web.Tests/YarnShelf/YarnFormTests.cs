using Bunit;
using PatternStudio.Studio;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Features.YarnShelf;

namespace PatternStudio.Web.Tests.YarnShelf;

public sealed class YarnFormTests : PageTest
{
    private readonly List<YarnDetails> kept = [];

    [Fact]
    public void Keeps_what_the_label_tells_and_leaves_open_what_it_does_not()
    {
        IRenderedComponent<YarnForm> form = Show();
        form.Field("Name").Input("Wrackline Cotton");
        form.Field("Weight of a ball").Input("50");
        form.Button("Keep the yarn").Click();

        Assert.Equal([new YarnDetails("Wrackline Cotton", "", null, null, 50, "", "")], kept);
    }

    [Fact]
    public void A_length_that_is_no_number_is_told_at_its_field()
    {
        IRenderedComponent<YarnForm> form = Show();
        form.Field("Length of a ball").Input("long");
        form.Button("Keep the yarn").Click();

        Assert.StartsWith("No number was found", form.WrongWith("Length of a ball"), StringComparison.Ordinal);
        Assert.Empty(kept);
    }

    /// <summary>1 yd = 0.9144 m, 1 oz = 28.349523125 g (international yard and pound, 1959): 93 yd = 85.0392 m, 1¾ oz = 49.6117 g.</summary>
    [Fact]
    public void Yards_ounces_and_a_price_with_a_comma_are_read()
    {
        IRenderedComponent<YarnForm> form = Show();
        form.Field("Name").Input("Wrackline Cotton");
        form.Field("Weight of a ball").Input("1¾ oz");
        form.Field("Length of a ball").Input("93 yd");
        form.Field("Price of a ball").Input("4,50");
        form.Field("Currency").Input("eur");
        form.Field("Care").Input("30 °C, dry flat");
        form.Button("Keep the yarn").Click();

        YarnDetails yarn = Assert.Single(kept);
        Assert.Equal((49.6117, 85.0392), (Math.Round(yarn.GramsPerBall!.Value, 4), Math.Round(yarn.MetresPerBall!.Value, 4)));
        Assert.Equal((4.5m, "EUR", "30 °C, dry flat"), (yarn.Price, yarn.Currency, yarn.Care));
    }

    [Theory]
    [InlineData("-3")]
    [InlineData("about 4")]
    [InlineData("4.505")]
    public void A_price_that_is_none_is_told(string written)
    {
        IRenderedComponent<YarnForm> form = Show();
        form.Field("Price of a ball").Input(written);
        form.Field("Currency").Input("EUR");
        form.Button("Keep the yarn").Click();

        Assert.EndsWith("is no price. Write it such as 4.50, and the currency beside it.", form.WrongWith("Price of a ball"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_price_without_a_currency_asks_for_it()
    {
        IRenderedComponent<YarnForm> form = Show();
        form.Field("Name").Input("Wrackline Cotton");
        form.Field("Price of a ball").Input("4.50");
        form.Button("Keep the yarn").Click();

        Assert.StartsWith("Say in which currency", form.WrongWith("Currency"), StringComparison.Ordinal);
        Assert.Empty(kept);
    }

    private IRenderedComponent<YarnForm> Show() => Render<YarnForm>(with => with
        .Add(form => form.Input, new YarnInput())
        .Add(form => form.Keep, (details, _) =>
        {
            kept.Add(details);
            return Task.FromResult<ChangeOutcome<YarnDetails>>(Outcome.Done);
        }));
}
