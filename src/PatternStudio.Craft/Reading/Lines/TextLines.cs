using PatternStudio.Craft.Reading.Tokens;

namespace PatternStudio.Craft.Reading.Lines;

/// <summary>A line of the text, as a stretch of tokens.</summary>
/// <param name="Start">Index of its first token.</param>
/// <param name="End">Index after its last token.</param>
/// <param name="AfterBlank">True where a blank line stands before it, or nothing.</param>
internal readonly record struct TextLine(int Start, int End, bool AfterBlank);

/// <summary>Parts the tokens into lines.</summary>
internal static class TextLines
{
    public static List<TextLine> Of(ReadingContext context)
    {
        Token[] tokens = context.Tokens;
        var lines = new List<TextLine>();
        int start = 0;
        for (int i = 1; i <= tokens.Length; i++)
        {
            if (i < tokens.Length && !tokens[i].StartsLine) continue;
            if (i > start) lines.Add(new TextLine(start, i, IsAfterBlank(context, start)));
            start = i;
        }
        return lines;
    }

    private static bool IsAfterBlank(ReadingContext context, int first)
    {
        if (first == 0) return true;
        string content = context.Source.Content;
        int breaks = 0;
        for (int i = context.Tokens[first].Span.Start - 1; i >= context.Tokens[first - 1].Span.End && breaks < 2; i--)
            if (content[i] == '\n' || (content[i] == '\r' && (i + 1 >= content.Length || content[i + 1] != '\n'))) breaks++;
        return breaks >= 2;
    }
}
