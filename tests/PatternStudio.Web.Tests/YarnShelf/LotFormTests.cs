using Bunit;
using PatternStudio.Studio;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Features.YarnShelf;

namespace PatternStudio.Web.Tests.YarnShelf;

public sealed class LotFormTests : PageTest
{
    private static readonly YarnDetails Yarn = new("Wrackline Cotton", "cotton", 4, 85, 50, "Kelp", "#5d6f3a");
    private readonly List<LotDetails> kept = [];

    [Fact]
    public void A_remnant_alone_is_a_lot()
    {
        IRenderedComponent<LotForm> form = Show();
        form.Field("Begun balls weigh").Input("1 oz");
        form.Field("Dye lot").Input("K 214");
        form.Button("Keep the lot").Click();

        LotDetails lot = Assert.Single(kept);
        Assert.Equal((0, 28.3495, "K 214"), (lot.Balls, Math.Round(lot.OpenedGrams!.Value, 4), lot.DyeLot)); // 1 oz = 28.349523125 g
    }

    [Theory]
    [InlineData("2.5")]
    [InlineData("-1")]
    [InlineData("two")]
    public void Balls_are_whole(string written)
    {
        IRenderedComponent<LotForm> form = Show();
        form.Field("Whole balls").Input(written);
        form.Button("Keep the lot").Click();

        Assert.Equal($"'{written}' is no whole number. Write one, such as 3.", form.WrongWith("Whole balls"));
        Assert.Empty(kept);
    }

    [Fact]
    public void A_lot_of_nothing_is_asked_about()
    {
        IRenderedComponent<LotForm> form = Show();
        form.Button("Keep the lot").Click();

        Assert.StartsWith("Say how many whole balls there are", form.WrongWith("Whole balls"), StringComparison.Ordinal);
    }

    private IRenderedComponent<LotForm> Show() => Render<LotForm>(with => with
        .Add(form => form.Input, new LotInput { YarnId = Guid.NewGuid() })
        .Add(form => form.Yarn, Yarn)
        .Add(form => form.Keep, (details, _) =>
        {
            kept.Add(details);
            return Task.FromResult<ChangeOutcome<LotDetails>>(Outcome.Done);
        }));
}
