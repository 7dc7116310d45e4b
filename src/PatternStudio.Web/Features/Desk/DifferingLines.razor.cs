using Microsoft.AspNetCore.Components;

namespace PatternStudio.Web.Features.Desk;

/// <summary>A text in which the lines that another text lacks stand out.</summary>
public sealed partial class DifferingLines
{
    private HashSet<string> others = [];

    [Parameter, EditorRequired]
    public string Text { get; set; } = "";

    [Parameter, EditorRequired]
    public string Other { get; set; } = "";

    private IEnumerable<string> Lines => Split(Text);

    protected override void OnParametersSet() => others = [.. Split(Other)];

    private static string[] Split(string text) => text.ReplaceLineEndings("\n").Split('\n');
}
