using Microsoft.EntityFrameworkCore;
using PatternStudio.Studio.Data;

namespace PatternStudio.Studio.Designs;

/// <summary>After the program was renewed: brings the stored results of all studios up to date, so that lists show what the desk shows.</summary>
public sealed class DesignRefresh(IDbContextFactory<StudioDbContext> contexts, TimeProvider clock)
{
    /// <summary>Computes anew whatever another make of the program computed. Long with many designs: run it beside the pages.</summary>
    /// <returns>How many designs were computed.</returns>
    public async Task<int> RunAsync(CancellationToken cancel = default)
    {
        List<Guid> stale = await StaleAsync(cancel);
        foreach (Guid id in stale)
        {
            cancel.ThrowIfCancellationRequested();
            await contexts.AttemptAsync(context => RefreshAsync(context, id, cancel), cancel);
        }

        return stale.Count;
    }

    private async Task<List<Guid>> StaleAsync(CancellationToken cancel)
    {
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        return await (
            from design in context.Designs
            join computed in context.Computations
                on new { DesignId = design.Id, Version = design.LatestVersion } equals new { computed.DesignId, computed.Version }
            where computed.EngineVersion != DesignResults.EngineVersion
            orderby design.Updated descending
            select design.Id).ToListAsync(cancel);
    }

    private async Task<bool> RefreshAsync(StudioDbContext context, Guid id, CancellationToken cancel)
    {
        Design design = await context.Designs.FirstAsync(it => it.Id == id, cancel);
        await context.ReckonAsync(design, clock.Now(), cancel);
        await context.SaveChangesAsync(cancel);
        return true;
    }
}
