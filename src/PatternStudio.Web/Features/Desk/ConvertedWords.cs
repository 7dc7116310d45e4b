using PatternStudio.Craft.Text;

namespace PatternStudio.Web.Features.Desk;

/// <summary>A stretch of a text that was turned into other terms.</summary>
/// <param name="Changed">True for words that are new.</param>
public readonly record struct ConvertedWords(string Words, bool Changed)
{
    /// <summary>The whole text with its changes made, in stretches.</summary>
    /// <param name="edits">In the order of the text, none touching another.</param>
    public static IReadOnlyList<ConvertedWords> Of(string text, IReadOnlyList<TextEdit> edits)
    {
        var all = new List<ConvertedWords>();
        int at = 0;
        foreach (TextEdit edit in edits)
        {
            all.Add(new ConvertedWords(text[at..edit.Span.Start], false));
            all.Add(new ConvertedWords(edit.NewText, true));
            at = edit.Span.End;
        }

        all.Add(new ConvertedWords(text[at..], false));
        return all;
    }
}
