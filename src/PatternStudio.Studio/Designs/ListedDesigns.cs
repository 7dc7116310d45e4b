using System.Linq.Expressions;
using PatternStudio.Studio.Data;

namespace PatternStudio.Studio.Designs;

/// <summary>A design with what was computed of it, for queries.</summary>
internal sealed class ListedDesign
{
    public required Design Design { get; init; }

    public required Computation Computed { get; init; }

    /// <summary>Null for a moment only, after the program was renewed: until the design is computed anew.</summary>
    public required DesignFace? Face { get; init; }
}

/// <summary>Which designs fit a query, whatever their state.</summary>
internal static class ListedDesigns
{
    public static IQueryable<ListedDesign> Listed(this StudioDbContext context, Caller caller, DesignQuery query)
    {
        IQueryable<Design> designs = query.Deleted ? context.AllDesignsOf(caller).Where(design => design.Deleted != null) : context.DesignsOf(caller);
        IQueryable<ListedDesign> lines =
            from design in designs
            join computed in context.Computations
                on new { DesignId = design.Id, Version = design.LatestVersion } equals new { computed.DesignId, computed.Version }
            join face in context.Faces on design.Id equals face.DesignId into faces
            from face in faces.DefaultIfEmpty()
            select new ListedDesign { Design = design, Computed = computed, Face = face };
        foreach (string word in SearchWords.Of(query.Search)) lines = lines.Where(Having(context, word));
        if (query.Tag is { } tag) lines = lines.Where(it => context.DesignTags.Any(worn => worn.DesignId == it.Design.Id && worn.TagId == tag));
        return query.WithFindings ? lines.Where(it => it.Computed.Errors > 0 || it.Computed.Warnings > 0) : lines;
    }

    public static IQueryable<ListedDesign> InState(this IQueryable<ListedDesign> lines, DesignState? state) =>
        state is { } asked ? lines.Where(it => it.Design.State == asked) : lines;

    private static Expression<Func<ListedDesign, bool>> Having(StudioDbContext context, string word) => it =>
        it.Design.TitleKey.Contains(word)
        || (it.Face != null && it.Face.Words.Contains(word))
        || context.DesignTags.Any(worn => worn.DesignId == it.Design.Id
            && context.Tags.Any(tag => tag.Id == worn.TagId && tag.NameKey.Contains(word)));
}
