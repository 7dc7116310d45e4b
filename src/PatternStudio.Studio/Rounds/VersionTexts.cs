using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Caching.Memory;
using PatternStudio.Craft.Reading;
using PatternStudio.Studio.Data;

namespace PatternStudio.Studio.Rounds;

/// <summary>Texts of versions, kept in memory while testers open them: a version never changes, so what was read once is right for ever.</summary>
public sealed class VersionTexts : IDisposable
{
    /// <summary>Letters kept in all: some tens of megabytes.</summary>
    private const long MostLetters = 10_000_000;

    private readonly MemoryCache kept = new(new MemoryCacheOptions { SizeLimit = MostLetters });

    /// <summary>The text of a version that there is.</summary>
    internal async Task<string> OfAsync(StudioDbContext context, Guid designId, int number, CancellationToken cancel) =>
        (await FindAsync(context, designId, number, cancel)).Text;

    /// <summary>The names of the sizes of a version that there is; one empty name where there is one.</summary>
    internal async Task<IReadOnlyList<string>> SizesAsync(StudioDbContext context, Guid designId, int number, CancellationToken cancel) =>
        (await FindAsync(context, designId, number, cancel)).Sizes.Value;

    private async Task<Kept> FindAsync(StudioDbContext context, Guid designId, int number, CancellationToken cancel)
    {
        if (kept.TryGetValue((designId, number), out Kept? known)) return known!;
        string text = await context.Versions.Where(it => it.DesignId == designId && it.Number == number).Select(it => it.Text).FirstAsync(cancel);
        return kept.Set(
            (designId, number), new Kept(text, new(() => [.. PatternReader.Read(text).Sizes])),
            new MemoryCacheEntryOptions { Size = text.Length + 1, SlidingExpiration = TimeSpan.FromHours(1) });
    }

    public void Dispose() => kept.Dispose();

    private sealed record Kept(string Text, Lazy<IReadOnlyList<string>> Sizes);
}
