namespace PatternStudio.Studio.Designs;

/// <summary>
/// What was computed from one version. The summary stays for every version; the whole is kept for the latest one only,
/// since it can be computed again.
/// </summary>
public sealed class Computation
{
    private Computation() { }

    internal Computation(Guid designId, int version, Results results, DateTimeOffset now)
    {
        (DesignId, Version) = (designId, version);
        Take(results, now);
    }

    /// <summary>Of an earlier version, as it was computed then.</summary>
    internal Computation(Guid designId, ComputedSummary then)
    {
        (DesignId, Version, EngineVersion, ComputedAt) = (designId, then.Version, then.EngineVersion, then.ComputedAt);
        (Rows, RowsChecked, Errors, Warnings) = (then.Rows, then.RowsChecked, then.Errors, then.Warnings);
        (WidthMetres, HeightMetres) = (then.WidthMetres, then.HeightMetres);
    }

    internal ComputedSummary Summary => new(Version, EngineVersion, ComputedAt, Rows, RowsChecked, Errors, Warnings, WidthMetres, HeightMetres);

    public Guid DesignId { get; private set; }

    /// <summary>Number of the version.</summary>
    public int Version { get; private set; }

    public string EngineVersion { get; private set; } = "";

    public DateTimeOffset ComputedAt { get; private set; }

    public int Rows { get; private set; }

    public int RowsChecked { get; private set; }

    public int Errors { get; private set; }

    public int Warnings { get; private set; }

    public double? WidthMetres { get; private set; }

    public double? HeightMetres { get; private set; }

    /// <summary>The whole, packed; null for a version that is no longer the latest.</summary>
    public byte[]? Whole { get; private set; }

    /// <summary>Takes new results in place of the old ones.</summary>
    internal void Take(Results results, DateTimeOffset now)
    {
        SizeResults first = results.Sizes[0];
        (EngineVersion, ComputedAt) = (results.EngineVersion, now);
        (Rows, RowsChecked) = (first.Read.Rows, first.Read.Checked);
        (Errors, Warnings) = (results.Errors, results.Warnings);
        (WidthMetres, HeightMetres) = (first.Size?.WidthCm / 100, first.Size?.HeightCm / 100);
        Whole = ResultsJson.Pack(results);
    }
}

/// <summary>What is kept of every version's results.</summary>
internal sealed record ComputedSummary(
    int Version, string EngineVersion, DateTimeOffset ComputedAt, int Rows, int RowsChecked, int Errors, int Warnings, double? WidthMetres, double? HeightMetres);
