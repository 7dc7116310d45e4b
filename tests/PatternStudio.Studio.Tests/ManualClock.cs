namespace PatternStudio.Studio.Tests;

/// <summary>A clock that moves when told to, and one second on at each look, so that moments differ.</summary>
public sealed class ManualClock : TimeProvider
{
    private long ticks = new DateTimeOffset(2026, 3, 1, 9, 0, 0, TimeSpan.Zero).Ticks;

    public override DateTimeOffset GetUtcNow() =>
        new(Interlocked.Add(ref ticks, TimeSpan.TicksPerSecond), TimeSpan.Zero);

    public void Advance(TimeSpan by) => Interlocked.Add(ref ticks, by.Ticks);
}
