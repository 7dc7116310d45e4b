using System.Buffers;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Tokens;

/// <summary>Parts a text into tokens. Permissive: every text has tokens, in one pass.</summary>
internal sealed class Lexer
{
    /// <summary>So many at least in ordinary text; where a text has shorter ones, more room is taken.</summary>
    private const int CharactersPerToken = 3;

    /// <summary>A cross as a times sign.</summary>
    private static readonly WordForm Times = WordForm.Usual("times", "×");
    private static readonly WordForm And = WordForm.Usual("and", "and");

    private readonly string text;
    private readonly int end;
    private Token[] tokens;
    private int count;
    private readonly WordForms forms = new();
    private readonly Emphasis emphasis;
    private int at;
    private bool startsLine = true;
    private bool glued;

    private Lexer(string text, int end) => (this.text, this.end, emphasis, tokens) = (text, end, new Emphasis(text, end), ArrayPool<Token>.Shared.Rent((end / CharactersPerToken) + 16));

    /// <summary>The tokens of the first <paramref name="length"/> characters.</summary>
    public static Token[] Read(string text, int length)
    {
        var lexer = new Lexer(text, length);
        while (lexer.at < lexer.end) lexer.ReadOne();
        Token[] read = [.. lexer.tokens.AsSpan(0, lexer.count)];
        ArrayPool<Token>.Shared.Return(lexer.tokens, clearArray: true);
        return read;
    }

    private char Now => text[at];

    private char Ahead(int by = 1) => at + by < end ? text[at + by] : '\n';

    private void ReadOne()
    {
        if (Now is '\n' or '\r')
        {
            startsLine = true;
            glued = false;
            at++;
        }
        else if (char.IsWhiteSpace(Now) || char.IsControl(Now) || Now is '\uFEFF' or '\u200B')
        {
            glued = false;
            at++;
        }
        else if (emphasis.LengthAt(at, startsLine) is > 0 and int length) at += length;
        else if (char.IsAsciiDigit(Now)) ReadNumber();
        else if (char.IsLetter(Now) && !IsCross()) ReadWord();
        else ReadMark();
    }

    private void ReadNumber()
    {
        int start = at;
        long value = 0;
        while (at < end && char.IsAsciiDigit(Now)) value = Math.Min(value * 10 + (text[at++] - '0'), ReadingLimits.Number + 1L);
        if (NumberShapes.FractionLength(text, at, end) is > 0 and int length)
        {
            at += length;
            Add(TokenKind.Fraction, start);
        }
        else if (NumberShapes.OrdinalEnding(text, at, end) is > 0 and int ending)
        {
            at += ending;
            Add(TokenKind.Ordinal, start, (int)value);
        }
        else Add(TokenKind.Number, start, (int)value);
    }

    private void ReadWord()
    {
        int start = at;
        while (at < end && IsInWord()) at++;
        int letters = at;
        while (at < end && char.IsAsciiDigit(Now)) at++;
        if (at < end && at > letters && char.IsLetter(Now)) while (at < end && char.IsLetterOrDigit(Now)) at++;
        else at = letters;
        Add(TokenKind.Word, start);
    }

    private bool IsInWord() =>
        char.IsLetter(Now) || (Now is '\'' or '’' && char.IsLetter(Ahead())) || char.GetUnicodeCategory(Now) == System.Globalization.UnicodeCategory.NonSpacingMark;

    /// <summary>'x' as a times sign: 'inc x 6', 'inc x6'.</summary>
    private bool IsCross() => Now is 'x' or 'X' && !char.IsLetter(Ahead()) && (char.IsAsciiDigit(Ahead()) || Ahead() is ' ' || glued && count > 0 && tokens[count - 1].Kind == TokenKind.Number);

