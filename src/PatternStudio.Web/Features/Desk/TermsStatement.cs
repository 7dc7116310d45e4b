using System.Text.RegularExpressions;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Web.Features.Desk;

/// <summary>Writes into a pattern which terms it uses.</summary>
internal static class TermsStatement
{
    /// <summary>Changes the statement that is there, or adds one after the first line.</summary>
    public static TextEdit Write(string text, TermsDecision read, Terminology terms)
    {
        string words = terms == Terminology.Uk ? "UK terms" : "US terms";
        return StatementIn(text, read) is { } span
            ? new TextEdit(span, Regex.Replace(text.Substring(span.Start, span.Length), $@"\b{Abbreviation(Other(terms))}\b", Abbreviation(terms)))
            : new TextEdit(new TextSpan(AfterTitle(text), 0), $"Written in {words}.\n");
    }

    private static TextSpan? StatementIn(string text, TermsDecision read) =>
        read.Origin == TermsOrigin.Stated && !read.Evidence.IsEmpty && read.Evidence[0].End <= text.Length
        && Regex.IsMatch(text.AsSpan(read.Evidence[0].Start, read.Evidence[0].Length), $@"\b{Abbreviation(read.Terminology)}\b")
            ? read.Evidence[0]
            : null;

    private static Terminology Other(Terminology terms) => terms == Terminology.Us ? Terminology.Uk : Terminology.Us;

    private static string Abbreviation(Terminology terms) => terms == Terminology.Us ? "US" : "UK";

    private static int AfterTitle(string text) => text.IndexOf('\n', StringComparison.Ordinal) + 1;
}
