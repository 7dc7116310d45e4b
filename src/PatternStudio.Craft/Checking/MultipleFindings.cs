using PatternStudio.Craft.Checking.Sentences;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Checking;

/// <summary>
/// Compares a stated multiple with the foundation. 'a + b' may count chains or stitches, and a third number may be the turning chain's: only what fits in no
/// reading is reported.
/// </summary>
internal static class MultipleFindings
{
    public static IEnumerable<Finding> Of(Pattern pattern, IReadOnlyList<PatternWork> works)
    {
        Statement[] stated = [.. pattern.Statements.Where(statement => statement.Kind == StatementKind.Multiple)];
        if (stated.Length != 1 || StatedMultiple.Parse(stated[0].Text) is not { } multiple) yield break;
        foreach (PatternWork work in works)
        {
            Foundation[] foundations = [.. work.Fabric.Pieces.Select(Foundation.Of).OfType<Foundation>()];
            if (foundations.Length == 0 || foundations.Any(foundation => foundation.Fits(multiple))) continue;
            yield return Say(stated[0], multiple, foundations[0], works.Count > 1 ? work.Fabric.Size : "");
            yield break;
        }
    }

    private static Finding Say(Statement stated, StatedMultiple multiple, Foundation foundation, string size)
    {
        long lower = foundation.Chains - Remainder(foundation.Chains - multiple.Plus - multiple.Extra, multiple.Of), upper = lower + multiple.Of;
        string sentence = StatementSentences.Multiple(multiple.ToString(), foundation.Chains, foundation.Stitches, foundation.FirstRow, lower > multiple.Plus + multiple.Extra ? lower : null, upper);
        return Finding.Of(FindingCodes.MultipleDiffers, stated.Span, size.Length > 0 ? SizeSentences.In([size], [], sentence) : sentence) with { Size = size };
    }

    private static long Remainder(long number, long of) => ((number % of) + of) % of;

    /// <summary>A foundation chain and the first row on it.</summary>
    /// <param name="Chains">Chains made.</param>
    /// <param name="Skipped">Chains passed over before the first stitch.</param>
    /// <param name="Stitches">Stitches of the first row; null where it is not checked.</param>
    private sealed record Foundation(long Chains, long Skipped, long? Stitches, string FirstRow)
    {
        public static Foundation? Of(WorkedPiece piece)
        {
            if (piece.Rows.IsEmpty || piece.Rows[0] is not { Kind: RowKind.Foundation, Joined: false } chain || chain.Runs.IsEmpty || chain.Runs[0].Unit[0].Kind != CellKind.FoundationChain) return null;
            WorkedRow? first = piece.Rows.Skip(1).FirstOrDefault(row => row.Into == 0);
            if (first is null) return null;
            int ordinal = first.Instruction.Steps.SelectMany(TreeSteps.WithInner).Select(FromHook).FirstOrDefault(found => found > 0);
            return ordinal == 0 ? null : new Foundation(chain.Length, ordinal - 1, first.Status == RowStatus.Checked ? first.Total : null, first.Label);
        }

        private static int FromHook(Step step) => step switch
        {
            StitchStep { Where: { Choice: PlaceChoice.FromHook } where } => where.Ordinal ?? 0,
            GroupStep { Where: { Choice: PlaceChoice.FromHook } where } => where.Ordinal ?? 0,
            _ => 0,
        };

        /// <summary>True where the chain fits as chains, or as stitches with any part of the skipped chains for turning, or where the first row's stitches fit.</summary>
        public bool Fits(StatedMultiple multiple)
        {
            if (Stitches is { } stitches && multiple.Holds(stitches)) return true;
            for (long turning = 0; turning <= Skipped; turning++)
                if (multiple.Holds(Chains - turning) || multiple.Holds(Chains - turning - multiple.Extra)) return true;
            return multiple.Holds(Chains - multiple.Extra);
        }
    }
}
