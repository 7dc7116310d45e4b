using PatternStudio.Craft.Checking.Sentences;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Checking;

/// <summary>
/// A pattern whose first row works into stitches that nothing has made. Borders are worked onto other things, so only a first row that attaches no yarn, stands under
/// no heading and has no words before it that could tell the beginning is reported.
/// </summary>
internal static class FoundationFindings
{
    public static IEnumerable<Finding> Of(Pattern pattern, IReadOnlyList<PatternWork> works)
    {
        if (works.SelectMany(work => work.Mishaps).Any(mishap => mishap.Kind == MishapKind.NoFoundation) || First(pattern) is not { } row) yield break;
        WorkedRow? worked = works[0].Fabric.Pieces.SelectMany(piece => piece.Rows).FirstOrDefault();
        if (worked is not { Status: RowStatus.NotChecked, Into: -1 } || !ReferenceEquals(worked.Instruction, row)) yield break;
        Step[] steps = [.. row.Steps.SelectMany(TreeSteps.WithInner)];
        if (!steps.All(MayStandOnAFoundation) || steps.OfType<StitchStep>().FirstOrDefault(step => step.Where is not null) is not { } first) yield break;
        yield return Finding.Of(FindingCodes.NoFoundation, first.Where!.Span, WorkSentences.Of(new Mishap(MishapKind.NoFoundation, first.Where.Span) { Row = worked.Label }));
    }

    /// <summary>The first entry of the pattern, where it is a row and nothing was said before it.</summary>
    private static RowInstruction? First(Pattern pattern) =>
        pattern.Pieces.Count == 1 && pattern.Pieces[0].Name.Length == 0 && pattern.Pieces[0].Items is { IsEmpty: false } items && items[0] is RowInstruction { Heading.Kind: RowKind.Row } row ? row : null;

    private static bool MayStandOnAFoundation(Step step) => step switch
    {
        StitchStep stitch => !StartsByItself(stitch) && stitch.Where is null or { Choice: PlaceChoice.Next or PlaceChoice.Each or PlaceChoice.First, Kind.Noun: PlaceNoun.AnyStitch or PlaceNoun.Stitch or PlaceNoun.Chain, Further: null, InRow: null, RowsBelow: 0 },
        RepeatStep or SkipStep or TurnStep => true,
        _ => false,
    };

    /// <summary>Foundation stitches need nothing below them.</summary>
    private static bool StartsByItself(StitchStep step) => step.Stitch.Value is "fsc" or "fhdc" or "fdc" or "ftr";
}
