namespace PatternStudio.Studio.Data;

/// <summary>Where the studio keeps its data: section 'Store' of the configuration.</summary>
public sealed class Store
{
    /// <summary>'Sqlite' (the default) or 'Postgres'.</summary>
    public string Kind { get; set; } = "Sqlite";

    /// <summary>Folder of the SQLite file and of everything else the studio keeps; relative to the content root.</summary>
    public string Folder { get; set; } = "data";

    /// <summary>Connection string; for SQLite only where the file shall not be 'studio.db' in the folder.</summary>
    public string Connection { get; set; } = "";
}
