using PatternStudio.Craft.Reading.Steps;
using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Definitions;

/// <summary>Reads a special stitch told in a sentence: 'One shell is 3 dc, ch 1, 1 dc in same st.'</summary>
internal static class SentenceDefinitions
{
    private static readonly Phrase A = new("a|1|one|each|the");
    private static readonly Phrase Is = new("is|consists|means made|worked? of|as?");

    /// <summary>Takes the definition; null where the line is none. What stands behind the sentence is a remark.</summary>
    public static StitchDefinition? Take(Cursor cursor)
    {
        int from = cursor.At;
        if (TakeName(cursor) is { } name && cursor.Take(Is) && SentenceEnd(cursor) is var end)
        {
            var sentence = new Cursor(cursor.Context, cursor.At, end, cursor.Depth);
            EquatableArray<Step> steps = StepReader.ReadAll(sentence).ToArray();
            if (Ungrouped(steps) is { Count: > 1 } own && own.All(step => step is StitchStep or ChainStep))
            {
                var id = new StitchId(name);
                cursor.Context.Define(id, [name], isGroup: true);
                TextSpan body = cursor.Span(cursor.At, end);
                cursor.At = cursor.End;
                return new StitchDefinition(id, [name], cursor.Span(from, end)) { Body = body, Steps = own };
            }
        }
        cursor.At = from;
        return null;
    }

    private static string? TakeName(Cursor cursor)
    {
        if (!cursor.Take(A) || cursor.Kind != TokenKind.Word) return null;
        if (Synonyms.Group(cursor.Now.Word) is { } name)
        {
            cursor.At++;
            return name;
        }
        return cursor.TakeStitch() is { } stitch && Vocabulary.Standard.Find(stitch) is { IsGroup: true } ? stitch.Value : null;
    }

    private static int SentenceEnd(Cursor cursor)
    {
        int end = cursor.At;
        while (end < cursor.End && cursor.Context.Tokens[end].Kind is not (TokenKind.Dot or TokenKind.Dash or TokenKind.Semicolon)) end++;
        return end;
    }

    /// <summary>'3 dc, ch 1, 1 dc in same st' is what the group is made of: the place is the group's own.</summary>
    private static EquatableArray<Step> Ungrouped(EquatableArray<Step> steps) => steps is [GroupStep { Where.Choice: PlaceChoice.Same or PlaceChoice.Next } only] ? only.Steps : steps;
}
