using PatternStudio.Studio.Designs;

namespace PatternStudio.Web.Features.Desk;

/// <summary>Which of the words that were not saved to go on with.</summary>
/// <param name="TakenUp">The latest.</param>
/// <param name="Others">Those of other desks that say something else: to be looked at, never dropped unseen.</param>
public sealed record DraftChoice(DraftWords TakenUp, IReadOnlyList<DraftWords> Others)
{
    /// <summary>
    /// Chooses among what this browser and the studio have kept; null where nothing is unsaved. Of one desk the browser's words are the latest, whatever the
    /// clocks say: it keeps each letter at once, and the studio hears of it later.
    /// </summary>
    /// <param name="saved">The saved words.</param>
    public static DraftChoice? Of(IEnumerable<DraftWords> browser, IEnumerable<DraftWords> studio, string saved)
    {
        DraftWords[] all =
        [
            .. browser.Concat(studio).DistinctBy(draft => draft.Writer)
                .Where(draft => draft.Text != saved).OrderByDescending(draft => draft.At).DistinctBy(draft => draft.Text),
        ];
        return all.Length == 0 ? null : new(all[0], all[1..]);
    }
}
