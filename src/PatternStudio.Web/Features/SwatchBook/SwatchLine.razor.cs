using Microsoft.AspNetCore.Components;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Shell;

namespace PatternStudio.Web.Features.SwatchBook;

/// <summary>A swatch in a few lines: its gauge, what it was made with, what blocking did. What was not noted is said to be so.</summary>
public sealed partial class SwatchLine
{
    [Parameter, EditorRequired]
    public SwatchDetails Swatch { get; set; } = null!;

    /// <summary>The yarn's name; null where none was noted.</summary>
    [Parameter]
    public string? Yarn { get; set; }

    private string Gauge => Words[$"Gauge{Swatch.Counted}", Numbers.Write(Swatch.Stitches), Numbers.Write(Swatch.Rows),
        Swatch.Counted == Counting.Rounds ? Numbers.Taken(Swatch.WidthCm) : Numbers.Taken(Swatch.WidthCm, Swatch.HeightCm)];

    private IEnumerable<string> Facts =>
    [
        .. Sample,
        Swatch.WeightGrams is { } grams ? $"{Numbers.Write(grams)} g" : Words["NotWeighed"],
        Swatch.HookMm is { } hook ? Words["HookOf", Numbers.Write(hook)] : Words["HookNotNoted"],
        Yarn ?? Words["YarnNotNoted"],
        Manner.Day(Swatch.MeasuredOn),
    ];

    private IEnumerable<string> Sample => Swatch switch
    {
        { FromRow: { } from, ToRow: { } to } => [from == to ? Words["OfRow", from] : Words["OfRows", from, to]],
        { Pattern.Length: > 0 } => [Swatch.Pattern],
        { Stitch.Length: > 0 } => [Words["WorkedInStitch", Swatch.Stitch]],
        _ => [],
    };

    /// <summary>What blocking did, where both sizes were measured.</summary>
    private string? Blocking => Swatch switch
    {
        { WidthBeforeCm: { } width, HeightBeforeCm: { } height } =>
            Words["Blocked", Numbers.Taken(width, height), Change(Swatch.WidthCm / width), Change(Swatch.HeightCm / height)].Value,
        { WidthBeforeCm: { } width } => Words["BlockedWidth", Numbers.Taken(width), Change(Swatch.WidthCm / width)].Value,
        { HeightBeforeCm: { } height } => Words["BlockedHeight", Numbers.Taken(height), Change(Swatch.HeightCm / height)].Value,
        _ => null,
    };

    /// <summary>'+4 %', '−2 %', '±0 %'.</summary>
    private static string Change(double times)
    {
        double percent = Math.Round((times - 1) * 100);
        return percent == 0 ? "±0\u202f%" : $"{(percent > 0 ? "+" : "−")}{Math.Abs(percent):0}\u202f%";
    }
}
