using System.Text.RegularExpressions;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>Places beside the row below: loops at the side of the fabric, joins to what was made before, words that only describe a place.</summary>
internal sealed partial class RowWorker
{
    private int loopsOnSide;

    /// <summary>
    /// 'Working along side, 5 dc in next ch-5 loop, ch 3, sc in next ch-5 loop': rows turn with a loop at the side; on one side lie the loops of every other row. Null where
    /// the next row down that turned on this side has no such loop.
    /// </summary>
    private Target? LoopOnSide(PlaceKind kind)
    {
        if (!alongEdge || GoesAround || kind.Noun is not (PlaceNoun.ChainSpace or PlaceNoun.Space)) return null;
        int index = course!.RowIndex - 2 * (loopsOnSide + 1);
        if (index < 0 || rows[index] is not { Kind: RowKind.Row, Status: RowStatus.Checked, Length: > 0 } row) return null;
        Cell first = row.Runs[0].At(0);
        if (first.Kind is not (CellKind.Chains or CellKind.TurningChain) || kind.Chains is { } chains && chains != first.Chains) return null;
        loopsOnSide++;
        at = at with { Position = course.Length, Chain = 0, InSpace = true };
        return new Target(new Foot(rows.Count - index, 0, -1, FootKind.Space), -1);
    }

    /// <summary>
    /// Words behind a place that describe it and name no other: 'next ch-5 loop on side' along the side, 'next ch-5 loop at corner' where only corners have such loops, 'next sp next to scallop'.
    /// </summary>
    private bool AddsNothing(TextSpan words, Placement where)
    {
        if (JoinsAsItGoes && OwnMotif().IsMatch(Words(words))) return true;
        if (where.Choice != PlaceChoice.Next || where.Kind.Noun is not (PlaceNoun.Space or PlaceNoun.ChainSpace)) return false;
        string text = Words(words).Trim().ToLowerInvariant();
        return text switch
        {
            "on side" or "on same side" or "on the side" => alongEdge,
            "at corner" or "at next corner" or "at the corner" => where.Kind.Chains is { } chains && IsWidest(chains),
            _ => text.StartsWith("next to ", StringComparison.Ordinal) && !text.Contains("corner", StringComparison.Ordinal) && !text.Contains("motif", StringComparison.Ordinal) && at.Position > 0,
        };
    }

    /// <summary>
    /// 'A row of sc all around working 3 sc in each corner' over rows worked back and forth: it goes down their sides as well, and how many go there is not told. The step that says so; null for none.
    /// </summary>
    private Step? AroundFabric(EquatableArray<Step> all)
    {
        if (!GoesAround || course is not { Row: { Kind: RowKind.Row, Joined: false, Index: > 0 } } || !all.Any(step => context.Says(step.Span, "corner"))) return null;
        return all.FirstOrDefault(step => step switch
        {
            StitchStep { Where: { Choice: PlaceChoice.Each, Extent: { } sweep } } => context.Says(sweep.Span, "around"),
            RepeatStep { Steps: [EitherStep] } each => context.Says(each.Extent.Span, "around"),
            _ => false,
        });
    }

    /// <summary>The section that the row stands in.</summary>
    public string Section { get; init; } = "";

    /// <summary>'Sl st in ch-3 loop of flower', where the flower is another piece of the pattern.</summary>
    private bool IsOfOtherPiece(Placement? where) =>
        where?.Within is { Noun: PlaceNoun.Group, Stitch: { } name } && !HasGroup(name) && !Section.Contains(name.Value, StringComparison.OrdinalIgnoreCase)
        && context.Pattern.Pieces.Any(piece => piece.Name.Equals(name.Value, StringComparison.OrdinalIgnoreCase));

    /// <summary>'…, join to picot of 1st motif, ch 1, dc in same space of 2nd motif': in a row that joins to other motifs, the place is said to be in the one that is worked.</summary>
    private bool JoinsAsItGoes => builder.Has(cell => cell.Kind == CellKind.Join && cell.Feet.IsEmpty) || joinsMotif;

    private bool joinsMotif;

    [GeneratedRegex(@"^\s*(?:of|on|in) (?:the |this |same )?(?:small |2nd |3rd |4th |second |third |joining )?motif\s*$", RegexOptions.IgnoreCase)]
    private static partial Regex OwnMotif();

    private bool IsWidest(int chains) => course is not null && course.Find(0, (cell, _) => cell.Kind == CellKind.Chains && cell.Chains > chains) < 0;

    /// <summary>'Sl st in 4th dc where previous scallop is joined': fastens the row to rows before it.</summary>
    private bool IsFastening(StitchStep step) =>
        step.Stitch == StitchId.SlipStitch && step.Where is { Choice: PlaceChoice.Nth, Further: { } words } && Words(words).Contains(" is joined", StringComparison.OrdinalIgnoreCase);

    private Mishap? Fasten(TextSpan span)
    {
        Emit(new Cell(CellKind.Join, StitchId.SlipStitch, 0, [], false, span));
        at = at with { InSpace = true };
        return null;
    }

    /// <summary>'Drop loop from hook, insert hook in center st of previous scallop, pick up loop and pull through': a join, no stitch.</summary>
    private bool IsDropLoopJoin(MotionsStep step) => context.Says(step.Span, "drop loop") && context.Says(step.Span, "pull through");
}
