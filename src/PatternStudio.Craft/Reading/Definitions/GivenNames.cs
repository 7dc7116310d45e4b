using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Reading.Definitions;

/// <summary>Takes names that a row gives on the way: '… (a rice st)', '(double knot st: draw up loop …)', and enters them into the text's own vocabulary.</summary>
internal static class GivenNames
{
    private const int MostWords = 4;

    /// <summary>The stitch that a bracket's words name, new or known; null where they are no name. Takes the words.</summary>
    /// <param name="inside">The stretch between the brackets.</param>
    /// <param name="ofGroup">True where the name is given to several steps.</param>
    public static StitchId? Take(Cursor inside, bool ofGroup)
    {
        int from = inside.At;
        if (inside.Now is { Word: "a" or "an" or "one" or "the" }) inside.At++;
        int name = inside.At;
        while (!inside.AtEnd && inside.At - name < MostWords && inside.Kind is TokenKind.Word or TokenKind.Hyphen && !inside.Now.IsWord("make")) inside.At++;
        int end = inside.At;
        inside.TakeWord("make");
        if (end == name || !(inside.AtEnd || inside.Kind == TokenKind.Colon) || !IsUsedLater(inside, name, end))
        {
            inside.At = from;
            return null;
        }
        return Enter(inside.Context, inside.Slice(name, end), ofGroup);
    }

    private static StitchId Enter(ReadingContext context, string written, bool ofGroup)
    {
        StitchId id = Vocabulary.Standard.Meaning(written, context.Terminology) ?? new StitchId(string.Concat(written.ToLowerInvariant().Where(char.IsLetterOrDigit)));
        context.Define(id, [written], ofGroup);
        return id;
    }

    /// <summary>A remark in brackets is said once; a name is used. 'Front d c' is a name, 'front' alone is none.</summary>
    private static bool IsUsedLater(Cursor cursor, int from, int to)
    {
        bool names = false;
        for (int i = from; i < to; i++)
        {
            Token token = cursor.Context.Tokens[i];
            if (token.Kind != TokenKind.Word) continue;
            if (cursor.Context.TimesUsed(token.Word) < 2 || IsOfSentence(token.Word)) return false;
            names |= !IsOfPlace(token.Word);
        }
        return names;
    }

    private static bool IsOfSentence(string word) =>
        word is "this" or "that" or "is" or "are" or "in" or "on" or "to" or "of" or "with" or "and" or "or" or "rs" or "ws" or "row" or "rnd" or "not" or "turn" or "ch" or "as" or "for" or "all" or "at";

    private static bool IsOfPlace(string word) =>
        word is "st" or "side" or "corner" or "center" or "beg" or "end" or "left" or "right" or "top" or "front" or "back" or "next" or "first" or "last" or "same" or "each" or "loop" or "sp";
}
