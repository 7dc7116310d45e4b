using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Materials;

namespace PatternStudio.Studio.Tests;

/// <summary>Two people, two tabs: what somebody else kept meanwhile is shown, never written over unseen.</summary>
public sealed class OvertakenTests
{
    [Fact]
    public async Task A_swatch_that_was_corrected_meanwhile_is_shown_and_stays_until_one_has_seen_it()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid design = await studio.NewDesignAsync(caller);
        Guid id = (await studio.Swatches.AddAsync(caller, design, Texts.Swatch)).Value;
        SwatchDetails theirs = Texts.Swatch with { Stitches = 21 }, mine = Texts.Swatch with { Note = "Mine." };

        Assert.True((await studio.Swatches.ChangeAsync(caller, id, theirs, before: Texts.Swatch)).Succeeded);
        ChangeOutcome<SwatchDetails> overtaken = await studio.Swatches.ChangeAsync(caller, id, mine, before: Texts.Swatch);

        Assert.Equal((false, theirs), (overtaken.Succeeded, overtaken.Theirs));
        Assert.Equal(theirs, Assert.Single(await studio.Swatches.ListAsync(caller, design)).Details);
        Assert.True((await studio.Swatches.ChangeAsync(caller, id, mine, before: overtaken.Theirs)).Succeeded);
        Assert.Equal(mine, Assert.Single(await studio.Swatches.ListAsync(caller, design)).Details);
    }

    [Fact]
    public async Task A_yarn_and_a_lot_likewise()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        (Caller caller, Guid lotId) = await StashTests.WithLotAsync(studio);
        KeptLot lot = Assert.Single(await studio.Stash.ListAsync(caller));
        YarnDetails theirYarn = Texts.Yarn with { Price = 4.5m, Currency = "EUR", Care = "30 °C" };
        LotDetails theirLot = lot.Details with { Balls = 2 };

        Assert.True((await studio.Yarns.ChangeAsync(caller, lot.Details.YarnId, theirYarn, Texts.Yarn)).Succeeded);
        Assert.True((await studio.Stash.ChangeAsync(caller, lotId, theirLot, lot.Details)).Succeeded);

        Assert.Equal(theirYarn, (await studio.Yarns.ChangeAsync(caller, lot.Details.YarnId, Texts.Yarn with { Fibre = "linen" }, Texts.Yarn)).Theirs);
        Assert.Equal(theirLot, (await studio.Stash.ChangeAsync(caller, lotId, lot.Details with { Place = "attic" }, lot.Details)).Theirs);
        // The same correction twice is no conflict.
        Assert.True((await studio.Stash.ChangeAsync(caller, lotId, theirLot, lot.Details)).Succeeded);
    }

    [Fact]
    public async Task Of_many_who_correct_a_swatch_at_once_one_wins_and_the_others_see_the_winner()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid design = await studio.NewDesignAsync(caller);
        Guid id = (await studio.Swatches.AddAsync(caller, design, Texts.Swatch)).Value;

        ChangeOutcome<SwatchDetails>[] outcomes = await Task.WhenAll(Enumerable.Range(1, 6).Select(writer =>
            Task.Run(() => studio.Swatches.ChangeAsync(caller, id, Texts.Swatch with { Note = $"By {writer}." }, Texts.Swatch))));

        Assert.Single(outcomes, outcome => outcome.Succeeded);
        SwatchDetails kept = Assert.Single(await studio.Swatches.ListAsync(caller, design)).Details;
        Assert.All(outcomes.Where(outcome => !outcome.Succeeded), outcome => Assert.Equal(kept, outcome.Theirs));
    }

    /// <summary>One swatch assumes how hands differ; two tell something of it, so the interval is another.</summary>
    [Fact]
    public async Task A_second_swatch_informs_the_spread_and_leaves_the_gauge()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid design = await studio.NewDesignAsync(caller);
        await studio.Yarns.ChooseAsync(caller, design, (await studio.Yarns.AddAsync(caller, Texts.Yarn)).Value);
        await studio.Swatches.AddAsync(caller, design, Texts.Swatch);
        SizeResults one = (await studio.Desk.OpenAsync(caller, design))!.Results.Sizes[0];

        Guid second = (await studio.Swatches.AddAsync(caller, design, Texts.Swatch with { WeightGrams = 11 })).Value;
        SizeResults two = (await studio.Desk.OpenAsync(caller, design))!.Results.Sizes[0];

        Assert.Equal(one.Size!.WidthCm, two.Size!.WidthCm);
        Assert.Contains("2 swatches of one maker", two.Yarn!.Basis, StringComparison.Ordinal);
        Assert.NotEqual(one.Yarn!.HighMetres, two.Yarn.HighMetres);
        await studio.Swatches.RemoveAsync(caller, second);
        Assert.Equivalent(one, (await studio.Desk.OpenAsync(caller, design))!.Results.Sizes[0], strict: true);
    }
}
