using Microsoft.AspNetCore.Components;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Materials;

namespace PatternStudio.Web.Features.Desk;

/// <summary>A design on paper: its title, what it takes, its words, its chart.</summary>
public sealed partial class PrintSheet
{
    [Parameter, EditorRequired]
    public string Title { get; set; } = "";

    /// <summary>The name of the size that is printed; empty where there is one only.</summary>
    [Parameter]
    public string SizeName { get; set; } = "";

    [Parameter, EditorRequired]
    public string Text { get; set; } = "";

    [Parameter, EditorRequired]
    public SizeResults Numbers { get; set; } = null!;

    /// <summary>The gauge of the design; null for none.</summary>
    [Parameter]
    public SwatchDetails? Swatch { get; set; }

    /// <summary>What it is made of; null where not told.</summary>
    [Parameter]
    public YarnDetails? Yarn { get; set; }

    /// <summary>SVG, as our own painter writes it; empty for none.</summary>
    [Parameter]
    public string Chart { get; set; } = "";

    private List<string> Materials =>
    [
        .. Yarn is { } yarn ? [yarn.NameAndColour] : Array.Empty<string>(),
        .. Numbers.Yarn?.Grams is { } grams ? [$"{Shell.Numbers.Amount(grams)} g"] : Array.Empty<string>(),
        .. Numbers.Yarn?.Metres is { } metres ? [Words["Metres", Shell.Numbers.Amount(metres)].Value] : Array.Empty<string>(),
    ];

    /// <summary>The words without marks that only headings and heavy letters are made with; a first line that repeats the title is left out.</summary>
    private IEnumerable<(string Line, bool Heading)> Lines
    {
        get
        {
            string[] lines = Text.Split('\n');
            int first = Array.FindIndex(lines, line => line.Trim().Length > 0);
            return lines.Select((line, at) => (Line: Plain(line), Heading: line.StartsWith('#'), At: at))
                .Where(it => it.At > first || it.At == first && !it.Line.Trim().Equals(Title, StringComparison.OrdinalIgnoreCase))
                .Select(it => (it.Line, it.Heading));
        }
    }

    private static string Plain(string line) => (line.StartsWith('#') ? line.TrimStart('#').TrimStart() : line).Replace("**", "", StringComparison.Ordinal);
}
