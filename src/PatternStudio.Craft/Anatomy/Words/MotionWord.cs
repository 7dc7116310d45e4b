using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Anatomy.Words;

/// <summary>A word, number or mark of a stitch definition.</summary>
/// <param name="Text">In lower case; 'lps' and 'loops' stay as written.</param>
/// <param name="Number">The number that digits ('7'), a word ('seven') or an ordinal ('2nd') names; null for others.</param>
/// <param name="Sort">What sort of word.</param>
internal readonly record struct MotionWord(string Text, int? Number, WordSort Sort, TextSpan Span)
{
    public bool Is(string text) => Text == text;

    public bool IsCount => Sort == WordSort.Word && Number is not null;

    public bool EndsSentence => Sort == WordSort.Mark && Text is "." or ";" or ":";
}

internal enum WordSort { Word, Ordinal, Fraction, Mark }
