using Microsoft.AspNetCore.Components;
using PatternStudio.Studio;
using PatternStudio.Studio.Designs;

namespace PatternStudio.Web.Features.Desk;

/// <summary>Words that are not saved: kept in the browser at once, and by the studio a second later, so that they can be gone on with anywhere.</summary>
public sealed partial class DeskPage
{
    private static readonly TimeSpan KeepAfter = TimeSpan.FromSeconds(1);
    private readonly Guid writer = Guid.NewGuid();
    private readonly SemaphoreSlim keeping = new(1);
    private IReadOnlyList<DraftWords> kept = [];
    private DraftChoice? draft;
    private DraftWords? grownOutOf;
    private string? keptText;
    private bool keepsSoon;

    [Inject]
    private Drafts Drafts { get; set; } = null!;

    private void FindDraft(DraftChoice found)
    {
        draft = found;
        GrowOutOf(found.TakenUp);
    }

    private void GrowOutOf(DraftWords words)
    {
        basedOn = Math.Min(basedOn, words.BasedOn);
        grownOutOf = kept.FirstOrDefault(one => one.Writer == words.Writer);
    }

    private string SayDraft(DraftWords words) => words.Place.Length == 0
        ? Words["DraftBack", Moments.Say(words.At)]
        : Words["DraftBackFrom", Moments.Say(words.At), PlaceOf(words)];

    private string SayOther(DraftWords words) =>
        Words["DraftOther", Moments.Say(words.At), words.Place.Length == 0 ? "" : Words["OnPlace", PlaceOf(words)].Value];

    private string PlaceOf(DraftWords words) => words.Place switch
    {
        "phone" => Words["DraftFromPhone"],
        "tablet" => Words["DraftFromTablet"],
        _ => Words["DraftFromComputer"],
    };

    /// <summary>The words taken up so far become one of the others.</summary>
    private async Task TakeUpInsteadAsync(DraftWords other)
    {
        await editor!.FlushAsync();
        var put = new DraftWords(writer, text, basedOn, DateTimeOffset.UtcNow, "");
        draft = new DraftChoice(other, [.. draft!.Others.Where(one => one != other), put]);
        GrowOutOf(other);
        await editor.TakeUpAsync(other);
    }

    private async Task BackToSavedAsync()
    {
        draft = null;
        basedOn = version;
        await editor!.ReplaceAllAsync(savedText);
        await editor.GiveUpAsync();
    }

    /// <summary>Keeps a draft before long; what is typed until then goes into the same one.</summary>
    private void KeepDraftSoon()
    {
        if (keepsSoon || (text == savedText && keptText is null)) return;
        keepsSoon = true;
        _ = KeepAfterAWhileAsync();

        async Task KeepAfterAWhileAsync()
        {
            await Task.Delay(KeepAfter);
            keepsSoon = false;
            await KeepDraftAsync();
        }
    }

    /// <summary>Brings what the studio keeps in line with the words. One at a time: of two that overtake each other the older would stay.</summary>
    private async Task KeepDraftAsync()
    {
        await keeping.WaitAsync();
        try
        {
            string words = text;
            if (words == keptText) return;
            if (words == savedText)
            {
                await Drafts.ForgetAsync(caller, Id, writer, grownOutOf);
                keptText = null;
                return;
            }

            Outcome outcome = await Drafts.KeepAsync(caller, Id, new DraftWords(writer, words, basedOn, default, editor?.Place ?? ""), grownOutOf);
            if (!outcome.Succeeded) return; // the browser has it, and a save will say what is wrong
            (keptText, grownOutOf) = (words, null);
        }
        catch (Exception fault) when (fault is not OperationCanceledException)
        {
            Log.LogWarning(fault, "A draft of design {Design} could not be kept", Id);
        }
        finally
        {
            keeping.Release();
        }
    }
}
