using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>
/// Reads a stretch of instruction into steps: tries each construct in turn; what none can read becomes an <see cref="UnreadStep"/>
/// up to the next comma, and reading goes on.
/// </summary>
internal static class StepReader
{
    private static readonly Phrase Connective = new("and|then|now|also|next");

    /// <summary>The constructs, those with the most telling beginnings first. Each takes what it reads, or leaves the cursor where it was.</summary>
    private static readonly Func<Cursor, StepList, bool>[] Constructs =
    [
        MotionSteps.ReadNamed,
        ChainNoteSteps.Read,
        EachKindSteps.ReadExceptions,
        BracketSteps.Read,
        StarSteps.Read,
        AlternatelySteps.Read,
        RepeatSteps.Read,
        WorkAlongSteps.Read,
        TurnSteps.Read,
        KeptLoops.Read,
        MotionSteps.Read,
        LoopChoices.Read,
        ToolSteps.Read,
        ColourSteps.Read,
        JoinSteps.Read,
        MorePlaces.Read,
        ChainSteps.Read,
        SkippedChainsWords.Read,
        SkipSteps.Read,
        EitherSteps.Read,
        PlaceLastSteps.Read,
        PlaceFirstSteps.Read,
        ShapingSteps.Read,
        StitchSteps.Read,
        MeshSteps.Read,
        ElidedStitches.Read,
        PartOfGroup.Read,
        RemarkSteps.Read,
        UncountedSteps.Read,
    ];

    /// <summary>Reads all steps of a stretch.</summary>
    public static StepList ReadAll(Cursor cursor)
    {
        var steps = new StepList();
        while (ReadNext(cursor, steps)) { }
        return steps;
    }

    /// <summary>Reads the next step or steps; false at the end.</summary>
    public static bool ReadNext(Cursor cursor, StepList steps)
    {
        cursor.SkipSeparators();
        if (cursor.AtEnd) return false;
        int from = cursor.At;
        if (!cursor.Context.Enter())
        {
            UnreadSteps.Read(cursor, steps);
            return true;
        }
        bool read = TryAll(cursor, steps);
        cursor.Context.Leave();
        if (read) return true;
        cursor.At = from;
        UnreadSteps.Read(cursor, steps);
        return true;
    }

    private static bool TryAll(Cursor cursor, StepList steps)
    {
        if (TryConstructs(cursor, steps)) return true;
        if (cursor.Take(Connective))
        {
            if (cursor.AtEnd || Cursor.IsSeparator(cursor.Kind) || TryConstructs(cursor, steps)) return true;
        }
        return false;
    }

    private static bool TryConstructs(Cursor cursor, StepList steps)
    {
        int from = cursor.At;
        foreach (Func<Cursor, StepList, bool> read in Constructs)
        {
            if (read(cursor, steps) && cursor.At > from) return true;
            cursor.At = from;
        }
        return false;
    }
}
