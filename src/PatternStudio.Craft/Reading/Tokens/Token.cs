using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Tokens;

/// <summary>What a token is.</summary>
internal enum TokenKind : byte
{
    End,
    Word,

    /// <summary>A whole number in digits.</summary>
    Number,

    /// <summary>A number that is not whole: 2.5, 11½, 1/4.</summary>
    Fraction,

    /// <summary>'2nd', '3d': digits with an ordinal ending.</summary>
    Ordinal,

    /// <summary>A repeat mark: one, two or more stars, a dagger, a plus, a cross.</summary>
    Star,

    Open,
    Close,
    Comma,
    Semicolon,
    Colon,
    Dot,

    /// <summary>A hyphen inside a word: 'ch-3', 'V-st'.</summary>
    Hyphen,

    /// <summary>A dash between words: '—', ' - '.</summary>
    Dash,

    /// <summary>An equals sign: 'cl = 3 dc …'; old handbooks part steps with it.</summary>
    Equal,

    Slash,
    Quote,
    Other,
}

/// <summary>One word, number or mark of the text.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Form">What the reader knows of the word or mark.</param>
/// <param name="Value">For numbers and ordinals; capped just above <see cref="ReadingLimits.Number"/>.</param>
/// <param name="Span">Where it stands.</param>
/// <param name="StartsLine">True for the first token of a line.</param>
/// <param name="Glued">True where no blank stands before it.</param>
internal readonly record struct Token(TokenKind Kind, WordForm Form, int Value, TextSpan Span, bool StartsLine, bool Glued)
{
    /// <summary>For words: lower case, synonyms replaced. For others: the mark itself.</summary>
    public string Word => Form.Word;

    /// <summary>True for the word (as the reader calls it).</summary>
    public bool IsWord(string word) => Kind == TokenKind.Word && Word == word;
}
