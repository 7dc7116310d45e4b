using PatternStudio.Craft.Anatomy;
using PatternStudio.Craft.Checking.Fixes;
using PatternStudio.Craft.Checking.Sentences;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Checking;

/// <summary>Works the motions of every special stitch and compares the loops on the hook with what the words say.</summary>
internal static class DefinitionFindings
{
    /// <summary>Words that leave loops on the hook on purpose: a stitch that another one finishes.</summary>
    private static readonly string[] LeavesOpen = ["leav", "remain", "hold", "keep", "left on", "unfinished", "incomplete", "partial", "do not finish"];

    public static IEnumerable<Finding> Of(Pattern pattern) => pattern.Definitions.SelectMany(definition => Of(definition, pattern));

    private static IEnumerable<Finding> Of(StitchDefinition definition, Pattern pattern)
    {
        ReadMotions read = definition.Motions ?? MotionReader.Read(pattern.Source, definition.Body, pattern.Terms.Terminology);
        if (!read.IsWhole || !read.TellsMotions) return [];
        EquatableArray<LoopTrouble> troubles = LoopTroubles.Of(read);
        return troubles.Where(trouble => trouble.Kind != LoopTroubleKind.EndsOpen || troubles.Count == 1 && !EndsOpenOnPurpose(definition, read, pattern.Source))
            .Select(trouble => Trouble(trouble, definition, alone: troubles.Count == 1, pattern.Source));
    }

    private static Finding Trouble(LoopTrouble trouble, StitchDefinition definition, bool alone, SourceText source)
    {
        string sentence = DefinitionSentences.Loops(trouble, definition.Names[0]);
        if (trouble.Kind == LoopTroubleKind.EndsOpen) return Finding.Of(FindingCodes.LoopsLeft, trouble.Span, sentence);
        TextEdit? fix = alone && trouble.Kind == LoopTroubleKind.StatedDiffers ? Wording.ReplaceNumber(source, trouble.Span, trouble.Stated, trouble.OnHook) : null;
        return Finding.Of(FindingCodes.LoopCountDiffers, trouble.Span, sentence, fix);
    }

    private static bool EndsOpenOnPurpose(StitchDefinition definition, ReadMotions read, SourceText source) =>
        read.Motions[^1].Motion is StatedLoops || LeavesOpen.Any(word => source.Slice(definition.Span).Contains(word, StringComparison.OrdinalIgnoreCase));
}
