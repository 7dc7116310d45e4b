using System.Linq.Expressions;
using Microsoft.EntityFrameworkCore;
using PatternStudio.Studio.Data;

namespace PatternStudio.Studio.Designs;

/// <summary>Lists designs from their stored results; computes nothing and reads no texts.</summary>
public sealed class DesignLibrary(IDbContextFactory<StudioDbContext> contexts)
{
    private const int MostPages = 1_000_000;

    /// <summary>States are stored by name; the list sorts them by progress.</summary>
    private static readonly Expression<Func<ListedDesign, int>> StateRank = it =>
        it.Design.State == DesignState.Idea ? 0
        : it.Design.State == DesignState.Writing ? 1
        : it.Design.State == DesignState.Testing ? 2
        : 3;

    private static readonly Expression<Func<ListedDesign, DesignSummary>> Summary = it => new DesignSummary(
        it.Design.Id, it.Design.Title, it.Design.State, it.Design.LatestVersion,
        it.Computed.Rows, it.Computed.RowsChecked, it.Computed.Errors, it.Computed.Warnings,
        it.Computed.WidthMetres * 100, it.Computed.HeightMetres * 100, it.Design.Updated)
    {
        Sizes = it.Face == null ? "" : it.Face.Sizes,
        Notes = it.Face == null ? 0 : it.Face.Notes,
        HasSwatch = it.Design.SwatchId != null,
        PhotoId = it.Design.PhotoId,
        Deleted = it.Design.Deleted,
    };

    /// <summary>A page of the caller's designs, without deleted ones unless those are asked for.</summary>
    public async Task<DesignPage> ListAsync(Caller caller, DesignQuery query, CancellationToken cancel = default)
    {
        int pageSize = Math.Clamp(query.PageSize, 1, 200);
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        IQueryable<ListedDesign> inAnyState = context.Listed(caller, query);
        Dictionary<DesignState, int> byState = await ByStateAsync(context, caller, query, inAnyState, cancel);
        List<DesignSummary> page = await Ordered(inAnyState.InState(query.State), query.Order, query.Descending)
            .Skip(Math.Clamp(query.Page, 0, MostPages) * pageSize).Take(pageSize)
            .Select(Summary).ToListAsync(cancel);
        ILookup<Guid, string> tags = await TagsOfAsync(context, [.. page.Select(line => line.Id)], cancel);
        return new DesignPage(
            [.. page.Select(line => line with { Tags = [.. tags[line.Id]] })],
            query.State is { } state ? byState.GetValueOrDefault(state) : byState.Values.Sum())
        {
            ByState = byState,
        };
    }

    /// <summary>The ids of all designs that fit, on all pages, in the order of the list.</summary>
    public async Task<IReadOnlyList<Guid>> IdsAsync(Caller caller, DesignQuery query, CancellationToken cancel = default)
    {
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        return await Ordered(context.Listed(caller, query).InState(query.State), query.Order, query.Descending)
            .Select(it => it.Design.Id).ToListAsync(cancel);
    }

    /// <summary>Without search and filters the designs alone are counted: nothing computed needs to be looked at.</summary>
    private static Task<Dictionary<DesignState, int>> ByStateAsync(
        StudioDbContext context, Caller caller, DesignQuery query, IQueryable<ListedDesign> fitting, CancellationToken cancel)
    {
        bool all = query is { WithFindings: false, Tag: null, Deleted: false } && string.IsNullOrWhiteSpace(query.Search);
        return (all ? context.DesignsOf(caller).Select(design => design.State) : fitting.Select(it => it.Design.State))
            .GroupBy(state => state).Select(group => new { group.Key, Count = group.Count() }).ToDictionaryAsync(it => it.Key, it => it.Count, cancel);
    }

    private static async Task<ILookup<Guid, string>> TagsOfAsync(StudioDbContext context, Guid[] designs, CancellationToken cancel)
    {
        if (designs.Length == 0) return Array.Empty<string>().ToLookup(_ => Guid.Empty);
        var worn = await (
            from it in context.DesignTags
            join tag in context.Tags on it.TagId equals tag.Id
            where designs.Contains(it.DesignId)
            orderby tag.NameKey
            select new { it.DesignId, tag.Name }).ToListAsync(cancel);
        return worn.ToLookup(it => it.DesignId, it => it.Name);
    }

    /// <summary>The id comes last, so that pages neither miss nor repeat a design among equals.</summary>
    private static IOrderedQueryable<ListedDesign> Ordered(IQueryable<ListedDesign> lines, DesignOrder order, bool descending) =>
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
}