    private void ReadMark()
    {
        int start = at;
        char mark = text[at++];
        if (mark == '.' && EndsAbbreviation()) return;
        TokenKind kind = mark == '+' && count > 0 && tokens[count - 1].Kind == TokenKind.Number ? TokenKind.Other : Marks.KindOf(mark);
        if (mark == '*' && count > 0 && IsTimesSign())
        {
            AddForm(TokenKind.Word, Times, start);
            return;
        }
        if (kind == TokenKind.Star) while (at < end && (Now == mark || (Now == ' ' && Ahead() == mark && mark == '*'))) at++;
        if (kind == TokenKind.Hyphen)
        {
            bool run = at < end && Now == '-';
            while (at < end && Now == '-') at++;
            if (run || !glued || at >= end || char.IsWhiteSpace(Now)) kind = TokenKind.Dash;
        }
        Add(kind, start);
    }

    /// <summary>'(2 sc, inc)*6', 'inc * 6': a star between what is repeated and a bare number multiplies.</summary>
    private bool IsTimesSign()
    {
        if (startsLine || tokens[count - 1].Kind is not (TokenKind.Close or TokenKind.Word)) return false;
        int next = at;
        while (next < end && text[next] == ' ') next++;
        int digits = next;
        while (next < end && char.IsAsciiDigit(text[next])) next++;
        if (next == digits || next - digits > 3) return false;
        while (next < end && text[next] == ' ') next++;
        return next >= end || text[next] is '\n' or '\r' or ',' or ';' or '.' or ')' or ']' or '–' or '—' or '-' || (text[next] is '(' or '[' && text.IndexOfAny([',', '/'], next, Math.Min(6, end - next)) < 0);
    }

    /// <summary>The dot of 'sc. in next', 'rep. from *': glued to a short word and followed by more of the same sentence.</summary>
    private bool EndsAbbreviation()
    {
        if (!glued || count == 0 || tokens[count - 1] is not { Kind: TokenKind.Word, Span.Length: <= 5 }) return false;
        if (tokens[count - 1].Word is "dk" or "lt" or "med" or "no" or "approx" or "incl" && at < end && text[at] == ' ') return true;
        int next = at;
        while (next < end && text[next] == ' ') next++;
        return next < end && (char.IsLower(text[next]) || text[next] is ',' or ';' || char.IsAsciiDigit(text[next]) && BeginsWithChain());
    }

    /// <summary>'Ch. 26.', 'Ch. 1, turn': the chain begins its clause, so the dot ends no sentence, as that of 'sc in each ch. 25 sc.' does.</summary>
    private bool BeginsWithChain() =>
        tokens[count - 1].IsWord("ch") && (count == 1 || tokens[count - 1].StartsLine || tokens[count - 2] is { Kind: TokenKind.Dot or TokenKind.Comma or TokenKind.Colon or TokenKind.Semicolon or TokenKind.Open or TokenKind.Star } or { Word: "and" or "then" });

    private void Add(TokenKind kind, int start, int value = 0)
    {
        WordForm form = FormOf(kind, text.AsSpan(start, at - start), value);
        AddForm(form == Times || form == And ? TokenKind.Word : kind, form, start, value);
    }

    private void AddForm(TokenKind kind, WordForm form, int start, int value = 0)
    {
        if (count == tokens.Length) Grow();
        tokens[count++] = new Token(kind, form, value, TextSpan.FromTo(start, at), startsLine, glued);
        startsLine = false;
        glued = true;
    }

    private void Grow()
    {
        Token[] larger = ArrayPool<Token>.Shared.Rent(tokens.Length * 2);
        tokens.CopyTo(larger, 0);
        ArrayPool<Token>.Shared.Return(tokens, clearArray: true);
        tokens = larger;
    }

    private WordForm FormOf(TokenKind kind, ReadOnlySpan<char> raw, int value) => kind switch
    {
        TokenKind.Word => forms.Word(raw),
        TokenKind.Number => WordForm.InDigits,
        TokenKind.Ordinal => value == 1 ? WordForm.First : WordForm.Nth,
        TokenKind.Comma => WordForm.Comma,
        TokenKind.Colon => WordForm.Colon,
        TokenKind.Hyphen => WordForm.Hyphen,
        TokenKind.Other when raw is "×" or "x" or "X" => Times,
        TokenKind.Other when raw is "&" => And,
        TokenKind.Star or TokenKind.Open or TokenKind.Close or TokenKind.Other => forms.Mark(raw),
        _ => WordForm.None,
    };
}
