using System.Text;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.Extensions.Caching.Memory;

namespace PatternStudio.Web.Features.Testing.Sheets;

/// <summary>
/// Pages painted once and given to all who are shown the same. What differs from visitor to visitor, and is secret, is never kept: the page is painted with stand-ins, and each visitor's own
/// words are put in their place. Whether somebody may see a page is asked before, each time; here only what it looks like is kept.
/// </summary>
internal sealed class KeptPages(IServiceScopeFactory scopes, ILoggerFactory loggers) : IDisposable
{
    /// <summary>Bytes of all pages.</summary>
    private const long MostBytes = 32 * 1024 * 1024;

    private readonly MemoryCache kept = new(new MemoryCacheOptions { SizeLimit = MostBytes });

    /// <summary>Letters that no page has of itself: made by chance whenever the program starts.</summary>
    private readonly string mark = $"_{Guid.NewGuid():N}_";

    /// <summary>What stands in the page for the n-th of a visitor's own words.</summary>
    public string StandIn(int place) => $"{mark}{place}";

    /// <summary>The page of a component.</summary>
    /// <param name="shown">All that the page shows, except the stand-ins: pages with equal values are the same.</param>
    /// <param name="parameters">The component's parameters; asked for where the page is painted.</param>
    public async Task<KeptPage> OfAsync<TPage>(object shown, Func<Dictionary<string, object?>> parameters) where TPage : IComponent
    {
        (Type, object) key = (typeof(TPage), shown);
        if (kept.TryGetValue(key, out KeptPage? known)) return known!;
        // Two who come at once may both paint it: the same page twice harms nobody.
        KeptPage painted = KeptPage.Cut(await PaintAsync<TPage>(parameters()), mark);
        return kept.Set(key, painted, new MemoryCacheEntryOptions { Size = painted.Length, SlidingExpiration = TimeSpan.FromHours(1) });
    }

    public void Dispose() => kept.Dispose();

    private async Task<string> PaintAsync<TPage>(Dictionary<string, object?> parameters) where TPage : IComponent
    {
        await using AsyncServiceScope scope = scopes.CreateAsyncScope();
        await using var renderer = new HtmlRenderer(scope.ServiceProvider, loggers);
        return await renderer.Dispatcher.InvokeAsync(async () => (await renderer.RenderComponentAsync<TPage>(ParameterView.FromDictionary(parameters))).ToHtmlString());
    }
}

/// <summary>A painted page with places for a visitor's own words.</summary>
internal sealed class KeptPage
{
    private readonly byte[][] parts;
    private readonly int[] places;

    private KeptPage(byte[][] parts, int[] places) => (this.parts, this.places) = (parts, places);

    public int Length => parts.Sum(part => part.Length);

    /// <summary>Cuts a page where stand-ins are: the mark, then one digit.</summary>
    public static KeptPage Cut(string page, string mark)
    {
        string[] parts = page.Split(mark);
        return new KeptPage(
            [.. parts.Select((part, at) => Encoding.UTF8.GetBytes(at == 0 ? part : part[1..]))],
            [.. parts.Skip(1).Select(part => part[0] - '0')]);
    }

    /// <summary>The page for one visitor.</summary>
    /// <param name="own">Her words by their places. They become markup as they are: give only what needs no escaping.</param>
    public IResult For(params string[] own)
    {
        byte[] whole = new byte[Length + places.Sum(place => own[place].Length)];
        int at = 0;
        for (int i = 0; i < parts.Length; i++)
        {
            if (i > 0) at += Encoding.ASCII.GetBytes(own[places[i - 1]], whole.AsSpan(at));
            parts[i].CopyTo(whole, at);
            at += parts[i].Length;
        }

        return TypedResults.Bytes(whole, "text/html; charset=utf-8");
    }
}
