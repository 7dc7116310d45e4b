using Microsoft.AspNetCore.Components;
using PatternStudio.Craft.Terms;
using PatternStudio.Studio;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Shell.Parts;

namespace PatternStudio.Web.Features.SwatchBook;

/// <summary>A swatch as measured with tape and scales.</summary>
public sealed partial class SwatchForm
{
    private static readonly StitchId[] PlainStitches = [StitchId.Single, StitchId.HalfDouble, StitchId.Double, StitchId.Treble];
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

    /// <summary>Gauge swatches in plain stitches; a kept swatch may name another one.</summary>
    private IEnumerable<StitchTerm> Stitches =>
        PlainStitches.Append(new StitchId(Input.Stitch)).Distinct().Select(Vocabulary.Standard.Find).OfType<StitchTerm>();

    private static string FullName(StitchTerm stitch, Terminology terms) => stitch.Names(terms) is { Count: > 1 } names ? names[1] : stitch.Abbreviation(terms);

    private void PickStitch(ChangeEventArgs change) => Input.Stitch = change.Value as string ?? "";

    private void PickYarn(ChangeEventArgs change) =>
        Input.YarnId = Guid.TryParse(change.Value as string, out Guid id) ? id : null;

    private string? Wrong(string field) => messages.For(field);
}
