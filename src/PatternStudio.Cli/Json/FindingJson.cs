using System.Text.Json.Serialization;
using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Text;

namespace PatternStudio.Cli.Json;

/// <summary>A finding and where it stands.</summary>
/// <param name="Severity">'error', 'warning' or 'note'.</param>
/// <param name="Line">1-based.</param>
/// <param name="Column">1-based, in UTF-16 units.</param>
/// <param name="Length">Length of the spot.</param>
/// <param name="Fix">The change that mends it; null where none is certain.</param>
internal sealed record FindingJson(string Code, string Severity, int Line, int Column, int Length, string Message, FixJson? Fix)
{
    /// <summary>The size it was found in; absent where it holds for all.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Size { get; init; }

    public static FindingJson From(Finding finding, SourceText source)
    {
        LinePosition place = source.Locate(finding.Span.Start);
        return new FindingJson(
            finding.Code, SeverityName(finding.Severity), place.Line, place.Column, finding.Span.Length, finding.Message, FixJson.From(finding.Fix, source))
        {
            Size = finding.Size.Length > 0 ? finding.Size : null,
        };
    }

    public static string SeverityName(Severity severity) => severity switch
    {
        Craft.Checking.Severity.Error => "error",
        Craft.Checking.Severity.Warning => "warning",
        _ => "note",
    };
}

/// <summary>A change to the text: so many characters at a place become the new text.</summary>
internal sealed record FixJson(int Line, int Column, int Length, string NewText)
{
    public static FixJson? From(TextEdit? edit, SourceText source)
    {
        if (edit is not { } change) return null;
        LinePosition place = source.Locate(change.Span.Start);
        return new FixJson(place.Line, place.Column, change.Span.Length, change.NewText);
    }
}
