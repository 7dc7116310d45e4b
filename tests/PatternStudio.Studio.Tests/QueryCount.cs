using System.Collections.Concurrent;
using System.Data.Common;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace PatternStudio.Studio.Tests;

/// <summary>Writes down every query that reads.</summary>
public sealed class QueryCount : DbCommandInterceptor
{
    public ConcurrentQueue<string> Queries { get; } = [];

    public override ValueTask<DbDataReader> ReaderExecutedAsync(
        DbCommand command, CommandExecutedEventData eventData, DbDataReader result, CancellationToken cancellationToken = default)
    {
        Queries.Enqueue(command.CommandText);
        return base.ReaderExecutedAsync(command, eventData, result, cancellationToken);
    }
}
