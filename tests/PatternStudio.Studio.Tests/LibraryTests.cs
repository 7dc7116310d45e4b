using Microsoft.EntityFrameworkCore;
using PatternStudio.Studio.Designs;

namespace PatternStudio.Studio.Tests;

public sealed class LibraryTests
{
    /// <summary>Columns that a list must not read.</summary>
    private static readonly string[] Large = ["\"Text\"", "\"Whole\"", "\"Words\"", "\"Picture\""];

    [Fact]
    public async Task The_list_shows_stored_results_and_computes_nothing()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        await studio.NewDesignAsync(caller);
        await using (var context = studio.Context())
        {
            await context.Computations.ExecuteUpdateAsync(set => set
                .SetProperty(it => it.Rows, 77).SetProperty(it => it.RowsChecked, 76)
                .SetProperty(it => it.Errors, 5).SetProperty(it => it.Warnings, 4)
                .SetProperty(it => it.WidthMetres, 1.5).SetProperty(it => it.HeightMetres, 2.25));
        }

        DesignSummary line = Assert.Single((await studio.Library.ListAsync(caller, new())).Designs);

        Assert.Equal((77, 76, 5, 4, 150, 225), (line.Rows, line.RowsChecked, line.Errors, line.Warnings, line.WidthCm, line.HeightCm));
    }

    /// <summary>By hand: 20 stitches of a swatch with 20 stitches in 12 cm are 12 cm; 2 rows of 24 in 11.5 cm are 0.96 cm.</summary>
    [Fact]
    public async Task The_list_tells_rows_errors_and_size_of_the_version_saved_last()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid id = await studio.NewDesignAsync(caller);
        await studio.Swatches.AddAsync(caller, id, Texts.Swatch);
        await studio.Desk.SaveAsync(caller, id, Texts.WrongCloth, 1);

        DesignSummary line = Assert.Single((await studio.Library.ListAsync(caller, new())).Designs);

        Assert.Equal((2, 2, 1, 0), (line.Rows, line.RowsChecked, line.Errors, line.Warnings));
        Assert.Equal((12, 0.96), (Math.Round(line.WidthCm!.Value, 2), Math.Round(line.HeightCm!.Value, 2)));
    }

    [Fact]
    public async Task A_page_of_a_thousand_designs_takes_three_queries_and_reads_no_texts()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        await FillAsync(studio, caller, 1_000);
        studio.Queries.Queries.Clear();

        DesignPage page = await studio.Library.ListAsync(caller, new(Page: 3, PageSize: 50));

        Assert.Equal((50, 1_000), (page.Designs.Count, page.Total));
        Assert.Equal(3, studio.Queries.Queries.Count);
        Assert.DoesNotContain(studio.Queries.Queries, sql => Large.Any(column => sql.Contains(column, StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData(DesignOrder.Updated, true)]
    [InlineData(DesignOrder.Updated, false)]
    [InlineData(DesignOrder.Title, false)]
    [InlineData(DesignOrder.State, true)]
    [InlineData(DesignOrder.Errors, true)]
    public async Task Pages_neither_miss_nor_repeat_a_design(DesignOrder order, bool descending)
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        await FillAsync(studio, caller, 95);
        var seen = new List<Guid>();
        for (int page = 0; page < 5; page++)
            seen.AddRange((await studio.Library.ListAsync(caller, new("", null, order, descending, page, 20))).Designs.Select(line => line.Id));

        Assert.Equal(95, seen.Distinct().Count());
        Assert.Equal(95, seen.Count);
    }

    [Fact]
    public async Task Titles_are_found_by_any_part_in_any_case_and_signs_mean_themselves()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        foreach (string title in new[] { "Élan Shawl", "Shawl 100% Cotton", "Under_score Cap" }) await studio.NewDesignAsync(caller, title, "");

        Assert.Equal(["Shawl 100% Cotton", "Élan Shawl"], await TitlesAsync("SHAWL"));
        Assert.Equal(["Élan Shawl"], await TitlesAsync("éLAN"));
        Assert.Equal(["Shawl 100% Cotton"], await TitlesAsync("%"));
        Assert.Equal(["Under_score Cap"], await TitlesAsync("_"));
        Assert.Empty(await TitlesAsync("scarf"));

        async Task<string[]> TitlesAsync(string search) =>
            [.. (await studio.Library.ListAsync(caller, new(search, Order: DesignOrder.Title, Descending: false))).Designs.Select(line => line.Title)];
    }

    [Fact]
    public async Task States_sort_by_progress_and_can_be_asked_for()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        foreach (DesignState state in new[] { DesignState.Published, DesignState.Idea, DesignState.Testing, DesignState.Writing })
            await studio.Desk.MoveToAsync(caller, await studio.NewDesignAsync(caller, state.ToString(), ""), state);

        DesignPage all = await studio.Library.ListAsync(caller, new(Order: DesignOrder.State, Descending: false));
        DesignPage testing = await studio.Library.ListAsync(caller, new(State: DesignState.Testing));

        Assert.Equal(Enum.GetValues<DesignState>(), all.Designs.Select(line => line.State));
        Assert.Equal(["Testing"], testing.Designs.Select(line => line.Title));
    }

    private static async Task FillAsync(TestStudio studio, Caller caller, int designs)
    {
        await using var context = studio.Context();
        for (int i = 0; i < designs; i++)
            await context.BeginAsync(caller, $"Cloth {i % 40}", "", studio.Clock.GetUtcNow().AddHours(-(i % 10)), default);
        await context.SaveChangesAsync();
    }
}
