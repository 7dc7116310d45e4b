using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>Reads filet crochet: '5 sp', '3 open meshes', '2 solid meshes', '4 blocks'.</summary>
internal static class MeshSteps
{
    private static readonly Phrase Work = new("work|make");
    private static readonly Phrase Open = new("open? sp|mesh");
    private static readonly Phrase Solid = new("solid|closed|filled sp|mesh");

    public static bool Read(Cursor cursor, StepList steps)
    {
        int from = cursor.At;
        cursor.Take(Work);
        if (Numbers.Take(cursor) is not { } count) return false;
        bool solid = cursor.Take(Solid);
        if (!solid && !cursor.Take(Open)) return false;
        steps.Add(new MeshStep(count, solid, cursor.SpanFrom(from)));
        return true;
    }
}
