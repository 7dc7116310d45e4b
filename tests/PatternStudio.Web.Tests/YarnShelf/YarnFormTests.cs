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

        Assert.StartsWith("Write a number above zero", form.WrongWith("Length of a ball"), StringComparison.Ordinal);
        Assert.Empty(kept);
    }

    private IRenderedComponent<YarnForm> Show() => Render<YarnForm>(with => with
        .Add(form => form.Input, new YarnInput())
        .Add(form => form.Keep, details =>
        {
            kept.Add(details);
            return Task.FromResult<IReadOnlyList<FieldMessage>>([]);
        }));
}
