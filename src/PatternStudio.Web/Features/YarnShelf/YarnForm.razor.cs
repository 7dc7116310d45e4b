using System.Globalization;
using Microsoft.AspNetCore.Components;
using PatternStudio.Studio;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Shell.Parts;

namespace PatternStudio.Web.Features.YarnShelf;

/// <summary>A yarn as its label tells.</summary>
public sealed partial class YarnForm
{
    private IReadOnlyList<FieldMessage> messages = [];

    /// <summary>What is in the form.</summary>
    [Parameter, EditorRequired]
    public YarnInput Input { get; set; } = null!;

    /// <summary>Keeps the yarn; gives back what is wrong with it, if anything.</summary>
    [Parameter, EditorRequired]
    public Func<YarnDetails, Task<IReadOnlyList<FieldMessage>>> Keep { get; set; } = null!;

    [Parameter]
    public EventCallback Cancelled { get; set; }

    private async Task SaveAsync()
    {
        Outcome<YarnDetails> read = Input.Read(Words["NotANumber"]);
        messages = read.Value is { } yarn && read.Succeeded ? await Keep(yarn) : read.Messages;
    }

    private void PickWeight(ChangeEventArgs change) =>
        Input.WeightClass = int.TryParse(change.Value as string, CultureInfo.InvariantCulture, out int weight) ? weight : null;

    private void PickColour(ChangeEventArgs change) => Input.ColourHex = change.Value as string ?? "";

    private string? Wrong(string field) => messages.For(field);
}
