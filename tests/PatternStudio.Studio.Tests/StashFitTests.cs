using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Materials;

namespace PatternStudio.Studio.Tests;

/// <summary>Need beside cupboard. A ball has 50 g and 85 m, so 100 g are 170 m. Needed are 150 m, and 170 m to be sure.</summary>
public sealed class StashFitTests
{
    private static readonly YarnNeed Need = new(88, 150, 2, "") { BuyMetres = 170 };

    [Theory]
    [InlineData(2, 0, Suffices.Yes, 0)]
    [InlineData(1, 40, Suffices.Barely, 17)] // 90 g = 153 m
    [InlineData(1, 30, Suffices.No, 34)] // 80 g = 136 m
    public void Enough_is_for_nine_makers_in_ten(int balls, double opened, Suffices answer, double missing)
    {
        StashFit fit = StashFit.Of(Need, [Lot(balls, opened, "7")]);

        Assert.Equal(answer, fit.Answer);
        Assert.Equal(missing, fit.Missing, 9);
    }

    [Fact]
    public void The_smallest_lot_that_suffices_is_taken_whole_ones_stay()
    {
        StashFit fit = StashFit.Of(Need, [Lot(6, 0, "large"), Lot(2, 0, "small"), Lot(0, 30, "rest")]);

        Assert.Equal(["small"], fit.DyeLots);
        Assert.False(fit.MixesDyeLots);
    }

    [Fact]
    public void Dye_lots_mix_where_none_is_enough_alone()
    {
        StashFit fit = StashFit.Of(Need, [Lot(1, 0, "7"), Lot(1, 10, "8"), Lot(0, 5, "9")]);

        Assert.Equal(Suffices.Yes, fit.Answer);
        Assert.Equal(["8", "7"], fit.DyeLots);
        Assert.True(fit.MixesDyeLots);
        Assert.False(StashFit.Of(Need, [Lot(1, 0, "7"), Lot(1, 10, "7")]).MixesDyeLots);
        Assert.True(StashFit.Of(Need, [Lot(1, 0, ""), Lot(1, 10, "")]).MixesDyeLots);
    }

    [Fact]
    public void What_others_have_set_aside_is_not_there_and_ones_own_is()
    {
        Guid mine = Guid.NewGuid(), other = Guid.NewGuid();
        KeptLot lot = Lot(2, 0, "7") with { Reserved = [new(mine, "Mine", 60), new(other, "Other", 40)] };

        Assert.Equal(102, StashFit.Of(Need, [lot], mine).There, 9); // 60 g
        Assert.Equal(0, StashFit.Of(Need, [lot]).There);
    }

    [Fact]
    public void What_is_not_known_is_not_guessed()
    {
        Assert.Equal(Suffices.NotKnown, StashFit.Of(null, [Lot(2, 0, "7")]).Answer);
        Assert.Equal(0, StashFit.Of(Need, [Lot(2, 0, "7") with { Yarn = Texts.Yarn with { GramsPerBall = null } }]).There);
    }

    /// <summary>2 balls at 4.50 are 9.00; 150 of 85 m a ball are 1.7647 balls, which is 7.94.</summary>
    [Fact]
    public void Yarn_costs_by_the_ball_and_by_what_is_used()
    {
        YarnCost cost = YarnCost.Of(Need, Texts.Yarn with { Price = 4.5m, Currency = "EUR" })!;

        Assert.Equal((9.00m, 7.94m, "EUR"), (cost.Buy, cost.Used, cost.Currency));
        Assert.Null(YarnCost.Of(Need, Texts.Yarn));
        Assert.Null(YarnCost.Of(null, Texts.Yarn with { Price = 4.5m }));
    }

    /// <summary>A and C are worked in one yarn, B in another; D's was not chosen, and the colour without a name is the design's yarn.</summary>
    [Fact]
    public void A_need_is_split_among_the_yarns_of_its_colours()
    {
        Guid one = Guid.NewGuid(), two = Guid.NewGuid(), whole = Guid.NewGuid();
        YarnNeed need = new(null, 100, null, "") { BuyMetres = 120, Colours = [new("A", 10, 40, 1), new("B", 5, 20, 1), new("C", null, 10, 1), new("D", 5, 20, 1), new("", 2, 10, 1)] };

        IReadOnlyList<YarnPart> parts = YarnPart.Of(need, whole, new Dictionary<string, Guid> { ["A"] = one, ["B"] = two, ["C"] = one });

        Assert.Equal([(one, "A, C"), (two, "B"), (null, "D"), ((Guid?)whole, "")], parts.Select(part => (part.YarnId, string.Join(", ", part.Colours))));
        Assert.Equal([50, 20, 20, 10], parts.Select(part => part.Need!.Metres!.Value));
        Assert.Equal([60, 24, 24, 12], parts.Select(part => part.Need!.BuyMetres!.Value));
        Assert.Equal([null, 5, 5, 2], parts.Select(part => part.Need!.Grams));
    }

    private static KeptLot Lot(int balls, double opened, string dyeLot) =>
        new(Guid.NewGuid(), new LotDetails(Guid.Empty, balls, opened > 0 ? opened : null, dyeLot, "", ""), Texts.Yarn, []);
}
