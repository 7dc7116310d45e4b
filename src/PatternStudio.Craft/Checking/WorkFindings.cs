using PatternStudio.Craft.Checking.Fixes;
using PatternStudio.Craft.Checking.Sentences;
using PatternStudio.Craft.Text;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Checking;

/// <summary>Findings of the worked rows. The same mishap in every size is one finding; a mishap of some sizes names them.</summary>
internal static class WorkFindings
{
    public static IEnumerable<Finding> Of(SourceText source, IReadOnlyList<PatternWork> works) =>
        works.SelectMany(work => work.Mishaps.Select(mishap => (Mishap: mishap, Work: work)))
            .GroupBy(found => (found.Mishap.Kind, found.Mishap.Span))
            .Select(same => One(source, [.. same.Select(found => found.Mishap)], RowBelow(same.First().Work, same.First().Mishap), works.Count));

    private static Finding One(SourceText source, Mishap[] same, WorkedRow? below, int sizes)
    {
        string offered = same[0].Kind == MishapKind.NoSuchPlace && below is not null ? Offered(below) : "", sentence = WorkSentences.Of(same[0], offered);
        ILookup<bool, string> named = same.DistinctBy(mishap => mishap.Size).ToLookup(mishap => WorkSentences.Of(mishap, offered) == sentence, mishap => mishap.Size);
        bool everywhere = sizes == 1 || named[true].Count() == sizes;
        TextEdit? fix = everywhere && (sizes == 1 || same[0].Kind == MishapKind.RowNumberRepeated) ? WorkFixes.Propose(source, same[0], below) : null;
        string told = everywhere ? sentence : SizeSentences.In([.. named[true]], [.. named[false]], sentence);
        return Finding.Of(WorkSentences.CodeOf(same[0].Kind), same[0].Span, told, fix) with { Size = everywhere ? "" : string.Join(", ", named[true].Concat(named[false])) };
    }

    /// <summary>The row that the mishap's row is worked into; null where it is not known.</summary>
    private static WorkedRow? RowBelow(PatternWork work, Mishap mishap)
    {
        foreach (WorkedPiece piece in work.Fabric.Pieces)
            foreach (WorkedRow row in piece.Rows)
                if (row.Label == mishap.Row && row.Into >= 0 && row.Into < piece.Rows.Count && row.Instruction.Span.Contains(mishap.Span)) return piece.Rows[row.Into];
        return null;
    }

    /// <summary>'12 sc, 4 ch-2 sps'.</summary>
    private static string Offered(WorkedRow row) => string.Join(", ",
        row.Counts.Select(count => English.Count(count.Value, count.Key))
            .Concat(row.Spaces.Select(space => English.Count(space.Value, space.Key + " sp"))));
}
