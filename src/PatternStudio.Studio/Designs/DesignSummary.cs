namespace PatternStudio.Studio.Designs;

/// <summary>What the list of designs is sorted by.</summary>
public enum DesignOrder { Updated, Title, State, Errors }

/// <summary>Which designs to list.</summary>
/// <param name="Search">Part of a title, whatever its case; empty for all.</param>
/// <param name="Page">0-based.</param>
/// <param name="PageSize">1 to 200.</param>
public sealed record DesignQuery(
    string Search = "",
    DesignState? State = null,
    DesignOrder Order = DesignOrder.Updated,
    bool Descending = true,
    int Page = 0,
    int PageSize = 50);

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
    DateTimeOffset Updated);

/// <summary>A page of the list.</summary>
/// <param name="Total">Number of designs that fit the query, on all pages.</param>
public sealed record DesignPage(IReadOnlyList<DesignSummary> Designs, int Total);
