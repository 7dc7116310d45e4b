using PatternStudio.Studio.Data;

namespace PatternStudio.Studio.Rounds;

/// <summary>
/// Where many strangers write at once, they queue here. A SQLite file has one writer at a time, and whoever finds it busy sleeps for 150 ms before looking again, with a thread that others
/// need (Microsoft.Data.Sqlite); here the next one goes on at once. PostgreSQL has many writers: nobody waits.
/// </summary>
public sealed class WritersTurn(Store store) : IDisposable
{
    private readonly SemaphoreSlim one = new(1, 1);

    /// <summary>Waits for its turn, which lasts until the result is disposed of. Not to be asked for twice in one operation.</summary>
    public async Task<IDisposable> WaitAsync(CancellationToken cancel = default)
    {
        if (store.Kind != StoreKind.Sqlite) return new Turn(null);
        await one.WaitAsync(cancel);
        return new Turn(one);
    }

    public void Dispose() => one.Dispose();

    private sealed class Turn(SemaphoreSlim? held) : IDisposable
    {
        public void Dispose() => held?.Release();
    }
}
