using System.Globalization;

namespace PatternStudio.Web.Shell;

/// <summary>Moments as people say them, in this computer's own time.</summary>
public sealed class Moments(TimeProvider clock)
{
    /// <summary>'today 14:05', 'yesterday 9:30', '3 May', '3 May 2025'.</summary>
    public string Say(DateTimeOffset moment)
    {
        DateTime local = Local(moment), now = Local(clock.GetUtcNow());
        string time = local.ToString("H:mm", CultureInfo.InvariantCulture);
        return (now.Date - local.Date).Days switch
        {
            0 => $"today {time}",
            1 => $"yesterday {time}",
            _ => Manner.Day(DateOnly.FromDateTime(local), local.Year != now.Year),
        };
    }

    /// <summary>The day it is here.</summary>
    public DateOnly Today => DateOnly.FromDateTime(Local(clock.GetUtcNow()));

    private DateTime Local(DateTimeOffset moment) => TimeZoneInfo.ConvertTime(moment, clock.LocalTimeZone).DateTime;
}
