using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Checking;

/// <summary>How much a finding matters.</summary>
public enum Severity
{
    /// <summary>The pattern can't be worked as written, or a number is wrong.</summary>
    Error,

    /// <summary>A maker may stumble, or a part could not be checked.</summary>
    Warning,

    /// <summary>Nothing is wrong with the text: something about the check itself.</summary>
    Note,
}

/// <summary>Something a maker or the designer should know, at its cause's place.</summary>
/// <param name="Code">A stable code of the catalogue, such as <c>count-differs</c>.</param>
/// <param name="Severity">How much it matters.</param>
/// <param name="Span">The smallest stretch of text that still shows the fault.</param>
/// <param name="Message">A sentence that a maker understands, and that stands alone.</param>
/// <param name="Fix">The change that mends it: with it made, this finding is gone and no other has come. Null where the right change is not certain.</param>
public sealed record Finding(string Code, Severity Severity, TextSpan Span, string Message, TextEdit? Fix = null)
{
    /// <summary>The size it was found in; empty where it holds for all.</summary>
    public string Size { get; init; } = "";

    /// <summary>A finding of a code, as severe as the catalogue says.</summary>
    internal static Finding Of(string code, TextSpan span, string message, TextEdit? fix = null) =>
        new(code, FindingCodes.SeverityOf(code), span, message, fix);
}
