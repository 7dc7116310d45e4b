using Microsoft.AspNetCore.Components;

namespace PatternStudio.Web.Features.Accounts;

/// <summary>A labelled input of a plain form, with its hint and what is wrong with it.</summary>
public sealed partial class FormField
{
    [Parameter, EditorRequired]
    public string Label { get; set; } = "";

    /// <summary>The name under which the form is posted.</summary>
    [Parameter, EditorRequired]
    public string Name { get; set; } = "";

    [Parameter]
    public string? Value { get; set; }

    [Parameter]
    public string? Hint { get; set; }

    /// <summary>What is wrong with it, in a sentence; null for nothing.</summary>
    [Parameter]
    public string? Wrong { get; set; }

    [Parameter]
    public string Type { get; set; } = "text";

    [Parameter]
    public string? AutoComplete { get; set; }

    private string Id => Name.Replace('.', '-').ToLowerInvariant();

    private string? DescribedBy =>
        string.Join(' ', new[] { Wrong is null ? null : $"{Id}-wrong", Hint is null ? null : $"{Id}-hint" }.OfType<string>()) is { Length: > 0 } ids
            ? ids
            : null;
}
