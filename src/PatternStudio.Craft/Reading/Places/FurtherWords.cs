using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Places;

/// <summary>Takes words that narrow a place in ways the tree does not model: 'of small motif', 'to right of corner', 'where previous scallop is joined'.</summary>
internal static class FurtherWords
{
    private static readonly PhraseSet Beginnings = new(
    [
        new("of"), new("on"), new("to|until # st before|after"), new("to|until the? next|first|last? marker|marked"), new("at"), new("to the? right|left"), new("before|after|near|beside|beneath|below|above|where|when"), new("next to"), new("from the? top|end|edge|corner|center|first|last|lower|other"),
        new("in the? next|same|prev|first|last|center|corner|row|rnd|back|front|middle|joining|join"), new("over the? next|prev|end|st|same|dc|sc|treble|double"), new("behind|under|between"), new("already|just"), new("and working"), new("toward|towards"),
        new("as beg"), new("as in"), new("inserting"), new("with cl|cluster|the|first|last|joining|prev"), new("across the? bottom|lower|foundation|beg"), new("entire|whole|lower|upper|bottom|outer|inner|both|vamp|front"), new("in and"), new("about"), new("on each"), new("remainder|rest of"), new("on either"), new("in ch|st|sp|sc|dc|tr|double|treble"), new("from"), new("opposite"), new("with a|ch"), new("in prev"),
    ]);

    private const int MostWords = 18;

    /// <summary>The words up to the next comma; null where none of that sort stand here.</summary>
    public static TextSpan? Take(Cursor cursor)
    {
        int from = cursor.At;
        if (!Beginnings.IsAt(cursor)) return null;
        while (!cursor.AtEnd && cursor.At - from < MostWords && cursor.Kind is TokenKind.Word or TokenKind.Number or TokenKind.Ordinal or TokenKind.Hyphen or TokenKind.Quote or TokenKind.Fraction or TokenKind.Other && !StartsStep(cursor, from)) cursor.At++;
        return cursor.At > from ? cursor.SpanFrom(from) : null;
    }

    /// <summary>'… and turn', '… and work 3 dc' go on with the row.</summary>
    private static bool StartsStep(Cursor cursor, int from) =>
        cursor.At > from && (cursor.Now.Word is "turn" or "rep" or "skip" or "until" or "for" || cursor.Now.Word is "and" && cursor.Ahead(1).Kind == TokenKind.Number && cursor.Ahead(-1).Word is "end" or "side" || (cursor.Now.Word is "and" or "then" && cursor.Ahead(1).Word is "work" or "make" or "ch" or "turn" or "join" or "rep" or "fasten" or "cut"));
}
