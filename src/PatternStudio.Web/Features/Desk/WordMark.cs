using PatternStudio.Craft.Checking;
using PatternStudio.Studio.Designs;

namespace PatternStudio.Web.Features.Desk;

/// <summary>An underlined stretch of the words, and what is said of it.</summary>
/// <param name="Start">0-based offset.</param>
/// <param name="Length">Characters.</param>
/// <param name="Tone">'error', 'warning' or 'note', for styles.</param>
/// <param name="Grade">The same as a word for people.</param>
/// <param name="Says">The finding's sentence.</param>
/// <param name="Code">The finding's code, which its page is called by.</param>
/// <param name="Fix">The change that mends it; null where the right one is not certain.</param>
public sealed record WordMark(int Start, int Length, string Tone, string Grade, string Says, string Code, MarkFix? Fix)
{
    /// <summary>The mark of a finding.</summary>
    /// <param name="text">The words that it was found in.</param>
    public static WordMark Of(LocatedFinding located, string text, string grade)
    {
        Finding found = located.Finding;
        MarkFix? fix = found.Fix is { } edit ? new MarkFix(edit.Span.Start, text.Substring(edit.Span.Start, edit.Span.Length), edit.NewText) : null;
        return new(found.Span.Start, found.Span.Length, Tones.Of(found.Severity), grade, found.Message, found.Code, fix);
    }
}

/// <summary>A change of the words that is made only where they are still as expected.</summary>
public sealed record MarkFix(int Start, string Expected, string Words);

/// <summary>How severities are called in styles.</summary>
internal static class Tones
{
    public static string Of(Severity severity) => severity switch
    {
        Severity.Error => "error",
        Severity.Warning => "warning",
        _ => "note",
    };
}
