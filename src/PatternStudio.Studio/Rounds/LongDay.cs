using System.Globalization;

namespace PatternStudio.Studio.Rounds;

/// <summary>A day as strangers read it, whatever their country puts first: '3 March 2027'.</summary>
public static class LongDay
{
    public static string Of(DateOnly day) => day.ToString("d MMMM yyyy", CultureInfo.InvariantCulture);
}
