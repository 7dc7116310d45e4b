using Microsoft.Data.Sqlite;
using Microsoft.Extensions.Configuration;

namespace PatternStudio.Studio.Data;

/// <summary>Where the studio keeps its data: section 'Store' of the configuration.</summary>
/// <param name="Kind"><c>Sqlite</c> unless told otherwise.</param>
/// <param name="Folder">Full path of the folder for the SQLite file and for whatever else is kept in files.</param>
/// <param name="Connection">Connection string of the store.</param>
public sealed record Store(StoreKind Kind, string Folder, string Connection)
{
    /// <summary>Reads 'Store:Kind' (Sqlite or Postgres), 'Store:Folder' and 'Store:Connection'.</summary>
    /// <param name="contentRoot">What a relative folder is relative to.</param>
    /// <exception cref="InvalidOperationException">The configuration names no known kind, or PostgreSQL without a connection.</exception>
    public static Store From(IConfiguration configuration, string contentRoot)
    {
        string kindName = configuration["Store:Kind"] is { Length: > 0 } named ? named : nameof(StoreKind.Sqlite);
        if (!Enum.TryParse(kindName, ignoreCase: true, out StoreKind kind) || !Enum.IsDefined(kind))
            throw new InvalidOperationException($"The setting Store:Kind is '{kindName}'. Set it to Sqlite or Postgres.");
        string folder = Path.GetFullPath(configuration["Store:Folder"] is { Length: > 0 } set ? set : "data", contentRoot);
        string? connection = configuration["Store:Connection"];
        return kind switch
        {
            StoreKind.Sqlite => new Store(kind, folder, SqliteConnection(connection, folder)),
            _ when string.IsNullOrWhiteSpace(connection) => throw new InvalidOperationException(
                "Store:Kind is Postgres, but Store:Connection is empty. Give it a connection string such as 'Host=db;Database=studio;Username=studio;Password=…'."),
            _ => new Store(kind, folder, connection),
        };
    }

    private static string SqliteConnection(string? connection, string folder)
    {
        var builder = new SqliteConnectionStringBuilder(connection ?? "") { ForeignKeys = true };
        if (builder.DataSource.Length == 0) builder.DataSource = "studio.db";
        builder.DataSource = Path.GetFullPath(builder.DataSource, folder);
        return builder.ConnectionString;
    }
}

/// <summary>Kinds of store.</summary>
public enum StoreKind
{
    /// <summary>One file beside the program: right for a studio on one machine.</summary>
    Sqlite,

    /// <summary>A PostgreSQL server: right for several web instances.</summary>
    Postgres,
}
