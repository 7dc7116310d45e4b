using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Reading.Tokens;

/// <summary>Finds stitch names in tokens: the longest that fits.</summary>
internal static class StitchNames
{
    private const int MostTokens = 12;

    /// <summary>The stitch whose longest name stands at the cursor, and the token after it; the text's own names go before the trade's.</summary>
    public static (StitchId? Stitch, int After) Longest(Cursor cursor)
    {
        (StitchId? own, int ownEnd) = Longest(cursor, cursor.Context.OwnNames);
        (StitchId? known, int knownEnd) = Longest(cursor, Vocabulary.Standard.Names(cursor.Context.Terminology));
        return own is not null && ownEnd >= knownEnd ? (own, ownEnd) : (known, knownEnd);
    }

    /// <summary>The same among some names.</summary>
    public static (StitchId? Stitch, int After) Longest(Cursor cursor, NameTree names)
    {
        StitchId? found = null;
        int after = cursor.At;
        NameTree? node = names;
        for (int by = 0; by < MostTokens; by++)
        {
            ref readonly Token token = ref cursor.Ahead(by);
            if (by > 0 && token.Kind is TokenKind.Hyphen or TokenKind.Slash) continue;
            node = node.Next(Text(token));
            if (node is null) break;
            if (node.Stitch is null) continue;
            found = node.Stitch;
            after = cursor.At + by + 1;
        }
        return (found, after);
    }

    private static string Text(in Token token) => token.Kind switch
    {
        TokenKind.Word => token.Word,
        TokenKind.Number => token.Value.ToString(System.Globalization.CultureInfo.InvariantCulture),
        _ => "",
    };
}
