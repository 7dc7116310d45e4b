using PatternStudio.Studio.Designs;

namespace PatternStudio.Web.Features.Desk;

/// <summary>An underlined stretch of the words.</summary>
/// <param name="Start">0-based offset.</param>
/// <param name="Length">Characters.</param>
/// <param name="Tone">'error', 'warning' or 'note'.</param>
/// <param name="Says">The finding's sentence.</param>
public sealed record WordMark(int Start, int Length, string Tone, string Says)
{
    /// <summary>The mark of a finding.</summary>
    public static WordMark Of(LocatedFinding found) =>
        new(found.Finding.Span.Start, found.Finding.Span.Length, Tones.Of(found.Finding.Severity), found.Finding.Message);
}

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
