using Microsoft.EntityFrameworkCore;
using PatternStudio.Studio.Data;
using PatternStudio.Studio.Designs;

namespace PatternStudio.Studio.Materials;

/// <summary>Which designs a lot would make.</summary>
public sealed class StashDesigns(IDbContextFactory<StudioDbContext> contexts, Stash stash)
{
    /// <summary>
    /// The designs of the lot's own yarn and of others of its weight, by title, each size with whether what is free of the lot suffices: for the colours
    /// worked in it, where there are several. Designs whose need is not known come last. Read from the stored results.
    /// </summary>
    public async Task<IReadOnlyList<LotDesign>> ForAsync(Caller caller, Guid lotId, CancellationToken cancel = default)
    {
        KeptLot? lot = (await stash.ListAsync(caller, cancel)).FirstOrDefault(it => it.Id == lotId);
        if (lot is null) return [];
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        ILookup<Guid, ColourYarn> colours = (await context.ColourYarns.AsNoTracking()
            .Where(it => context.DesignsOf(caller).Any(design => design.Id == it.DesignId)).ToListAsync(cancel)).ToLookup(it => it.DesignId);
        Guid[] inColour = [.. colours.Where(design => design.Any(it => it.YarnId == lot.Details.YarnId)).Select(design => design.Key)];
        var stored = await (
            from design in context.DesignsOf(caller).AsNoTracking()
            join made in context.Yarns.AsNoTracking() on design.YarnId equals made.Id into mades
            from yarn in mades.DefaultIfEmpty()
            join computed in context.Computations.AsNoTracking()
                on new { DesignId = design.Id, Version = design.LatestVersion } equals new { computed.DesignId, computed.Version }
            where design.YarnId == lot.Details.YarnId || inColour.Contains(design.Id) || (yarn.WeightClass != null && yarn.WeightClass == lot.Yarn.WeightClass)
            orderby design.TitleKey, design.Id
            select new { design.Id, design.Title, design.YarnId, computed.Whole }).ToListAsync(cancel);
        LotDesign[] lines =
        [
            .. from design in stored
               let chosen = colours[design.Id].ToDictionary(it => it.Colour, it => it.YarnId, StringComparer.Ordinal)
               let sizes = Sizes(design.Whole, lot, design.Id, design.YarnId, chosen)
               where sizes.Length > 0
               select new LotDesign(design.Id, design.Title, design.YarnId == lot.Details.YarnId || chosen.ContainsValue(lot.Details.YarnId), sizes),
        ];
        return [.. lines.OrderBy(line => line.Sizes.All(size => size.Fit.Answer == Suffices.NotKnown))];
    }

    private static LotSize[] Sizes(byte[]? whole, KeptLot lot, Guid designId, Guid? designYarn, Dictionary<string, Guid> chosen) =>
    [
        .. from size in (whole is null ? null : ResultsJson.Unpack(whole))?.Sizes ?? []
           let parts = YarnPart.Of(size.Yarn, designYarn, chosen)
           // One lot says nothing of a design in several colours, unless it is known which of them is worked in it.
           let part = parts.FirstOrDefault(it => it.YarnId == lot.Details.YarnId) ?? (parts is [{ Colours: [] } only] ? only : null)
           where part is not null
           select new LotSize(size.Name, part.Colours, StashFit.Of(part.Need, [lot], designId)),
    ];
}

/// <summary>A design beside a lot.</summary>
/// <param name="SameYarn">True where the design, or one of its colours, is made of the lot's yarn; else its yarn is of the same weight, and a swatch comes first.</param>
public sealed record LotDesign(Guid DesignId, string Title, bool SameYarn, IReadOnlyList<LotSize> Sizes);

/// <summary>A size of it.</summary>
/// <param name="Name">Empty where there is one size.</param>
/// <param name="Colours">The colours that are worked in the lot's yarn; empty where the pattern has one colour.</param>
public sealed record LotSize(string Name, IReadOnlyList<string> Colours, StashFit Fit);
