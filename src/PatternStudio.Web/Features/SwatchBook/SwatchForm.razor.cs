using Microsoft.AspNetCore.Components;
using PatternStudio.Craft.Terms;
using PatternStudio.Studio;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Shell;
using PatternStudio.Web.Shell.Parts;

namespace PatternStudio.Web.Features.SwatchBook;

/// <summary>
/// A swatch as measured with tape and scales. What can't be is refused at its field; what can hardly be is asked at its field, and kept where the maker says
/// that it is so.
/// </summary>
public sealed partial class SwatchForm
{
    private static readonly StitchId[] PlainStitches = [StitchId.Single, StitchId.HalfDouble, StitchId.Double, StitchId.Treble];
    private IReadOnlyList<FieldMessage> messages = [];
    private IReadOnlyList<FieldMessage> doubts = [];
    private IReadOnlyList<Differing>? theirs;
    private SwatchDetails? theirSwatch;
    private SwatchDetails? asked;
    private bool saving;

    /// <summary>What is in the form.</summary>
    [Parameter, EditorRequired]
    public SwatchInput Input { get; set; } = null!;

    /// <summary>The swatch that is corrected; null for a new one.</summary>
    [Parameter]
    public SwatchDetails? Before { get; set; }

    /// <summary>The photo that is kept already; null for none.</summary>
    [Parameter]
    public Guid? KeptPhoto { get; set; }

    /// <summary>The yarns to choose from.</summary>
    [Parameter]
    public IReadOnlyList<KeptYarn> Yarns { get; set; } = [];

    /// <summary>Keeps the swatch; gives back what is wrong with it, or what somebody else kept meanwhile.</summary>
    [Parameter, EditorRequired]
    public Func<SwatchToKeep, Task<ChangeOutcome<SwatchDetails>>> Keep { get; set; } = null!;

    [Parameter]
    public EventCallback Cancelled { get; set; }

    private PhotoChange? Photo { get; set; }

    private async Task SaveAsync()
    {
        Outcome<SwatchDetails> read = Input.Read(Words);
        messages = read.Messages;
        if (read.Value is not { } swatch || !read.Succeeded) return;
        if (Asks(swatch)) return;
        saving = true;
        try
        {
            ChangeOutcome<SwatchDetails> kept = await Keep(new SwatchToKeep(swatch, theirSwatch ?? Before, Photo));
            messages = kept.Messages;
            Show(kept.Theirs, swatch);
        }
        finally
        {
            saving = false;
        }
    }

    /// <summary>Asks once about numbers that can hardly be; what was asked and left as it is is so.</summary>
    private bool Asks(SwatchDetails swatch)
    {
        bool answered = swatch == asked;
        (doubts, asked) = (answered ? [] : SwatchQuestions.About(swatch, Yarns.FirstOrDefault(yarn => yarn.Id == swatch.YarnId)?.Details), swatch);
        return doubts.Count > 0;
    }

    private void Show(SwatchDetails? overtaking, SwatchDetails mine)
    {
        theirSwatch = overtaking;
        theirs = overtaking is null ? null : SwatchDifferences.Between(overtaking, mine, Words, Yarns);
    }

    private void TakeTheirs()
    {
        if (theirSwatch is not { } kept) return;
        SwatchInput taken = SwatchInput.Of(kept);
        Input.TakeFrom(taken);
        theirs = null;
    }

    /// <summary>Gauge swatches in plain stitches; a kept swatch may name another one.</summary>
    private IEnumerable<StitchTerm> Stitches =>
        PlainStitches.Append(new StitchId(Input.WorkedIn)).Distinct().Select(Vocabulary.Standard.Find).OfType<StitchTerm>();

    private static string FullName(StitchTerm stitch, Terminology terms) => stitch.Names(terms) is { Count: > 1 } names ? names[1] : stitch.Abbreviation(terms);

    private void PickStitch(ChangeEventArgs change) => Input.WorkedIn = change.Value as string ?? "";

    private void PickCounting(ChangeEventArgs change) =>
        Input.Counted = Enum.TryParse(change.Value as string, out Counting counting) ? counting : Counting.Stitches;

    private void PickYarn(ChangeEventArgs change) =>
        Input.YarnId = Guid.TryParse(change.Value as string, out Guid id) ? id : null;

    private string? Centimetres(string written) => Typed.Echo(written, Typed.Centimetres, "cm") is { } taken ? Words["TakenAs", taken].Value : null;

    /// <summary>What is seldom noted is folded away, unless something is in it.</summary>
    private bool HasMore => Input.WidthBeforeCm.Length + Input.HeightBeforeCm.Length + Input.Minutes.Length > 0;

    private string? Wrong(string field) => messages.For(field);

    /// <summary>What is asked about the numbers as they stand; once one is changed, nothing is until it is asked again.</summary>
    private IReadOnlyList<FieldMessage> Asked => doubts.Count > 0 && Input.Read(Words).Value == asked ? doubts : [];

    private string? Doubt(string field) => Asked.For(field);
}

/// <summary>A swatch from the form, to be kept.</summary>
/// <param name="Before">What it was when the correction began; null for a new one.</param>
/// <param name="Photo">What becomes of its photo; null to leave it.</param>
public sealed record SwatchToKeep(SwatchDetails Details, SwatchDetails? Before, PhotoChange? Photo);
