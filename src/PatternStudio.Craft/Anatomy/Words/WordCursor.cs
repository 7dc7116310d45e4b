using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Anatomy.Words;

/// <summary>Walks the words of a definition; can look ahead and go back.</summary>
internal sealed class WordCursor(IReadOnlyList<MotionWord> words)
{
    private const int MostOfAKind = 12;
    private static readonly MotionWord End = new("", null, WordSort.Mark, default);

    public int At { get; set; }

    public bool AtEnd => At >= words.Count;

    public MotionWord Now => Peek(0);

    public MotionWord Peek(int ahead) => At + ahead < words.Count && At + ahead >= 0 ? words[At + ahead] : End;

    /// <summary>The stretch of text from an earlier word up to the word before the cursor.</summary>
    public TextSpan Since(int start) => start < At ? words[start].Span.Through(words[At - 1].Span) : default;

    /// <summary>Passes over one word where it is among those given.</summary>
    public bool Take(params ReadOnlySpan<string> any)
    {
        if (AtEnd || !any.Contains(Now.Text)) return false;
        At++;
        return true;
    }

    /// <summary>Passes over all words of a row in this order, or over none.</summary>
    public bool TakeAll(params ReadOnlySpan<string> inOrder)
    {
        for (int i = 0; i < inOrder.Length; i++)
            if (Peek(i).Text != inOrder[i])
                return false;
        At += inOrder.Length;
        return true;
    }

    /// <summary>
    /// Passes over as many of these words as follow, up to a number that no sentence has: so a reading that fails in the end has not looked
    /// far, and the whole text takes time in proportion to its length. True where there was one.
    /// </summary>
    public bool TakeAny(params ReadOnlySpan<string> any)
    {
        int start = At;
        while (At - start < MostOfAKind && Take(any)) { }
        return At > start;
    }

    /// <summary>Passes over a number.</summary>
    public int? TakeCount()
    {
        if (!Now.IsCount) return null;
        int? number = Now.Number;
        At++;
        return number;
    }

    /// <summary>Tries a reading; where it fails, the cursor is back where it was.</summary>
    public bool Try(Func<bool> read)
    {
        int start = At;
        if (read()) return true;
        At = start;
        return false;
    }
}
