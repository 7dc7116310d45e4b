using Bunit;
using PatternStudio.Studio;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Features.Desk;

namespace PatternStudio.Web.Tests.Desk;

/// <summary>A ball has 50 g and 85 m. The design needs 45 g (76.5 m), 51 g (86.7 m) to be sure.</summary>
public sealed class StashPanelTests : PageTest
{
    private static readonly Guid Design = Guid.Parse("5f0b6c1e-0000-4000-8000-00000000000d");
    private static readonly Guid Cotton = Guid.Parse("5f0b6c1e-0000-4000-8000-00000000000c");
    private static readonly Guid Linen = Guid.Parse("5f0b6c1e-0000-4000-8000-00000000000e");
    private static readonly YarnDetails Yarn = new("Wrackline Cotton", "cotton", 4, 85, 50, "Kelp", "#5d6f3a");
    private readonly List<(Guid Lot, double Grams)> reserved = [];
    private Outcome answer = Outcome.Done;
    private readonly Dictionary<string, Guid> chosen = [];
    private YarnNeed need = new(45, 76.5, 2, "") { BuyMetres = 86.7 };
    private int lots;

    [Fact]
    public void Says_whether_it_can_be_made_and_what_is_missing()
    {
        Assert.Equal("enough 77 m expected, 87 m to be sure; 170 m are there.", Show(Lot(2, "7")).Find(".stash-answer").Reads());
        Assert.Equal("just so 77 m expected, 87 m to be sure; 85 m are there. 1.7 m more to be sure.", Show(Lot(1, "7")).Find(".stash-answer").Reads());
    }

    [Fact]
    public void Dye_lots_that_must_mix_are_warned_about()
    {
        Assert.Contains("No dye lot is enough alone (7, 8).", Show(Lot(1, "7"), Lot(1, "8")).Find("p.doubt").TextContent, StringComparison.Ordinal);
        Assert.Empty(Show(Lot(2, "7"), Lot(1, "8")).FindAll("p.doubt"));
    }

    /// <summary>To be sure it takes 45 × 86.7 ÷ 76.5 = 51 g; a ball has 50.</summary>
    [Fact]
    public void What_the_design_needs_is_suggested_and_set_aside()
    {
        KeptLot lot = Lot(2, "7");
        IRenderedComponent<StashPanel> panel = Show(lot);
        Assert.Equal("51", panel.Field("Set aside").GetAttribute("value"));

        panel.Button("Set aside of dye lot 7").Click();

        Assert.Equal([(lot.Id, 51)], reserved);
    }

    [Theory]
    [InlineData("")]
    [InlineData("some")]
    [InlineData("-5")]
    [InlineData("10 m")]
    public void An_amount_that_is_none_is_told_at_its_field(string written)
    {
        IRenderedComponent<StashPanel> panel = Show(Lot(2, "7"));
        panel.Field("Set aside").Input(written);
        panel.Button("Set aside of dye lot 7").Click();

        Assert.NotNull(panel.WrongWith("Set aside"));
        Assert.Empty(reserved);
    }

    [Fact]
    public void What_the_studio_refuses_is_told_there_too()
    {
        answer = Outcome.Refused("Grams", "Only 20 g of this lot are free.");
        IRenderedComponent<StashPanel> panel = Show(Lot(2, "7"));
        panel.Button("Set aside of dye lot 7").Click();

        Assert.Equal("Only 20 g of this lot are free.", panel.WrongWith("Set aside"));
    }

    [Fact]
    public void What_is_set_aside_can_be_given_back()
    {
        KeptLot lot = Lot(2, "7") with { Reserved = [new LotReservation(Design, "Cloth", 51)] };
        IRenderedComponent<StashPanel> panel = Show(lot);
        Assert.Contains("51 g set aside for this design", panel.Find(".reserve").Reads(), StringComparison.Ordinal);

        panel.Button("Give back what is set aside of dye lot 7").Click();

        Assert.Equal([(lot.Id, 0)], reserved);
    }

    /// <summary>Two thirds of the need, 51 m (57.8 to be sure), are worked in A, a third, 25.5 m (28.9), in B, for which no yarn is chosen at first.</summary>
    [Fact]
    public void Each_colour_is_weighed_against_its_own_yarn()
    {
        need = need with { Colours = [new ColourShare("A", 30, 51, 1), new ColourShare("B", 15, 25.5, 1)] };
        chosen["A"] = Cotton;
        IRenderedComponent<StashPanel> panel = Show(Lot(2, "7"), Lot(1, "8", Linen));

        Assert.Equal(["A: Wrackline Cotton, Kelp", "B"], panel.FindAll(".stash-part").Select(part => part.Reads()));
        Assert.Equal("enough 51 m expected, 58 m to be sure; 170 m are there.", Assert.Single(panel.FindAll(".stash-answer")).Reads());
        // 57.8 m of a ball of 85 m and 50 g.
        Assert.Equal("34", panel.Field("Set aside").GetAttribute("value"));
        Assert.Contains(panel.FindAll("p.quiet"), said => said.Reads().StartsWith("Choose the yarn above", StringComparison.Ordinal));

        chosen["B"] = Linen;
        panel = Show(Lot(2, "7"), Lot(0, "8", Linen));

        Assert.Equal(["enough 51 m expected, 58 m to be sure; 170 m are there.", "too little 26 m expected, 29 m to be sure; 0 m are there. 29 m more to be sure."],
            panel.FindAll(".stash-answer").Select(answer => answer.Reads()));
    }

    private KeptLot Lot(int balls, string dyeLot, Guid? yarn = null) => new(new Guid(++lots, 0, 0, new byte[8]), new LotDetails(yarn ?? Cotton, balls, null, dyeLot, "", ""), Yarn, []);

    private IRenderedComponent<StashPanel> Show(params KeptLot[] lots) => Render<StashPanel>(with => with
        .Add(panel => panel.Lots, lots)
        .Add(panel => panel.DesignId, Design)
        .Add(panel => panel.Yarns, [new KeptYarn(Cotton, Yarn, 1), new KeptYarn(Linen, Yarn with { Name = "Wrackline Linen" }, 1)])
        .Add(panel => panel.Parts, YarnPart.Of(need, Cotton, chosen))
        .Add(panel => panel.Reserve, (lot, grams) =>
        {
            if (answer.Succeeded) reserved.Add((lot.Id, grams));
            return Task.FromResult(answer);
        }));
}
