namespace PatternStudio.Studio.Data;

/// <summary>The clock as the store can keep it.</summary>
internal static class Moments
{
    /// <summary>Now, in whole microseconds: PostgreSQL keeps no finer ones.</summary>
    public static DateTimeOffset Now(this TimeProvider clock)
    {
        DateTimeOffset now = clock.GetUtcNow();
        return now.AddTicks(-(now.Ticks % TimeSpan.TicksPerMicrosecond));
    }
}
