using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using MudBlazor;
using PatternStudio.Craft.Reading;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Writing;
using PatternStudio.Web.Shell;

namespace PatternStudio.Web.Features.Desk;

/// <summary>The pattern in the other terms: to read, to copy, to put on the desk or to keep beside this one.</summary>
public sealed partial class OtherTermsDialog
{
    private IReadOnlyList<ConvertedWords> stretches = [];
    private int changed;

    /// <summary>Null where nobody has asked for it yet.</summary>
    private bool? copied;

    /// <summary>The words as they are on the desk.</summary>
    [Parameter, EditorRequired]
    public string Text { get; set; } = "";

    /// <summary>The terms wanted.</summary>
    [Parameter, EditorRequired]
    public Terminology To { get; set; }

    [CascadingParameter]
    private IMudDialogInstance Dialog { get; set; } = null!;

    [Inject]
    private IJSRuntime Browser { get; set; } = null!;

    private string Converted => string.Concat(stretches.Select(stretch => stretch.Words));

    protected override async Task OnInitializedAsync() => await Task.Run(Convert);

    private void Convert()
    {
        Pattern pattern = PatternReader.Read(Text);
        stretches = ConvertedWords.Of(Text, TermsConverter.Edits(pattern, To));
        changed = stretches.Count(stretch => stretch.Changed);
    }

    private async Task CopyAsync() => copied = await Browser.CopyAsync(Converted);

    private void Choose(bool apart) => Dialog.Close(DialogResult.Ok<OtherTerms?>(new OtherTerms(Converted, apart)));
}

/// <summary>What shall become of a pattern in other terms.</summary>
/// <param name="Apart">True to keep it as a design of its own; false to put it on the desk.</param>
public sealed record OtherTerms(string Text, bool Apart);
