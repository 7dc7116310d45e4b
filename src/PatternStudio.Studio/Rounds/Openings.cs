using System.Collections.Concurrent;
using Microsoft.EntityFrameworkCore;
using PatternStudio.Studio.Data;

namespace PatternStudio.Studio.Rounds;

/// <summary>
/// Keeps with which version each tester began: the one that her link showed when it was opened first. Opening a page must not wait for the store to write, least of all where two hundred
/// do so at once: openings are gathered, and written together a moment later. What was gathered counts at once; where the program is killed meanwhile, the next opening is the first.
/// </summary>
public sealed class Openings(IDbContextFactory<StudioDbContext> contexts, WritersTurn turn) : IDisposable
{
    private static readonly TimeSpan Moment = TimeSpan.FromSeconds(1);

    private readonly ConcurrentDictionary<Guid, int> gathered = new();
    private readonly CancellationTokenSource over = new();
    private int writing;

    /// <summary>The version of a first opening that is not written yet; null for none.</summary>
    internal int? Of(Guid linkId) => gathered.TryGetValue(linkId, out int version) ? version : null;

    /// <summary>A link was opened and showed this version.</summary>
    internal void Note(Guid linkId, int version)
    {
        if (gathered.TryAdd(linkId, version) && Interlocked.CompareExchange(ref writing, 1, 0) == 0) _ = WriteSoonAsync();
    }

    /// <summary>Writes what was gathered until now.</summary>
    public async Task SettleAsync(CancellationToken cancel = default)
    {
        KeyValuePair<Guid, int>[] now = [.. gathered];
        if (now.Length == 0) return;
        using IDisposable mine = await turn.WaitAsync(cancel);
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        foreach (IGrouping<int, Guid> same in now.GroupBy(opening => opening.Value, opening => opening.Key))
        {
            Guid[] links = [.. same];
            await context.Links.Where(link => links.Contains(link.Id) && link.BeganWith == null)
                .ExecuteUpdateAsync(set => set.SetProperty(link => link.BeganWith, same.Key), cancel);
        }

        foreach (KeyValuePair<Guid, int> opening in now) gathered.TryRemove(opening);
    }

    public void Dispose()
    {
        over.Cancel();
        over.Dispose();
    }

    private async Task WriteSoonAsync()
    {
        try
        {
            await Task.Delay(Moment, over.Token);
            Interlocked.Exchange(ref writing, 0);
            await SettleAsync(over.Token);
        }
        catch (Exception exception) when (exception is OperationCanceledException or ObjectDisposedException or System.Data.Common.DbException)
        {
            // The program ends, or the store is busy: what is gathered is written with the next opening.
        }
    }
}
