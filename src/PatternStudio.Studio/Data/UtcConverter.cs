using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace PatternStudio.Studio.Data;

/// <summary>Keeps moments as UTC: SQLite can't sort a DateTimeOffset.</summary>
internal sealed class UtcConverter() : ValueConverter<DateTimeOffset, DateTime>(
    moment => moment.UtcDateTime,
    stored => new DateTimeOffset(DateTime.SpecifyKind(stored, DateTimeKind.Utc)));
