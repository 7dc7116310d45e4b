using PatternStudio.Craft.Text;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Checking.Fixes;

/// <summary>The change that may mend a mishap. It is only proposed here: <see cref="FixProof"/> makes sure of it.</summary>
internal static class WorkFixes
{
    /// <summary>The one change that suggests itself; null where there are several, or none.</summary>
    /// <param name="source">The text.</param>
    /// <param name="mishap">What went wrong.</param>
    /// <param name="below">The row that its row is worked into; null where not known.</param>
    public static TextEdit? Propose(SourceText source, Mishap mishap, WorkedRow? below) => mishap.Kind switch
    {
        MishapKind.CountDiffers when mishap.NextRowAgreesWithWorked => Wording.ReplaceNumber(source, mishap.Span, mishap.Wanted, mishap.Found),
        MishapKind.RowNumberRepeated => Renumber(source, mishap),
        MishapKind.NoSuchPlace when below is not null => OtherPlace(source, mishap, below),
        MishapKind.OtherKind => Wording.ReplaceOnce(source, mishap.Span, mishap.Named, mishap.Met),
        _ => null,
    };

    /// <summary>'Row 3' between Row 3 and Row 5 is Row 4: certain only where the number after it follows on.</summary>
    private static TextEdit? Renumber(SourceText source, Mishap mishap)
    {
        string after = source.Content[mishap.Span.End..];
        System.Text.RegularExpressions.Match next = System.Text.RegularExpressions.Regex.Match(after, @"^\W*(?:row|rnd|round)s?\s+([0-9]+)", System.Text.RegularExpressions.RegexOptions.IgnoreCase | System.Text.RegularExpressions.RegexOptions.Multiline | System.Text.RegularExpressions.RegexOptions.CultureInvariant);
        return next.Success && long.TryParse(next.Groups[1].Value, out long number) && number == mishap.Wanted + 1
            ? Wording.ReplaceNumber(source, mishap.Span, mishap.Found, mishap.Wanted)
            : null;
    }

    /// <summary>'ch-3 sp' where the row below has ch-2 sps alone; 'dc' where it has sc alone.</summary>
    private static TextEdit? OtherPlace(SourceText source, Mishap mishap, WorkedRow below)
    {
        if (mishap.Named.StartsWith("ch-", StringComparison.Ordinal))
            return below.Spaces.Count == 1 ? Wording.ReplaceOnce(source, mishap.Span, mishap.Named.Split(' ')[0], below.Spaces[0].Key) : null;
        return below.Counts.Count == 1 && below.Spaces.IsEmpty ? Wording.ReplaceOnce(source, mishap.Span, mishap.Named, below.Counts[0].Key) : null;
    }
}
