using Microsoft.AspNetCore.Components;
using PatternStudio.Studio;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Shell.Parts;

namespace PatternStudio.Web.Features.SwatchBook;

/// <summary>A swatch as measured with tape and scales.</summary>
public sealed partial class SwatchForm
{
    private IReadOnlyList<FieldMessage> messages = [];

    /// <summary>What is in the form.</summary>
    [Parameter, EditorRequired]
    public SwatchInput Input { get; set; } = null!;

    /// <summary>The yarns to choose from.</summary>
    [Parameter]
    public IReadOnlyList<KeptYarn> Yarns { get; set; } = [];

    /// <summary>Keeps the swatch; gives back what is wrong with it, if anything.</summary>
    [Parameter, EditorRequired]
    public Func<SwatchDetails, Task<IReadOnlyList<FieldMessage>>> Keep { get; set; } = null!;

    [Parameter]
    public EventCallback Cancelled { get; set; }

    private async Task SaveAsync()
    {
        Outcome<SwatchDetails> read = Input.Read(Words["NotANumber"], Words["NoDay"]);
        messages = read.Value is { } swatch && read.Succeeded ? await Keep(swatch) : read.Messages;
    }

    private void PickYarn(ChangeEventArgs change) =>
        Input.YarnId = Guid.TryParse(change.Value as string, out Guid id) ? id : null;

    private string? Wrong(string field) => messages.For(field);
}
