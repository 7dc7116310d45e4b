using System.Text;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Writing;

/// <summary>Makes many changes to a text at once.</summary>
public static class TextEdits
{
    /// <summary>The text with all changes made.</summary>
    /// <param name="edits">In the order of the text, none touching another.</param>
    public static string Apply(string content, IEnumerable<TextEdit> edits)
    {
        var changed = new StringBuilder(content.Length + 16);
        int at = 0;
        foreach (TextEdit edit in edits)
        {
            changed.Append(content, at, edit.Span.Start - at).Append(edit.NewText);
            at = edit.Span.End;
        }

        return changed.Append(content, at, content.Length - at).ToString();
    }
}
