using System.Text.RegularExpressions;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Working;
using PatternStudio.Craft.Writing.Instructions;

namespace PatternStudio.Craft.Writing.Completion;

/// <summary>How rows begin, repeat and end: the next row's number, 'rep from *', the count that the row comes to.</summary>
internal sealed partial class RowProposals(RowsAbove above)
{
    private readonly StitchWords stitches = new(above.Pattern);

    private string Across => above.Around ? "around" : "across";

    /// <summary>What a line can begin with.</summary>
    public IEnumerable<Proposal> Beginnings()
    {
        if (above.Piece is null || above.Below is not { } below) yield break;
        string word = above.LastRow is { } last && WordOfHeading().Match(last.Heading.Text) is { Success: true } written ? written.Value
            : above.Around ? "Rnd" : "Row";
        int number = below.Kind == RowKind.Foundation ? 1 : below.Number + 1;
        yield return new($"{word} {number}: ", below.Kind == RowKind.Foundation ? "the first, worked into the foundation" : $"the one after {below.Label}");
        if (below.Kind != RowKind.Foundation) yield return new("Fasten off.", "ends the yarn");
    }

    /// <summary>What a row can go on with, besides stitches and places.</summary>
    /// <param name="line">The line up to the cursor.</param>
    /// <param name="soFar">The row so far; null where it can't be worked.</param>
    public IEnumerable<Proposal> Steps(string line, RowSoFar? soFar)
    {
        string count = soFar is { Next: var left } && left.All(cell => cell.Kind is CellKind.Join or CellKind.Picot) ? CountOf(soFar.Row) : "";
        if (line.LastIndexOf('*') is >= 0 and int star && !line.AsSpan(star).Contains("rep", StringComparison.OrdinalIgnoreCase))
        {
            yield return new($"rep from * {Across}", "the starred steps again and again");
            yield return new("rep from * to end", "the starred steps again and again");
        }

        if (count.Length > 0)
        {
            yield return new(count, "what the row comes to, as worked");
            if (above.Around) yield return new($"join with sl st to {First()}. {count}", "closes the round; with its count");
            else yield return new($"turn. {count}", "ends the row; with its count");
        }

        if (above.Around) yield return new($"join with sl st to {First()}", "closes the round");
        else yield return new("turn", "ends the row");
        yield return new(above.Terms == Terminology.Uk ? "miss next st" : "skip next st", "leaves one out");
        yield return new($"in each st {Across}", "every stitch of the row below");
    }

    private string First() => above.Below is { Kind: not RowKind.Foundation } below && below.Counts is [{ Key: var kind }, ..] ? $"first {stitches.Of(new StitchId(kind))}" : "first st";

    /// <summary>'(21 sc)' as the rows above state theirs, or as rows of one kind of stitch usually do.</summary>
    private string CountOf(WorkedRow row)
    {
        StatedCount? before = above.LastRow?.Stated;
        bool byKind = before is null or { Items: [{ Kind: not null, Thing: CountedThing.Stitch }, ..] };
        KeyValuePair<string, long>[] kinds = [.. row.Counts.Where(kind => kind.Value > 0)];
        string words = byKind && kinds is [{ Key: var kind }] && kinds[0].Value == row.Total ? Said(row.Total, stitches.Of(new StitchId(kind)), stitches.Several(new StitchId(kind)))
            : before is { Items: [{ Thing: CountedThing.Stitches, Kind: null }] } && !before.Text.Contains("st", StringComparison.OrdinalIgnoreCase) ? $"{row.Total}"
            : Said(row.Total, "st", "sts");
        return before?.Text.TrimStart() is [not '(', ..] and ['[', ..] ? $"[{words}]" : $"({words})";
    }

    private static string Said(long count, string one, string several) => $"{count} {(count == 1 ? one : several)}";

    [GeneratedRegex(@"^\s*(?:Row|Rnd|Round|ROW|RND|ROUND)\b(?=\s+\d)", RegexOptions.CultureInvariant)]
    private static partial Regex WordOfHeading();
}
