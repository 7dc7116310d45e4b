using Microsoft.AspNetCore.Components;
using MudBlazor;
using PatternStudio.Studio.Designs;

namespace PatternStudio.Web.Features.Desk;

/// <summary>What happens to words when somebody else has saved the same design meanwhile. Both texts stay, whatever is chosen.</summary>
public enum ConflictChoice
{
    /// <summary>What both have changed becomes the version after theirs.</summary>
    Together,

    /// <summary>Mine becomes the version after theirs.</summary>
    MineNext,

    /// <summary>Mine becomes a design of its own; theirs stays here.</summary>
    MineApart,
}

/// <summary>Shows both texts and asks what to do.</summary>
public sealed partial class ConflictDialog
{
    [Parameter, EditorRequired]
    public Conflict Theirs { get; set; } = null!;

    [Parameter, EditorRequired]
    public string Mine { get; set; } = "";

    [CascadingParameter]
    private IMudDialogInstance Dialog { get; set; } = null!;

    private bool CanBeTogether => Theirs.Together is not null;

    private void Choose(ConflictChoice choice) => Dialog.Close(DialogResult.Ok<ConflictChoice?>(choice));
}
