namespace PatternStudio.Craft.Reading.Tokens;

/// <summary>The words and marks of one text, each kept once.</summary>
internal sealed class WordForms
{
    private readonly Dictionary<string, WordForm> words = new(StringComparer.Ordinal);
    private readonly Dictionary<string, WordForm> marks = new(StringComparer.Ordinal);
    private readonly Dictionary<string, WordForm>.AlternateLookup<ReadOnlySpan<char>> wordsBySpan;
    private readonly Dictionary<string, WordForm>.AlternateLookup<ReadOnlySpan<char>> marksBySpan;

    public WordForms() => (wordsBySpan, marksBySpan) = (words.GetAlternateLookup<ReadOnlySpan<char>>(), marks.GetAlternateLookup<ReadOnlySpan<char>>());

    /// <summary>A word as the text spells it.</summary>
    public WordForm Word(ReadOnlySpan<char> raw) =>
        wordsBySpan.TryGetValue(raw, out WordForm? known) ? known : wordsBySpan[raw] = WordForm.Spelled(raw.ToString());

    /// <summary>A mark that goes by what it is; blanks inside ('* *') do not matter.</summary>
    public WordForm Mark(ReadOnlySpan<char> raw) =>
        marksBySpan.TryGetValue(raw, out WordForm? known) ? known : marksBySpan[raw] = WordForm.Mark(raw.ToString().Replace(" ", "", StringComparison.Ordinal));
}
