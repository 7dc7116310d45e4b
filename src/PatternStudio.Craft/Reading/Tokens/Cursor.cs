using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Tokens;

/// <summary>A place in a stretch of tokens: what stands here, and what can be taken from here on.</summary>
internal sealed class Cursor
{
    private static readonly Token Nothing = new(TokenKind.End, WordForm.None, 0, default, false, false);

    private readonly Token[] tokens;
    private int at;

    /// <summary>The marks of the word here: looked at far more often than the cursor moves.</summary>
    private ulong marks;

    public Cursor(ReadingContext context, int start, int end, int depth = 0)
    {
        (Context, tokens, Start, End, Depth) = (context, context.Tokens, start, end, depth);
        At = start;
    }

    public ReadingContext Context { get; }

    public int Start { get; }

    public int End { get; }

    /// <summary>How many brackets are open around this stretch.</summary>
    public int Depth { get; }

    public int At
    {
        get => at;
        set
        {
            at = value;
            marks = Now.Form.Marks;
        }
    }

    public bool AtEnd => At >= End;

    public ref readonly Token Now => ref Ahead(0);

    public TokenKind Kind => Now.Kind;

    /// <summary>The token so many further on, or back; nothing past the stretch's end.</summary>
    public ref readonly Token Ahead(int by)
    {
        int at = At + by;
        if (at < End && at >= 0) return ref tokens[at];
        return ref Nothing;
    }

    private ReadOnlySpan<Token> Tokens => tokens.AsSpan(0, End);

    /// <summary>True where the phrase stands here.</summary>
    public bool Is(Phrase phrase) => (phrase.Beginnings & marks) != 0 && phrase.Match(Tokens, At) >= 0;

    /// <summary>True where one of the phrases stands here.</summary>
    public bool IsAny(Phrase[] phrases)
    {
        foreach (Phrase phrase in phrases)
            if (Is(phrase)) return true;
        return false;
    }

    /// <summary>Takes the phrase where it stands here.</summary>
    public bool Take(Phrase phrase)
    {
        if ((phrase.Beginnings & marks) == 0) return false;
        int after = phrase.Match(Tokens, At);
        if (after < 0) return false;
        At = after;
        return true;
    }

    public bool Take(TokenKind kind)
    {
        if (Kind != kind) return false;
        At++;
        return true;
    }

    /// <summary>Takes a word, hyphens before it looked through.</summary>
    public bool TakeWord(string word)
    {
        int at = At;
        while (Kind == TokenKind.Hyphen) At++;
        if (Now.IsWord(word))
        {
            At++;
            return true;
        }
        At = at;
        return false;
    }

    /// <summary>Passes over commas, semicolons, full stops, dashes and colons.</summary>
    public void SkipSeparators()
    {
        while (IsSeparator(Kind)) At++;
    }

    /// <summary>True where, separators passed over, a bracket opens next.</summary>
    public bool NextOpens()
    {
        int by = 0;
        while (IsSeparator(Ahead(by).Kind)) by++;
        return Ahead(by).Kind == TokenKind.Open;
    }

    public static bool IsSeparator(TokenKind kind) =>
        kind is TokenKind.Comma or TokenKind.Semicolon or TokenKind.Dot or TokenKind.Dash or TokenKind.Colon or TokenKind.Quote or TokenKind.Equal;

    /// <summary>The index just past the bracket pair that opens here; -1 where its partner is not in this stretch.</summary>
    public int Partner()
    {
        int partner = Kind == TokenKind.Open ? Context.Partners[At] : -1;
        return partner >= 0 && partner < End ? partner : -1;
    }

    /// <summary>The stretch between the brackets that open here.</summary>
    public Cursor Inside(int partner) => new(Context, At + 1, partner, Depth + 1);

    /// <summary>The span from a token to the one before the present place.</summary>
    public TextSpan SpanFrom(int from) => Span(from, At);

    /// <summary>The span of the tokens from <paramref name="from"/> up to, not including, <paramref name="to"/>.</summary>
    public TextSpan Span(int from, int to)
    {
        if (to > from) return TextSpan.FromTo(Context.Tokens[from].Span.Start, Context.Tokens[to - 1].Span.End);
        int place = from < Context.Tokens.Length ? Context.Tokens[from].Span.Start : Context.Source.Content.Length;
        return new TextSpan(place, 0);
    }

    public string Slice(int from, int to) => Context.Source.Slice(Span(from, to));

    /// <summary>The raw word here, as written.</summary>
    public string Raw => AtEnd ? "" : Context.Source.Slice(Now.Span);

    /// <summary>Takes the longest stitch name that stands here.</summary>
    public StitchId? TakeStitch() => Context.Stitches.Read(this, static cursor =>
    {
        (StitchId? stitch, cursor.At) = StitchNames.Longest(cursor);
        return stitch;
    });
}
