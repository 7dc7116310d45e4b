namespace PatternStudio.Craft.Text;

/// <summary>A stretch of a pattern's text: where it starts (0-based, in UTF-16 units) and how long it is.</summary>
/// <param name="Start">0-based offset of the first character.</param>
/// <param name="Length">Number of characters; 0 marks a place between two characters.</param>
public readonly record struct TextSpan(int Start, int Length)
{
    /// <summary>The offset just after the last character.</summary>
    public int End => Start + Length;

    /// <summary>The stretch from <paramref name="start"/> up to, not including, <paramref name="end"/>.</summary>
    public static TextSpan FromTo(int start, int end) => new(start, Math.Max(0, end - start));

    /// <summary>The smallest stretch that holds both.</summary>
    public TextSpan Through(TextSpan other) =>
        FromTo(Math.Min(Start, other.Start), Math.Max(End, other.End));

    /// <summary>True where <paramref name="other"/> lies wholly inside this stretch.</summary>
    public bool Contains(TextSpan other) => Start <= other.Start && other.End <= End;
}
