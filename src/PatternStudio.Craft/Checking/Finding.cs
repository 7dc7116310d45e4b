using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Checking;

/// <summary>How much a finding matters.</summary>
public enum Severity { Error, Warning, Note }

/// <summary>Something a maker or the designer should know, at its cause's place.</summary>
/// <param name="Code">A stable code of the catalogue, such as <c>count-differs</c>.</param>
/// <param name="Severity">Error: the pattern can't be worked as written, or a number is wrong.</param>
/// <param name="Span">The smallest stretch of text that still shows the fault.</param>
/// <param name="Message">A sentence that a maker understands, and that stands alone.</param>
/// <param name="Fix">The change that mends it, where that is certain enough.</param>
public sealed record Finding(string Code, Severity Severity, TextSpan Span, string Message, TextEdit? Fix = null)
{
    /// <summary>The size it was found in; empty where it holds for all.</summary>
    public string Size { get; init; } = "";
}
