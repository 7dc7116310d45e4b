using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Reading.Tokens;

/// <summary>A word as the reader knows it, looked up once for each way a text spells it; or a mark.</summary>
internal sealed class WordForm
{
    /// <summary>What stands past the end of a stretch, and marks without a name.</summary>
    public static readonly WordForm None = new("", WordMarks.Anything);

    public static readonly WordForm Comma = new("", WordMarks.Anything | WordMarks.Comma);
    public static readonly WordForm Colon = new("", WordMarks.Anything | WordMarks.Colon);
    public static readonly WordForm Hyphen = new("", WordMarks.All);
    public static readonly WordForm InDigits = new("", WordMarks.Anything | WordMarks.Number);
    public static readonly WordForm Nth = new("", WordMarks.Anything | WordMarks.Ordinal);

    /// <summary>'1st' is 'first'.</summary>
    public static readonly WordForm First = new("", WordMarks.Anything | WordMarks.Ordinal | WordMarks.Of("first"));

    private WordForm(string word, ulong marks) => (Word, Marks) = (word, marks);

    /// <summary>The word that the reader goes by: lower case, synonyms replaced; empty for marks without a name.</summary>
    public string Word { get; }

    /// <summary>The word in lower case, otherwise as the text spells it; empty for marks.</summary>
    public string Written { get; private init; } = "";

    /// <summary>See <see cref="WordMarks"/>.</summary>
    public ulong Marks { get; }

    /// <summary>The value of a number word.</summary>
    public int? Number { get; private init; }

    /// <summary>The value of an ordinal word.</summary>
    public int? Ordinal { get; private init; }

    /// <summary>The usual name of a group or part of the work (<see cref="Synonyms.Group"/>).</summary>
    public string? Group { get; private init; }

    /// <summary>A word as a text spells it.</summary>
    public static WordForm Spelled(string raw)
    {
        string written = raw.ToLowerInvariant();
        return Usual(Synonyms.Usual(written.Replace('’', '\'')), written);
    }

    /// <summary>A word that the reader goes by.</summary>
    public static WordForm Usual(string word, string written) => new(word, WordMarks.Anything | WordMarks.Of(word) | (word == "an" ? WordMarks.Of("a") : 0))
    {
        Written = written,
        Number = Synonyms.Number(word),
        Ordinal = Synonyms.Ordinal(word),
        Group = Synonyms.Group(word),
    };

    /// <summary>A star, a bracket or another mark that goes by what it is.</summary>
    public static WordForm Mark(string mark) => new(mark, WordMarks.Anything);
}
