using PatternStudio.Craft.Checking;

namespace PatternStudio.Craft.Tests.Checking;

/// <summary>Small patterns of our own invention, and what a check says of them.</summary>
internal static class Texts
{
    /// <summary>Ten sc to work into.</summary>
    public const string TenSc = "Ch 11.\nRow 1: Sc in 2nd ch from hook and in each ch across. (10 sc)\n";

    /// <summary>The codes of a text's findings, in the order of the text.</summary>
    public static string[] Codes(string text) => [.. PatternCheck.Check(text).Findings.Select(finding => finding.Code)];

    /// <summary>The only finding of a text.</summary>
    public static Finding Only(string text) => Assert.Single(PatternCheck.Check(text).Findings);

    /// <summary>The words that the only finding stands at.</summary>
    public static string Words(string text) => text.Substring(Only(text).Span.Start, Only(text).Span.Length);

    /// <summary>The text with the fix of its only finding made.</summary>
    public static string Mended(string text) => Only(text).Fix is { } fix ? fix.ApplyTo(text) : "no fix";
}
