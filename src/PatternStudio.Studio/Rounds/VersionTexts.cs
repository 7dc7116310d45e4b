using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Caching.Memory;
using PatternStudio.Studio.Data;

namespace PatternStudio.Studio.Rounds;

/// <summary>Texts of versions, kept in memory while testers open them: a version never changes, so what was read once is right for ever.</summary>
public sealed class VersionTexts : IDisposable
{
    /// <summary>Letters kept in all: some tens of megabytes.</summary>
    private const long MostLetters = 10_000_000;

    private readonly MemoryCache kept = new(new MemoryCacheOptions { SizeLimit = MostLetters });

    /// <summary>The text of a version that there is.</summary>
    internal async Task<string> OfAsync(StudioDbContext context, Guid designId, int number, CancellationToken cancel)
    {
        if (kept.TryGetValue((designId, number), out string? known)) return known!;
        string text = await context.Versions.Where(it => it.DesignId == designId && it.Number == number).Select(it => it.Text).FirstAsync(cancel);
        return kept.Set((designId, number), text, new MemoryCacheEntryOptions { Size = text.Length + 1, SlidingExpiration = TimeSpan.FromHours(1) });
    }

    public void Dispose() => kept.Dispose();
}
