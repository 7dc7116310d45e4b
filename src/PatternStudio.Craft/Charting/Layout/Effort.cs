namespace PatternStudio.Craft.Charting.Layout;

/// <summary>Counts the turns that a layout took to come to rest.</summary>
internal sealed class Effort
{
    public int Turns { get; set; }
}
