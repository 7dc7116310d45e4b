using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Definitions;

/// <summary>Keeps a definition given inside a row: '(s d c: thread over hook, insert in st, pull through, thread over and work off all loops at one time)'.</summary>
internal static class InlineDefinitions
{
    private const int MostNameTokens = 6;

    /// <summary>Enters the names of all definitions in brackets before the rows are read: a row may use one in the words before it defines it.</summary>
    public static void EnterNames(ReadingContext context)
    {
        for (int i = 0; i < context.Tokens.Length; i++)
        {
            if (context.Tokens[i].Kind != TokenKind.Open || context.Partners[i] < 0) continue;
            var inside = new Cursor(context, i + 1, context.Partners[i]);
            int colon = i + 1;
            while (colon < inside.End && colon - i <= MostNameTokens && context.Tokens[colon].Kind is TokenKind.Word or TokenKind.Hyphen or TokenKind.Number) colon++;
            if (colon == i + 1 || colon >= inside.End || context.Tokens[colon].Kind != TokenKind.Colon || inside.Now.Word is "to" or "counts" or "note" or "see") continue;
            if (DefinitionNames.Take(inside) is { Known: null } names) context.Define(names.Id, names.Names, isGroup: false);
        }
    }

    /// <summary>Adds the definition of a bracket 'name: words'; brackets without a name and colon say nothing here.</summary>
    public static void Add(Cursor inside, bool ofGroup)
    {
        int from = inside.At;
        if (inside.Now.Word is not ("to" or "note") && DefinitionNames.Take(inside) is { } names && !inside.AtEnd)
        {
            TextSpan body = inside.Span(inside.At, inside.End);
            if (ofGroup && names.Known is null) inside.Context.Define(names.Id, names.Names, isGroup: true);
            inside.Context.Document.Add(new StitchDefinition(names.Id, names.Names.ToEquatableArray(), inside.Span(from, inside.End))
            {
                Body = body,
                Motions = MotionWords.AreIn(inside) ? DefinitionMotions.Read(inside.Context, body) : null,
            });
        }
        inside.At = from;
    }
}
