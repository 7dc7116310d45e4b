using PatternStudio.Craft.Reading.Steps;
using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Definitions;

/// <summary>Reads a special stitch: 'Puff stitch (puff): [Yo, insert hook …] 3 times …', 'Shell: 5 dc in same st.'</summary>
internal static class StitchDefinitions
{
    /// <summary>Takes a definition line; null where this is none.</summary>
    /// <param name="labelled">True under a heading such as 'Special stitches', where any 'name: words' is one.</param>
    public static StitchDefinition? Take(Cursor cursor, bool labelled)
    {
        int from = cursor.At;
        if (SentenceDefinitions.Take(cursor) is { } said) return said;
        if (DefinitionNames.Take(cursor) is not { } names || cursor.AtEnd || !(labelled || names.Known is not null || names.HasAbbreviation || IsUsed(cursor, names)))
        {
            cursor.At = from;
            return null;
        }
        if (!labelled && !SaysHow(cursor))
        {
            cursor.At = from;
            return null;
        }
        return Define(cursor, names, from);
    }

    /// <summary>A name of the designer's own without an abbreviation: the rows use it.</summary>
    private static bool IsUsed(Cursor cursor, DefinitionNames names) =>
        NameWords.Of(names.Names[0]).All(word => cursor.Context.TimesUsed(word) > 1);

    /// <summary>Outside a heading, only words that tell motions or steps define: 'Border: Join A …' does not.</summary>
    private static bool SaysHow(Cursor cursor)
    {
        if (BeginsPiece(cursor)) return false;
        if (MotionWords.AreIn(cursor)) return true;
        int from = cursor.At;
        StepList steps = StepReader.ReadAll(cursor);
        cursor.At = from;
        return steps.Steps.All(step => step is StitchStep or GroupStep or ChainStep or RemarkStep or SkipStep or EitherStep or RepeatStep) && steps.Steps.Any(step => step is StitchStep or GroupStep);
    }

    /// <summary>
    /// 'Motif: With Yellow ch 9, join to form a ring, …', 'Edge: Attach thread in corner, …', 'Napkins: Ch 785, …' head a piece, whatever motions its rounds tell.
    /// </summary>
    private static bool BeginsPiece(Cursor cursor)
    {
        const int LongestStart = 25;
        if (cursor.Now.IsWord("attach") || cursor.Now.IsWord("ch") && cursor.Ahead(1) is { Kind: TokenKind.Number, Value: >= LongestStart }) return true;
        bool joined = false;
        for (int i = 0; i < 16 && cursor.Ahead(i).Kind != TokenKind.Dot; i++)
        {
            joined |= cursor.Ahead(i).IsWord("join");
            if (joined && cursor.Ahead(i).IsWord("ring")) return true;
        }
        return false;
    }

    private static StitchDefinition Define(Cursor cursor, DefinitionNames names, int from)
    {
        TextSpan body = cursor.Span(cursor.At, cursor.End);
        bool motions = MotionWords.AreIn(cursor);
        EquatableArray<Step> steps = motions ? [] : StepReader.ReadAll(cursor).ToArray();
        cursor.At = cursor.End;
        StitchId id = names.Id;
        cursor.Context.Define(id, names.Names, isGroup: !motions && IsGroup(steps));
        return new StitchDefinition(id, names.Names.ToEquatableArray(), cursor.Span(from, cursor.End))
        {
            Body = body,
            Steps = steps.Any(step => step is UnreadStep) ? [] : steps,
            Motions = motions ? DefinitionMotions.Read(cursor.Context, body) : null,
        };
    }

    /// <summary>Several stitches in one place are a group: 'shell'.</summary>
    private static bool IsGroup(EquatableArray<Step> steps) =>
        steps.Any(step => step is GroupStep) || steps.Any(step => step is StitchStep { PerPlace: { } number } && number.Values[0] > 1) || steps.Count(step => step is StitchStep) > 1;
}
