using Microsoft.EntityFrameworkCore;
using PatternStudio.Studio.Data;

namespace PatternStudio.Studio.Designs;

/// <summary>Does one thing to many designs: all of them or, where something goes wrong, none.</summary>
public sealed class DesignBatch(IDbContextFactory<StudioDbContext> contexts, TimeProvider clock)
{
    /// <summary>So many ids go into one query.</summary>
    internal const int AtOnce = 500;

    /// <summary>Moves designs on (or back). Gives the state that each had before, to undo it by.</summary>
    public Task<IReadOnlyDictionary<Guid, DesignState>> MoveToAsync(
        Caller caller, IReadOnlyCollection<Guid> designIds, DesignState state, CancellationToken cancel = default)
    {
        if (!Enum.IsDefined(state)) throw new ArgumentOutOfRangeException(nameof(state));
        return MoveToAsync(caller, designIds.Distinct().ToDictionary(id => id, _ => state), cancel);
    }

    /// <summary>Moves each design to a state of its own. Gives the states before; designs that are not in the studio are passed over.</summary>
    public async Task<IReadOnlyDictionary<Guid, DesignState>> MoveToAsync(
        Caller caller, IReadOnlyDictionary<Guid, DesignState> states, CancellationToken cancel = default)
    {
        var before = new Dictionary<Guid, DesignState>();
        await EachAsync(context => context.DesignsOf(caller), [.. states.Keys], before.Clear, (design, now) =>
        {
            if (design.State == states[design.Id]) return;
            before[design.Id] = design.State;
            design.MoveTo(states[design.Id], now);
        }, cancel);
        return before;
    }

    /// <summary>Takes designs out of the list. Gives those that were there; <see cref="RestoreAsync"/> brings them back.</summary>
    public async Task<IReadOnlyList<Guid>> DeleteAsync(Caller caller, IReadOnlyCollection<Guid> designIds, CancellationToken cancel = default)
    {
        var gone = new List<Guid>();
        await EachAsync(context => context.DesignsOf(caller), designIds, gone.Clear, (design, now) =>
        {
            gone.Add(design.Id);
            design.Delete(now);
        }, cancel);
        return gone;
    }

    /// <summary>Brings deleted designs back. Gives how many.</summary>
    public async Task<int> RestoreAsync(Caller caller, IReadOnlyCollection<Guid> designIds, CancellationToken cancel = default)
    {
        int back = 0;
        await EachAsync(context => context.AllDesignsOf(caller).Where(design => design.Deleted != null), designIds, () => back = 0, (design, now) =>
        {
            back++;
            design.Restore(now);
        }, cancel);
        return back;
    }

    private Task<bool> EachAsync(
        Func<StudioDbContext, IQueryable<Design>> among, IReadOnlyCollection<Guid> ids, Action begin, Action<Design, DateTimeOffset> change, CancellationToken cancel) =>
        contexts.AttemptAsync(async context =>
        {
            begin();
            DateTimeOffset now = clock.Now();
            foreach (Guid[] some in ids.Distinct().Chunk(AtOnce))
                foreach (Design design in await among(context).Where(design => some.Contains(design.Id)).ToListAsync(cancel)) change(design, now);
            await context.SaveChangesAsync(cancel);
            return true;
        }, cancel);
}
