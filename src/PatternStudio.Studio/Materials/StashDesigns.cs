using Microsoft.EntityFrameworkCore;
using PatternStudio.Studio.Data;
using PatternStudio.Studio.Designs;

namespace PatternStudio.Studio.Materials;

/// <summary>Which designs a lot would make.</summary>
public sealed class StashDesigns(IDbContextFactory<StudioDbContext> contexts, Stash stash)
{
    /// <summary>
    /// The designs of the lot's own yarn and of others of its weight, by title, each size with whether what is free of the lot suffices. Designs whose
    /// yarn is not known come last. Read from the stored results.
    /// </summary>
    public async Task<IReadOnlyList<LotDesign>> ForAsync(Caller caller, Guid lotId, CancellationToken cancel = default)
    {
        KeptLot? lot = (await stash.ListAsync(caller, cancel)).FirstOrDefault(it => it.Id == lotId);
        if (lot is null) return [];
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        var stored = await (
            from design in context.DesignsOf(caller).AsNoTracking()
            join yarn in context.Yarns.AsNoTracking() on design.YarnId equals yarn.Id
            join computed in context.Computations.AsNoTracking()
                on new { DesignId = design.Id, Version = design.LatestVersion } equals new { computed.DesignId, computed.Version }
            where yarn.Id == lot.Details.YarnId || (yarn.WeightClass != null && yarn.WeightClass == lot.Yarn.WeightClass)
            orderby design.TitleKey, design.Id
            select new { design.Id, design.Title, YarnId = yarn.Id, computed.Whole }).ToListAsync(cancel);
        LotDesign[] lines = [.. stored.Select(it => new LotDesign(it.Id, it.Title, it.YarnId == lot.Details.YarnId, Sizes(it.Whole, lot, it.Id)))];
        return [.. lines.OrderBy(line => line.Sizes.All(size => size.Fit.Answer == Suffices.NotKnown))];
    }

    private static LotSize[] Sizes(byte[]? whole, KeptLot lot, Guid designId) =>
        (whole is null ? null : ResultsJson.Unpack(whole)) is not { } results ? [] :
        [.. results.Sizes.Select(size => new LotSize(size.Name, StashFit.Of(size.Yarn, [lot], designId)))];
}

/// <summary>A design beside a lot.</summary>
/// <param name="SameYarn">True where the design is made of the lot's yarn; else its yarn is of the same weight, and a swatch comes first.</param>
public sealed record LotDesign(Guid DesignId, string Title, bool SameYarn, IReadOnlyList<LotSize> Sizes);

/// <summary>A size of it.</summary>
/// <param name="Name">Empty where there is one size.</param>
public sealed record LotSize(string Name, StashFit Fit);
