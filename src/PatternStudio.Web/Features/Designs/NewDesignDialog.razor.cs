using Microsoft.AspNetCore.Components;
using MudBlazor;
using PatternStudio.Studio;
using PatternStudio.Studio.Designs;
using PatternStudio.Web.Hosting;
using PatternStudio.Web.Shell.Parts;

namespace PatternStudio.Web.Features.Designs;

/// <summary>Begins a design, empty or from a pasted pattern. Gives its id.</summary>
public sealed partial class NewDesignDialog
{
    private string title = "";
    private string text = "";
    private IReadOnlyList<FieldMessage> messages = [];

    [CascadingParameter]
    private IMudDialogInstance Dialog { get; set; } = null!;

    [Inject]
    private DesignDesk Desk { get; set; } = null!;

    [Inject]
    private SignedIn SignedIn { get; set; } = null!;

    private async Task CreateAsync()
    {
        string named = title.Trim().Length > 0 ? title.Trim() : FirstLine(text);
        Outcome<Guid> begun = await Desk.CreateAsync(await SignedIn.CallerAsync(), named, text.ReplaceLineEndings("\n"));
        messages = begun.Messages;
        if (begun.Succeeded) Dialog.Close(DialogResult.Ok<Guid?>(begun.Value));
    }

    private string? Wrong(string field) => messages.For(field);

    /// <summary>A pasted pattern mostly begins with its name.</summary>
    private static string FirstLine(string text)
    {
        string line = text.ReplaceLineEndings("\n").Split('\n').Select(line => line.Trim()).FirstOrDefault(line => line.Length > 0) ?? "";
        return line.Length <= Design.TitleLength ? line : line[..Design.TitleLength];
    }
}
