using PatternStudio.Craft.Reading;
using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Writing;

/// <summary>
/// Turns a pattern from US terms into UK terms and back. Only words that the two call differently change: stitches, skip and miss, gauge and
/// tension, and the statement of the terms. All words change in one pass, for 'dc' to 'tr' after 'tr' to 'dtr' would change twice.
/// </summary>
public static class TermsConverter
{
    /// <summary>The pattern's text in a terminology; the text as it is where it is in that terminology already.</summary>
    public static string Convert(Pattern pattern, Terminology to)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        EquatableArray<TextEdit> edits = Edits(pattern, to);
        return edits.IsEmpty ? pattern.Source.Content : TextEdits.Apply(pattern.Source.Content, edits);
    }

    /// <summary>A text in a terminology.</summary>
    /// <param name="from">The terms it is in; found from the text where null.</param>
    public static string Convert(string text, Terminology to, Terminology? from = null) => Convert(PatternReader.Read(text, from), to);

    /// <summary>The changes, in the order of the text, none touching another.</summary>
    public static EquatableArray<TextEdit> Edits(Pattern pattern, Terminology to)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        Terminology from = pattern.Terms.Terminology;
        if (from == to) return [];
        string text = pattern.Source.Content;
        Token[] tokens = Lexer.Read(text, Math.Min(text.Length, ReadingLimits.Characters));
        var stitches = new StitchRenamer(pattern, tokens, to);
        var words = new TermsWords(pattern.Source, tokens, InstructionSpans.Of(pattern), to);
        var edits = new List<TextEdit>();
        for (int at = 0; at < tokens.Length;)
        {
            if ((stitches.At(at) ?? words.At(at)) is not { } change) at++;
            else
            {
                if (change.Edit is { } edit) edits.Add(edit);
                at = change.After;
            }
        }

        return edits.ToEquatableArray();
    }
}

/// <summary>What becomes of the words at a place.</summary>
/// <param name="Edit">The change; null where they stay as they are.</param>
/// <param name="After">Index of the token after them.</param>
internal readonly record struct TermsChange(TextEdit? Edit, int After);
