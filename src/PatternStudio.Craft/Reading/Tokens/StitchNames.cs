using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Reading.Tokens;

/// <summary>Finds stitch names in tokens: the longest that fits.</summary>
internal static class StitchNames
{
    /// <summary>The stitch whose longest name stands at the cursor, and the token after it.</summary>
    public static (StitchId? Stitch, int After) Longest(Cursor cursor, NameTree names)
    {
        StitchId? found = null;
        int after = cursor.At;
        NameTree? node = names;
        for (int by = 0; by < 12; by++)
        {
            Token token = cursor.Ahead(by);
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
