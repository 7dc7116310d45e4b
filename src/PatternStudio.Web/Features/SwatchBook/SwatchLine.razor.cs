using System.Globalization;
using Microsoft.AspNetCore.Components;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Shell;

namespace PatternStudio.Web.Features.SwatchBook;

/// <summary>A swatch in two lines: its gauge, then what it was made with. What was not noted is said to be so.</summary>
public sealed partial class SwatchLine
{
    [Parameter, EditorRequired]
    public SwatchDetails Swatch { get; set; } = null!;

    /// <summary>The yarn's name; null where none was noted.</summary>
    [Parameter]
    public string? Yarn { get; set; }

    private IEnumerable<string> Facts =>
    [
        .. Swatch.Stitch.Length > 0 ? [Words["WorkedInStitch", Swatch.Stitch]] : Array.Empty<string>(),
        Swatch.WeightGrams is { } grams ? $"{Numbers.Write(grams)} g" : Words["NotWeighed"],
        Swatch.HookMm is { } hook ? Words["HookOf", Numbers.Write(hook)] : Words["HookNotNoted"],
        Yarn ?? Words["YarnNotNoted"],
        Swatch.MeasuredOn.ToString("d MMM yyyy", CultureInfo.InvariantCulture),
    ];
}
