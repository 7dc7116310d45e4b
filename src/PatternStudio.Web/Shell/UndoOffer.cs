using MudBlazor;

namespace PatternStudio.Web.Shell;

/// <summary>Whoever removes something is not asked whether she means it, but can have it back.</summary>
internal static class UndoOffer
{
    private const int MillisecondsToUndo = 10_000;

    /// <summary>Says what was done, and for ten seconds how to undo it.</summary>
    /// <param name="done">What was done, in a sentence.</param>
    /// <param name="undo">The word on the button.</param>
    public static void OfferUndo(this ISnackbar snackbar, string done, string undo, Func<Task> undone) =>
        snackbar.Add(done, MudBlazor.Severity.Normal, bar =>
        {
            (bar.Action, bar.VisibleStateDuration) = (undo, MillisecondsToUndo);
            bar.OnClick = _ => undone();
        });
}
