using Microsoft.EntityFrameworkCore;

namespace PatternStudio.Studio.Data;

/// <summary>Does an operation, and does it again from the start where somebody else changed the same thing meanwhile.</summary>
internal static class Attempts
{
    private const int Most = 8;

    /// <param name="operation">Reads, judges and writes in the context given, which is a new one each time.</param>
    public static async Task<T> AttemptAsync<T>(
        this IDbContextFactory<StudioDbContext> contexts, Func<StudioDbContext, Task<T>> operation, CancellationToken cancel)
    {
        for (int attempt = 1; ; attempt++)
        {
            await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
            try
            {
                return await operation(context);
            }
            // Two savers may also meet at the key of the next version, which is no concurrency exception.
            catch (DbUpdateException) when (attempt < Most)
            {
            }
        }
    }
}
