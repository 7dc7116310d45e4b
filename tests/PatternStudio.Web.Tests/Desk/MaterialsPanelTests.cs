using Bunit;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Features.Desk;

namespace PatternStudio.Web.Tests.Desk;

public sealed class MaterialsPanelTests : PageTest
{
    private static readonly KeptYarn Cotton = new(
        Guid.Parse("5f0b6c1e-0000-4000-8000-00000000000a"), new YarnDetails("Wrackline Cotton", "cotton", 4, 85, 50, "Kelp", "#5d6f3a"), 1);

    [Fact]
    public void A_design_without_a_swatch_says_what_to_do() =>
        Assert.Contains("No swatch yet. Work a sample", Show([]).Markup, StringComparison.Ordinal);

    [Fact]
    public void A_swatch_is_chosen_by_its_gauge()
    {
        Guid? chosen = null;
        KeptSwatch first = Kept(1, 16, isChosen: true), second = Kept(2, 15.5, isChosen: false);
        IRenderedComponent<MaterialsPanel> panel = Show([first, second], choose: id => chosen = id);

        panel.Find($"#swatch-{second.Id}").Change(true);

        Assert.Equal(second.Id, chosen);
        Assert.Contains("15.5 sts and 20 rows = 10 × 10 cm", panel.Find($"label[for='swatch-{second.Id}']").Reads(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_yarn_that_a_design_is_made_of_is_told_with_its_ball() =>
        Assert.Contains("Wrackline Cotton · Kelp ball of 85 m, 50 g", Show([]).Find(".yarn").Reads(), StringComparison.Ordinal);

    private static KeptSwatch Kept(int number, double stitches, bool isChosen) => new(
        new Guid(number, 0, 0, new byte[8]),
        new SwatchDetails(stitches, 20, 10, 10, null, null, null, "", new DateOnly(2026, 5, 3)),
        isChosen);

    private IRenderedComponent<MaterialsPanel> Show(IReadOnlyList<KeptSwatch> swatches, Action<Guid>? choose = null) =>
        Render<MaterialsPanel>(with => with
            .Add(panel => panel.Swatches, swatches)
            .Add(panel => panel.Yarns, [Cotton])
            .Add(panel => panel.YarnId, Cotton.Id)
            .Add(panel => panel.ChooseSwatch, id => choose?.Invoke(id)));
}
