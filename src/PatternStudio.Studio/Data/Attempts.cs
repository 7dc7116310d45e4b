using System.Data.Common;
using Microsoft.EntityFrameworkCore;

namespace PatternStudio.Studio.Data;

/// <summary>Does an operation, and does it again from the start where somebody else changed the same thing meanwhile.</summary>
internal static class Attempts
{
    private const int Most = 8;

    /// <param name="operation">Reads, judges and writes in the context given, which is a new one each time.</param>
    public static Task<T> AttemptAsync<T>(
        this IDbContextFactory<StudioDbContext> contexts, Func<StudioDbContext, Task<T>> operation, CancellationToken cancel) =>
        UntilSettledAsync(async () =>
        {
            await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
            return await operation(context);
        });

    /// <param name="operation">Begins anew each time, with nothing left from before.</param>
    public static async Task<T> UntilSettledAsync<T>(Func<Task<T>> operation)
    {
        for (int attempt = 1; ; attempt++)
        {
            try
            {
                return await operation();
            }
            catch (Exception exception) when (attempt < Most && IsClash(exception))
            {
            }
        }
    }

    /// <summary>True where somebody else was quicker: the row changed, the next version's key was taken, or the server undid one of two transactions.</summary>
    private static bool IsClash(Exception? exception) => exception switch
    {
        null => false,
        DbUpdateException => true,
        // SQL standard: 40001 serialization failure; PostgreSQL: 40P01 deadlock.
        DbException { SqlState: "40001" or "40P01" } => true,
        _ => IsClash(exception.InnerException),
    };
}
