using System.Globalization;
using PatternStudio.Craft.Text;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Checking;

/// <summary>Findings of the worked rows. The same mishap in every size is one finding; a mishap of some sizes names them.</summary>
internal static class WorkFindings
{
    public static IEnumerable<Finding> Of(SourceText source, IReadOnlyList<PatternWork> works) =>
        works.SelectMany(work => work.Mishaps)
            .GroupBy(mishap => (mishap.Kind, mishap.Span))
            .Select(group => One(source, [.. group], works.Count));

    private static Finding One(SourceText source, Mishap[] same, int sizes)
    {
        string[] named = [.. same.Select(mishap => mishap.Size).Distinct()];
        string onlyIn = sizes > 1 && named.Length < sizes ? string.Join(", ", named) : "";
        return MishapSentences.ToFinding(same[0], onlyIn) with { Fix = Fix(source, same) };
    }

    /// <summary>A stated number is replaced where the row after it shows that it is the slip; the number must stand there in digits.</summary>
    private static TextEdit? Fix(SourceText source, Mishap[] same)
    {
        Mishap first = same[0];
        if (first.Kind != MishapKind.CountDiffers || !first.NextRowAgreesWithWorked || same.Length > 1) return null;
        string words = source.Slice(first.Span), number = first.Wanted.ToString(CultureInfo.InvariantCulture);
        int at = words.IndexOf(number, StringComparison.Ordinal);
        return at < 0 ? null : new TextEdit(new TextSpan(first.Span.Start + at, number.Length), first.Found.ToString(CultureInfo.InvariantCulture));
    }
}
