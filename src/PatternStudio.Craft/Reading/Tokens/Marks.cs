namespace PatternStudio.Craft.Reading.Tokens;

/// <summary>What the punctuation of a pattern is.</summary>
internal static class Marks
{
    public static TokenKind KindOf(char mark) => mark switch
    {
        '*' or '†' or '‡' or '+' or '✕' or '☆' or '★' or '✻' or '✱' or '∗' => TokenKind.Star,
        '(' or '[' or '{' or '<' => TokenKind.Open,
        ')' or ']' or '}' or '>' => TokenKind.Close,
        ',' or '،' => TokenKind.Comma,
        ';' => TokenKind.Semicolon,
        '=' => TokenKind.Equal,
        ':' => TokenKind.Colon,
        '.' or '!' or '?' or '…' => TokenKind.Dot,
        '-' or '‐' or '‑' => TokenKind.Hyphen,
        '|' or '–' or '—' or '−' or '―' or '‒' => TokenKind.Dash,
        '/' => TokenKind.Slash,
        '"' or '“' or '”' or '″' or '\'' or '‘' or '’' or '′' => TokenKind.Quote,
        _ => TokenKind.Other,
    };

    /// <summary>True where the closing bracket fits the opening one.</summary>
    public static bool Pair(string open, string close) =>
        (open, close) is ("(", ")") or ("[", "]") or ("{", "}") or ("<", ">");
}
