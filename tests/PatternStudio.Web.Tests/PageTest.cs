using Bunit;
using Microsoft.Extensions.DependencyInjection;
using PatternStudio.Web.Shell;

namespace PatternStudio.Web.Tests;

/// <summary>What every component test needs: the words of the program and a clock that stands still.</summary>
public abstract class PageTest : BunitContext
{
    /// <summary>A Wednesday, 25 November 2026, noon.</summary>
    protected static DateTimeOffset Noon { get; } = new(2026, 11, 25, 12, 0, 0, TimeSpan.Zero);

    protected PageTest()
    {
        Services.AddLocalization();
        Services.AddSingleton<TimeProvider>(new StandingClock(Noon));
        Services.AddSingleton<Moments>();
    }

    private sealed class StandingClock(DateTimeOffset now) : TimeProvider
    {
        public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

        public override DateTimeOffset GetUtcNow() => now;
    }
}
