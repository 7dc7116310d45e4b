using System.Globalization;
using System.Text.RegularExpressions;
using PatternStudio.Craft.Reading;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Tests.Checking;

/// <summary>What a single change touches.</summary>
public enum MistakeKind { Number, StitchName, Place, RepeatEnd }

/// <summary>A single change of a right pattern, in a row's instruction (headings and stated counts stay as they are).</summary>
/// <param name="Kind">What it touches.</param>
/// <param name="Line">The row's line.</param>
/// <param name="InFoundation">True in a foundation chain: what it is too long or too short for shows in the row worked into it.</param>
internal sealed partial record SeededMistake(MistakeKind Kind, int Line, TextEdit Edit, bool InFoundation)
{
    private static readonly string[] Us = ["sc", "hdc", "dc", "tr"];
    private static readonly string[] Uk = ["dc", "htr", "tr", "dtr"];

    /// <summary>Every single change: each number one up and one down, each stitch name to its neighbour, each place word and repeat end to another.</summary>
    public static IEnumerable<SeededMistake> All(string text)
    {
        Pattern pattern = PatternReader.Read(text);
        string[] names = pattern.Terms.Terminology == Terms.Terminology.Us ? Us : Uk;
        foreach (RowInstruction row in pattern.Pieces.SelectMany(piece => piece.Items).OfType<RowInstruction>())
        {
            int start = row.Heading.Span.End, end = row.Stated?.Span.Start ?? row.Span.End;
            if (end <= start) continue;
            string words = text[start..end];
            int line = pattern.Source.Locate(row.Span.Start).Line;
            foreach (SeededMistake mistake in InRow(words, start, line, names)) yield return mistake with { InFoundation = row.Heading.Kind == RowKind.Foundation };
        }
    }

    private static IEnumerable<SeededMistake> InRow(string words, int start, int line, string[] names)
    {
        foreach (Match match in Numbers().Matches(words))
        {
            int number = int.Parse(match.Value, CultureInfo.InvariantCulture);
            bool end = words[..match.Index].EndsWith("last ", StringComparison.OrdinalIgnoreCase) || words[(match.Index + match.Length)..].TrimStart().StartsWith("times", StringComparison.OrdinalIgnoreCase);
            foreach (int changed in new[] { number - 1, number + 1 })
                if (changed > 0) yield return Change(end ? MistakeKind.RepeatEnd : MistakeKind.Number, match, changed.ToString(CultureInfo.InvariantCulture));
        }
        foreach (Match match in Words().Matches(words))
        {
            int known = Array.IndexOf(names, match.Value.ToLowerInvariant());
            if (known >= 0) yield return Change(MistakeKind.StitchName, match, names[(known + 1) % names.Length]);
            if (match.Value == "twice") yield return Change(MistakeKind.RepeatEnd, match, "3 times");
            if (match.Value == "same") yield return Change(MistakeKind.Place, match, "next");
            if (match.Value == "next" && !words[..match.Index].EndsWith("of ", StringComparison.Ordinal)) yield return Change(MistakeKind.Place, match, "same");
        }
        SeededMistake Change(MistakeKind kind, Match match, string replacement) =>
            new(kind, line, new TextEdit(new TextSpan(start + match.Index, match.Length), replacement), false);
    }

    [GeneratedRegex(@"(?<![\w-])\d+(?![\w./-]*\w)")]
    private static partial Regex Numbers();

    [GeneratedRegex(@"[A-Za-z]+")]
    private static partial Regex Words();
}
