namespace PatternStudio.Craft.Reading.Pasting;

/// <summary>
/// Tidies a pattern pasted from a mail, a page of the web or a printed sheet: what belongs to the paper is dropped, what belongs to the
/// pattern stays. A text that needs nothing is given back as it is.
/// </summary>
public static class PastedText
{
    /// <summary>Tidies a text. Never throws on any text, and says everything that it did.</summary>
    public static TidiedText Tidy(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var repairs = new Repairs();
        string plain = Markup.Strip(text.ReplaceLineEndings("\n"), repairs);
        plain = Characters.Plain(plain, repairs);
        List<string> lines = [.. plain.Split('\n')];
        lines = MailQuotes.Drop(lines, repairs);
        lines = PageFurniture.Drop(lines, repairs);
        lines = Bullets.Drop(lines, repairs);
        lines = LineWraps.Join(lines, repairs);
        lines = WithoutGaps(lines, repairs);
        return new TidiedText(string.Join('\n', lines), repairs.All());
    }

    /// <summary>One empty line parts as well as five; none is needed before the first and after the last line.</summary>
    private static List<string> WithoutGaps(List<string> lines, Repairs repairs)
    {
        var kept = new List<string>();
        int empty = 0;
        foreach (string line in lines)
        {
            if (!string.IsNullOrWhiteSpace(line))
            {
                if (empty > 0 && kept.Count > 0) kept.Add("");
                if (empty > 1) repairs.Note(RepairKind.EmptyLines, empty - 1);
                empty = 0;
                kept.Add(line.TrimEnd());
            }
            else
            {
                empty++;
            }
        }

        return kept;
    }
}
