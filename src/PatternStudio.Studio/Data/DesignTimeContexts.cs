using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;

namespace PatternStudio.Studio.Data;

/// <summary>For the migration tool only: makes the SQLite model without a host. No file is opened.</summary>
internal sealed class SqliteDesignTime : IDesignTimeDbContextFactory<SqliteStudioDbContext>
{
    public SqliteStudioDbContext CreateDbContext(string[] args) =>
        new(new DbContextOptionsBuilder<SqliteStudioDbContext>().UseSqlite("Data Source=design-time.db").Options);
}

/// <summary>For the migration tool only: makes the PostgreSQL model without a server.</summary>
internal sealed class PostgresDesignTime : IDesignTimeDbContextFactory<PostgresStudioDbContext>
{
    public PostgresStudioDbContext CreateDbContext(string[] args) =>
        new(new DbContextOptionsBuilder<PostgresStudioDbContext>().UseNpgsql("Host=localhost").Options);
}
