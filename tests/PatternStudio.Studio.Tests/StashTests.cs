using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Materials;

namespace PatternStudio.Studio.Tests;

/// <summary>The cupboard. A ball of <see cref="Texts.Yarn"/> has 50 g and 85 m: 3 balls and 20 g are 170 g, which is 289 m.</summary>
public sealed class StashTests
{
    [Fact]
    public async Task A_lot_comes_back_as_counted_with_what_is_free()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid yarn = (await studio.Yarns.AddAsync(caller, Texts.Yarn)).Value;
        LotDetails counted = new(yarn, 3, 20, "4711", "top shelf", "from the fair");

        Guid id = (await studio.Stash.AddAsync(caller, counted)).Value;

        KeptLot lot = Assert.Single(await studio.Stash.ListAsync(caller));
        Assert.Equal((id, counted, Texts.Yarn), (lot.Id, lot.Details, lot.Yarn));
        Assert.Equal((170, 170), (lot.Grams, lot.FreeGrams));
        Assert.Equal(289, lot.Metres(lot.FreeGrams)!.Value, 9);
    }

    [Fact]
    public async Task Designs_set_yarn_aside_and_nobody_takes_what_is_not_free()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        (Caller caller, Guid lot) = await WithLotAsync(studio);
        Guid first = await studio.NewDesignAsync(caller, "First"), second = await studio.NewDesignAsync(caller, "Second");

        Assert.True((await studio.Stash.ReserveAsync(caller, first, lot, 120)).Succeeded);
        Outcome refused = await studio.Stash.ReserveAsync(caller, second, lot, 60);
        Assert.Equal("Only 50 g of this lot are free. Set aside that much or less, or free some at another design first.", refused.ToString());
        // In place of its own 120 g the first design may take all 170.
        Assert.True((await studio.Stash.ReserveAsync(caller, first, lot, 170)).Succeeded);
        Assert.StartsWith("Nothing of this lot is free", (await studio.Stash.ReserveAsync(caller, second, lot, 1)).ToString(), StringComparison.Ordinal);

        KeptLot kept = Assert.Single(await studio.Stash.ListAsync(caller));
        Assert.Equal([new LotReservation(first, "First", 170)], kept.Reserved);
        Assert.True((await studio.Stash.ReserveAsync(caller, first, lot, 0)).Succeeded);
        Assert.Equal(170, Assert.Single(await studio.Stash.ListAsync(caller)).FreeGrams);
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public async Task Amounts_that_are_none_are_not_set_aside(double grams)
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        (Caller caller, Guid lot) = await WithLotAsync(studio);

        Assert.False((await studio.Stash.ReserveAsync(caller, await studio.NewDesignAsync(caller), lot, grams)).Succeeded);
        Assert.Empty(Assert.Single(await studio.Stash.ListAsync(caller)).Reserved);
    }

    /// <summary>Eight designs want 60 of 170 g at once: two get them.</summary>
    [Fact]
    public async Task Of_many_who_set_aside_at_once_only_so_many_get_it_as_there_is_yarn()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        (Caller caller, Guid lot) = await WithLotAsync(studio);
        var designs = new List<Guid>();
        for (int i = 0; i < 8; i++) designs.Add(await studio.NewDesignAsync(caller, $"Design {i}", "Ch 2."));

        Outcome[] outcomes = await Task.WhenAll(designs.Select(design => Task.Run(() => studio.Stash.ReserveAsync(caller, design, lot, 60))));

        Assert.Equal(2, outcomes.Count(outcome => outcome.Succeeded));
        Assert.Equal(50, Assert.Single(await studio.Stash.ListAsync(caller)).FreeGrams);
    }

    [Fact]
    public async Task A_deleted_design_holds_nothing_back_and_a_smaller_count_shows_what_is_missing()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        (Caller caller, Guid lot) = await WithLotAsync(studio);
        Guid design = await studio.NewDesignAsync(caller);
        await studio.Stash.ReserveAsync(caller, design, lot, 120);

        LotDetails counted = Assert.Single(await studio.Stash.ListAsync(caller)).Details;
        Assert.True((await studio.Stash.ChangeAsync(caller, lot, counted with { Balls = 1 }, counted)).Succeeded);
        Assert.Equal(-50, Assert.Single(await studio.Stash.ListAsync(caller)).FreeGrams);
        await studio.Desk.DeleteAsync(caller, design);
        Assert.Equal(70, Assert.Single(await studio.Stash.ListAsync(caller)).FreeGrams);
    }

    [Fact]
    public async Task A_lot_without_anything_in_it_is_refused_and_yarn_in_the_cupboard_is_not_removed()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        (Caller caller, Guid lot) = await WithLotAsync(studio);
        LotDetails counted = Assert.Single(await studio.Stash.ListAsync(caller)).Details;

        Assert.Equal("Balls", Assert.Single((await studio.Stash.AddAsync(caller, counted with { Balls = 0, OpenedGrams = null })).Messages).Field);
        Assert.Equal("Some of this yarn is in the cupboard. Remove it there first.", (await studio.Yarns.RemoveAsync(caller, counted.YarnId)).ToString());
        Assert.True((await studio.Stash.RemoveAsync(caller, lot)).Succeeded);
        Assert.True((await studio.Yarns.RemoveAsync(caller, counted.YarnId)).Succeeded);
    }

    [Fact]
    public async Task Studios_do_not_see_into_each_others_cupboards()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        (Caller caller, Guid lot) = await WithLotAsync(studio);
        Caller stranger = await studio.NewCallerAsync("Drift");
        LotDetails counted = Assert.Single(await studio.Stash.ListAsync(caller)).Details;

        Assert.Empty(await studio.Stash.ListAsync(stranger));
        Assert.False((await studio.Stash.ChangeAsync(stranger, lot, counted)).Succeeded);
        Assert.False((await studio.Stash.ReserveAsync(stranger, await studio.NewDesignAsync(stranger), lot, 1)).Succeeded);
        Assert.False((await studio.Stash.RemoveAsync(stranger, lot)).Succeeded);
        Assert.False((await studio.Stash.AddAsync(stranger, counted)).Succeeded);
        Assert.Empty(await studio.StashDesigns.ForAsync(stranger, lot));
    }

    [Fact]
    public async Task A_lot_tells_the_designs_that_it_makes()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        (Caller caller, Guid lot) = await WithLotAsync(studio);
        LotDetails counted = Assert.Single(await studio.Stash.ListAsync(caller)).Details;
        Guid other = (await studio.Yarns.AddAsync(caller, Texts.Yarn with { Name = "Eelgrass Cotton" })).Value;
        await DesignAsync("Of the same", counted.YarnId);
        await DesignAsync("Of another", other);
        await studio.NewDesignAsync(caller, "Of none");

        IReadOnlyList<LotDesign> designs = await studio.StashDesigns.ForAsync(caller, lot);

        Assert.Equal([("Of another", false), ("Of the same", true)], designs.Select(design => (design.Title, design.SameYarn)));
        // Two rows of 20 stitches: some 10 g by the swatch, and 170 g are there.
        Assert.All(designs, design => Assert.Equal(Suffices.Yes, Assert.Single(design.Sizes).Fit.Answer));

        async Task DesignAsync(string title, Guid yarn)
        {
            Guid design = await studio.NewDesignAsync(caller, title);
            await studio.Swatches.AddAsync(caller, design, Texts.Swatch);
            await studio.Yarns.ChooseAsync(caller, design, yarn);
        }
    }

    /// <summary>Two of four rows alike are worked in the yarn of the lot, the foundation in the other: a little less than half of all.</summary>
    [Fact]
    public async Task Of_a_design_in_two_colours_the_lot_is_weighed_against_its_own()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        (Caller caller, Guid lot) = await WithLotAsync(studio);
        Guid own = Assert.Single(await studio.Stash.ListAsync(caller)).Details.YarnId;
        Guid other = (await studio.Yarns.AddAsync(caller, Texts.Yarn with { Name = "Eelgrass Cotton" })).Value;
        const string Striped = "Ch 21.\nRow 1: With A, sc in 2nd ch from hook and in each ch across. (20 sc)\nRow 2: With B, ch 1, turn, sc in each st across. (20 sc)\nRow 3: With A, ch 1, turn, sc in each st across. (20 sc)\nRow 4: With B, ch 1, turn, sc in each st across. (20 sc)\n";
        Guid design = await studio.NewDesignAsync(caller, "Striped", Striped);
        await studio.Swatches.AddAsync(caller, design, Texts.Swatch);
        await studio.Yarns.ChooseAsync(caller, design, other);
        Assert.Empty(await studio.StashDesigns.ForAsync(caller, lot));

        await studio.Get<ColourYarns>().ChooseAsync(caller, design, "B", own);
        LotDesign line = Assert.Single(await studio.StashDesigns.ForAsync(caller, lot));

        YarnNeed whole = (await studio.Desk.OpenAsync(caller, design))!.Results.Sizes[0].Yarn!;
        LotSize size = Assert.Single(line.Sizes);
        Assert.True(line.SameYarn);
        Assert.Equal(["B"], size.Colours);
        Assert.Equal(whole.Colours.Single(colour => colour.Colour == "B").Metres, size.Fit.Expected, 9);
        Assert.InRange(size.Fit.Expected / whole.Metres!.Value, .4, .5);
    }

    internal static async Task<(Caller Caller, Guid Lot)> WithLotAsync(TestStudio studio)
    {
        Caller caller = await studio.NewCallerAsync();
        Guid yarn = (await studio.Yarns.AddAsync(caller, Texts.Yarn)).Value;
        return (caller, (await studio.Stash.AddAsync(caller, new(yarn, 3, 20, "4711", "top shelf", ""))).Value);
    }
}
