using Microsoft.AspNetCore.WebUtilities;
using Microsoft.Extensions.Primitives;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Tags;

namespace PatternStudio.Web.Features.Designs;

/// <summary>What the list of designs shows, as its address says it: so that going back, a bookmark and a link all find the same list.</summary>
internal sealed record ShelfAddress
{
    public const int PageSize = 48;

    private static readonly Dictionary<DesignOrder, string> Orders = new()
    {
        [DesignOrder.Updated] = "changed",
        [DesignOrder.Title] = "title",
        [DesignOrder.State] = "state",
        [DesignOrder.Errors] = "findings",
    };

    public string Search { get; init; } = "";

    public DesignState? State { get; init; }

    /// <summary>The tag's name; empty for all.</summary>
    public string Tag { get; init; } = "";

    public bool Findings { get; init; }

    public DesignOrder Order { get; init; } = DesignOrder.Updated;

    /// <summary>Against the order's usual direction.</summary>
    public bool Reverse { get; init; }

    /// <summary>1-based.</summary>
    public int Page { get; init; } = 1;

    /// <summary>True for the dense list, false for cards; null where the address does not say.</summary>
    public bool? Dense { get; init; }

    public bool IsFiltered => Search.Length > 0 || State is not null || Tag.Length > 0 || Findings;

    /// <summary>Reads an address; whatever it does not know is passed over.</summary>
    public static ShelfAddress From(string uri)
    {
        int at = uri.IndexOf('?', StringComparison.Ordinal);
        Dictionary<string, StringValues> parts = at < 0 ? [] : QueryHelpers.ParseQuery(uri[at..].Split('#')[0]);
        return new ShelfAddress
        {
            Search = Get("q"),
            State = Enum.TryParse(Get("state"), ignoreCase: true, out DesignState state) && Enum.IsDefined(state) ? state : null,
            Tag = Get("tag"),
            Findings = Get("findings") == "1",
            Order = Orders.Where(order => order.Value == Get("sort")).Select(order => order.Key).FirstOrDefault(DesignOrder.Updated),
            Reverse = Get("reverse") == "1",
            Page = int.TryParse(Get("page"), out int page) && page is > 1 and < 100_000 ? page : 1,
            Dense = Get("view") switch { "list" => true, "cards" => false, _ => null },
        };

        string Get(string name) => parts.TryGetValue(name, out StringValues values) ? values.ToString() : "";
    }

    /// <summary>The address, without whatever is as usual.</summary>
    public override string ToString() => QueryHelpers.AddQueryString("designs", new Dictionary<string, string?>
    {
        ["q"] = Search.Length > 0 ? Search : null,
        ["state"] = State?.ToString().ToLowerInvariant(),
        ["tag"] = Tag.Length > 0 ? Tag : null,
        ["findings"] = Findings ? "1" : null,
        ["sort"] = Order == DesignOrder.Updated ? null : Orders[Order],
        ["reverse"] = Reverse ? "1" : null,
        ["page"] = Page > 1 ? $"{Page}" : null,
        ["view"] = Dense switch { true => "list", false => "cards", null => null },
    });

    /// <summary>What is asked of the studio. A tag that the studio does not have finds nothing.</summary>
    public DesignQuery ToQuery(IReadOnlyList<KeptTag> tags) =>
        new(Search, State, Order, (Order is DesignOrder.Updated or DesignOrder.Errors) != Reverse, Page - 1, PageSize)
        {
            Tag = Tag.Length == 0 ? null : tags.FirstOrDefault(tag => tag.Name.Equals(Tag, StringComparison.OrdinalIgnoreCase))?.Id ?? Guid.Empty,
            WithFindings = Findings,
        };
}
