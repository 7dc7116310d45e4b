using Microsoft.AspNetCore.Components;

namespace PatternStudio.Web.Shell.Parts;

/// <summary>A labelled input of a live form. Numbers come in as written: whoever owns the form reads them.</summary>
public sealed partial class TextBox
{
    private readonly string id = $"f{Guid.NewGuid():N}";

    [Parameter, EditorRequired]
    public string Label { get; set; } = "";

    [Parameter]
    public string Value { get; set; } = "";

    [Parameter]
    public EventCallback<string> ValueChanged { get; set; }

    /// <summary>'cm', 'g': shown after the input.</summary>
    [Parameter]
    public string? Unit { get; set; }

    [Parameter]
    public string? Hint { get; set; }

    [Parameter]
    public string? Placeholder { get; set; }

    /// <summary>What is wrong with it, in a sentence; null for nothing.</summary>
    [Parameter]
    public string? Wrong { get; set; }

    /// <summary>A question about what is written, in a sentence; null for none.</summary>
    [Parameter]
    public string? Doubt { get; set; }

    [Parameter]
    public string Type { get; set; } = "text";

    /// <summary>'decimal' for numbers, so that a phone shows its number keys.</summary>
    [Parameter]
    public string? InputMode { get; set; }

    [Parameter]
    public int? MaxLength { get; set; }

    /// <summary>More than one makes it a box for several lines.</summary>
    [Parameter]
    public int Lines { get; set; } = 1;

    private string? Invalid => Wrong is null ? null : "true";

    private string? DescribedBy => string.Join(' ', Beside.Select(what => $"{id}-{what}")) is { Length: > 0 } ids ? ids : null;

    private IEnumerable<string> Beside =>
        new[] { (Wrong, "wrong"), (Wrong is null ? Doubt : null, "doubt"), (Hint, "hint") }.Where(part => part.Item1 is not null).Select(part => part.Item2);

    private Task TellAsync(ChangeEventArgs change) => ValueChanged.InvokeAsync(change.Value as string ?? "");
}
