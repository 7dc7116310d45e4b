namespace PatternStudio.Studio.Designs;

/// <summary>What the list of designs is sorted by.</summary>
public enum DesignOrder { Updated, Title, State, Errors }

/// <summary>Which designs to list.</summary>
/// <param name="Search">Words that all occur in the title, the pattern or the tags, whatever their case; "several in quotation marks" stand together. Empty for all.</param>
/// <param name="Page">0-based.</param>
/// <param name="PageSize">1 to 200.</param>
public sealed record DesignQuery(
    string Search = "",
    DesignState? State = null,
    DesignOrder Order = DesignOrder.Updated,
    bool Descending = true,
    int Page = 0,
    int PageSize = 50)
{
    /// <summary>Only designs that bear this tag; null for all.</summary>
    public Guid? Tag { get; init; }

    /// <summary>Only designs with errors or warnings.</summary>
    public bool WithFindings { get; init; }

    /// <summary>Deleted designs in place of those that are there.</summary>
    public bool Deleted { get; init; }
}

/// <summary>A design as the list shows it, from its stored results.</summary>
/// <param name="Rows">Rows in all (first size).</param>
/// <param name="RowsChecked">Rows worked whole (first size).</param>
/// <param name="WidthCm">Finished width (first size); null where not known.</param>
/// <param name="HeightCm">Finished height (first size); null where not known.</param>
public sealed record DesignSummary(
    Guid Id,
    string Title,
    DesignState State,
    int Version,
    int Rows,
    int RowsChecked,
    int Errors,
    int Warnings,
    double? WidthCm,
    double? HeightCm,
    DateTimeOffset Updated)
{
    /// <summary>The names of its sizes: 'S, M, L'; empty where there is one only.</summary>
    public string Sizes { get; init; } = "";

    /// <summary>Number of findings that are notes.</summary>
    public int Notes { get; init; }

    /// <summary>True where a swatch calibrates it.</summary>
    public bool HasSwatch { get; init; }

    /// <summary>The photo on its card; null where the card shows its small chart.</summary>
    public Guid? PhotoId { get; init; }

    /// <summary>When it was deleted; null while it is there.</summary>
    public DateTimeOffset? Deleted { get; init; }

    /// <summary>The tags it bears, by name.</summary>
    public IReadOnlyList<string> Tags { get; init; } = [];

    /// <summary>What it waits for.</summary>
    public WaitsFor Waits => Waiting.Of(this);
}

/// <summary>A page of the list.</summary>
/// <param name="Total">Number of designs that fit the query, on all pages.</param>
public sealed record DesignPage(IReadOnlyList<DesignSummary> Designs, int Total)
{
    /// <summary>How many would fit in each state, were it asked for.</summary>
    public IReadOnlyDictionary<DesignState, int> ByState { get; init; } = new Dictionary<DesignState, int>();
}
