using System.Linq.Expressions;
using Microsoft.EntityFrameworkCore;
using PatternStudio.Studio.Data;

namespace PatternStudio.Studio.Designs;

/// <summary>Lists designs from their stored results; computes nothing.</summary>
public sealed class DesignLibrary(IDbContextFactory<StudioDbContext> contexts)
{
    private const int MostPages = 1_000_000;

    /// <summary>States are stored by name; the list sorts them by progress.</summary>
    private static readonly Expression<Func<Line, int>> StateRank = it =>
        it.Design.State == DesignState.Idea ? 0
        : it.Design.State == DesignState.Writing ? 1
        : it.Design.State == DesignState.Testing ? 2
        : 3;

    private static readonly Expression<Func<Line, DesignSummary>> Summary = it => new DesignSummary(
        it.Design.Id, it.Design.Title, it.Design.State, it.Design.LatestVersion,
        it.Computed.Rows, it.Computed.RowsChecked, it.Computed.Errors, it.Computed.Warnings,
        it.Computed.WidthMetres * 100, it.Computed.HeightMetres * 100, it.Design.Updated);

    /// <summary>A page of the caller's designs, without deleted ones.</summary>
    public async Task<DesignPage> ListAsync(Caller caller, DesignQuery query, CancellationToken cancel = default)
    {
        int pageSize = Math.Clamp(query.PageSize, 1, 200);
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        IQueryable<Design> fitting = Fitting(context.DesignsOf(caller), query);
        IQueryable<Line> lines =
            from design in fitting
            join computed in context.Computations
                on new { DesignId = design.Id, Version = design.LatestVersion } equals new { computed.DesignId, computed.Version }
            select new Line { Design = design, Computed = computed };
        List<DesignSummary> page = await Ordered(lines, query.Order, query.Descending)
            .Skip(Math.Clamp(query.Page, 0, MostPages) * pageSize).Take(pageSize)
            .Select(Summary).ToListAsync(cancel);
        return new DesignPage(page, await fitting.CountAsync(cancel));
    }

    private static IQueryable<Design> Fitting(IQueryable<Design> designs, DesignQuery query)
    {
        string key = Design.KeyOf(Wording.Tidy(query.Search));
        if (key.Length > 0) designs = designs.Where(design => design.TitleKey.Contains(key));
        return query.State is { } state ? designs.Where(design => design.State == state) : designs;
    }

    /// <summary>The id comes last, so that pages neither miss nor repeat a design among equals.</summary>
    private static IQueryable<Line> Ordered(IQueryable<Line> lines, DesignOrder order, bool descending) =>
        (order, descending) switch
        {
            (DesignOrder.Title, false) => lines.OrderBy(it => it.Design.TitleKey).ThenBy(it => it.Design.Id),
            (DesignOrder.Title, true) => lines.OrderByDescending(it => it.Design.TitleKey).ThenBy(it => it.Design.Id),
            (DesignOrder.State, false) => lines.OrderBy(StateRank).ThenBy(it => it.Design.TitleKey).ThenBy(it => it.Design.Id),
            (DesignOrder.State, true) => lines.OrderByDescending(StateRank).ThenBy(it => it.Design.TitleKey).ThenBy(it => it.Design.Id),
            (DesignOrder.Errors, false) => lines.OrderBy(it => it.Computed.Errors).ThenBy(it => it.Computed.Warnings).ThenBy(it => it.Design.Id),
            (DesignOrder.Errors, true) => lines.OrderByDescending(it => it.Computed.Errors).ThenByDescending(it => it.Computed.Warnings).ThenBy(it => it.Design.Id),
            (_, false) => lines.OrderBy(it => it.Design.Updated).ThenBy(it => it.Design.Id),
            (_, true) => lines.OrderByDescending(it => it.Design.Updated).ThenBy(it => it.Design.Id),
        };

    private sealed class Line
    {
        public required Design Design { get; init; }

        public required Computation Computed { get; init; }
    }
}
