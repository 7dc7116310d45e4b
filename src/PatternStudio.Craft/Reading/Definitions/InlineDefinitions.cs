using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Definitions;

/// <summary>Keeps a definition given inside a row: '(s d c: thread over hook, insert in st, pull through, thread over and work off all loops at one time)'.</summary>
internal static class InlineDefinitions
{
    /// <summary>Adds the definition of a bracket 'name: words'; brackets without a name and colon say nothing here.</summary>
    public static void Add(Cursor inside, bool ofGroup)
    {
        int from = inside.At;
        if (DefinitionNames.Take(inside) is { } names && !inside.AtEnd)
        {
            TextSpan body = inside.Span(inside.At, inside.End);
            inside.Context.Define(names.Id, names.Names, ofGroup && names.Known is null);
            inside.Context.Document.Add(new StitchDefinition(names.Id, names.Names.ToEquatableArray(), inside.Span(from, inside.End))
            {
                Body = body,
                Motions = MotionWords.AreIn(inside) ? DefinitionMotions.Read(inside.Context.Source, body) : null,
            });
        }
        inside.At = from;
    }
}
