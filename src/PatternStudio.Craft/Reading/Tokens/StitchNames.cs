using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Reading.Tokens;

/// <summary>
/// Finds stitch names in the tokens of one text: the longest that fits, the text's own names before the trade's. Every construct asks for the stitch that
/// stands here, so what was found is kept.
/// </summary>
internal sealed class StitchNames(Token[] tokens, NameTree own, NameTree known)
{
    private const int MostTokens = 12;
    private readonly (StitchId? Stitch, int After, int Since)[] found = new (StitchId?, int, int)[tokens.Length];
    private int age = 1;

    /// <summary>Forgets what was found: the text has named another stitch.</summary>
    public void Forget() => age++;

    /// <summary>The stitch whose longest name stands at a token, and the token after it; <paramref name="end"/> bounds the name.</summary>
    public (StitchId? Stitch, int After) At(int at, int end)
    {
        if (at >= end) return (null, at);
        ref (StitchId? Stitch, int After, int Since) kept = ref found[at];
        if (kept.Since != age)
        {
            (StitchId? stitch, int after) = Longest(at, tokens.Length);
            kept = (stitch, after, age);
        }
        return kept.After <= end ? (kept.Stitch, kept.After) : Longest(at, end);
    }

    private (StitchId? Stitch, int After) Longest(int at, int end)
    {
        (StitchId? Stitch, int After) ofText = Own(at, end), ofTrade = Longest(at, end, known);
        return ofText.Stitch is not null && ofText.After >= ofTrade.After ? ofText : ofTrade;
    }

    /// <summary>The text's own stitch whose longest name stands at a token, and the token after it.</summary>
    public (StitchId? Stitch, int After) Own(int at, int end) => Longest(at, end, own);

    private (StitchId? Stitch, int After) Longest(int at, int end, NameTree names)
    {
        StitchId? longest = null;
        int after = at;
        NameTree? node = names;
        for (int i = at; i < Math.Min(end, at + MostTokens); i++)
        {
            ref readonly Token token = ref tokens[i];
            if (i > at && token.Kind is TokenKind.Hyphen or TokenKind.Slash) continue;
            node = node.Next(Text(token));
            if (node is null) break;
            if (node.Stitch is null) continue;
            longest = node.Stitch;
            after = i + 1;
        }
        return (longest, after);
    }

    private static string Text(in Token token) => token.Kind switch
    {
        TokenKind.Word => token.Word,
        TokenKind.Number => token.Value.ToString(System.Globalization.CultureInfo.InvariantCulture),
        _ => "",
    };
}
