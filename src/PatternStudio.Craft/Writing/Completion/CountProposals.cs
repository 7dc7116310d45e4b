using System.Text.RegularExpressions;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Working;
using PatternStudio.Craft.Writing.Instructions;

namespace PatternStudio.Craft.Writing.Completion;

/// <summary>The count at a row's end, in all sizes, stated as the rows above state theirs, or as rows of one kind of stitch usually do.</summary>
internal sealed partial class CountProposals(RowsAbove above, StitchWords stitches)
{
    private StatedCount? Before => above.LastRow?.Stated;

    /// <param name="soFar">The row, worked to its end.</param>
    public IEnumerable<string> Of(RowSoFar soFar)
    {
        if (!soFar.HasNumbers) yield break;
        WorkedRow[] rows = [.. soFar.Sizes.Select(size => size.Row)];
        if (Before is { Items.Count: > 1, PerRow: false } && EveryKind(rows) is { } all) yield return all;
        yield return Total(rows);
    }

    /// <summary>'(4 sc, 4 ch-1 sps)': where the row above tells its kinds one by one.</summary>
    private string? EveryKind(WorkedRow[] rows)
    {
        string[] kinds = [.. rows[0].Counts.Where(kind => kind.Value > 0).Select(kind => kind.Key)], spaces = [.. rows[0].Spaces.Where(space => space.Value > 0).Select(space => space.Key)];
        bool alike = rows.All(row => row.Counts.Where(kind => kind.Value > 0).Select(kind => kind.Key).SequenceEqual(kinds) && row.Spaces.Where(space => space.Value > 0).Select(space => space.Key).SequenceEqual(spaces));
        if (!alike || kinds.Length + spaces.Length < 2) return null;
        IEnumerable<string> items =
        [
            .. kinds.Select(kind => Said([.. rows.Select(row => row.Counts.First(count => count.Key == kind).Value)], stitches.Of(new StitchId(kind)), stitches.Several(new StitchId(kind)))),
            .. spaces.Select(space => Said([.. rows.Select(row => row.Spaces.First(count => count.Key == space).Value)], $"{space} sp", $"{space} sps")),
        ];
        string words = string.Join(", ", items);
        return InBrackets(words, words.Contains('(', StringComparison.Ordinal));
    }

    private string Total(WorkedRow[] rows)
    {
        long[] totals = [.. rows.Select(row => row.Total)];
        bool byKind = Before is null or { Items: [{ Kind: not null, Thing: CountedThing.Stitch }, ..] };
        string? kind = rows[0].Counts.Where(kind => kind.Value > 0).Select(kind => kind.Key).ToArray() is [var one] ? one : null;
        bool alone = kind is not null && rows.All(row => row.Counts.Where(count => count.Value > 0).ToArray() is [var only] && only.Key == kind && only.Value == row.Total);
        bool bare = Before is { Items: [{ Thing: CountedThing.Stitches, Kind: null }] } && !Before.Text.Contains("st", StringComparison.OrdinalIgnoreCase);
        (string single, string several) = byKind && alone ? (stitches.Of(new StitchId(kind!)), stitches.Several(new StitchId(kind!))) : bare ? ("", "") : ("st", "sts");
        bool sized = totals.Distinct().Count() > 1;
        if (sized && Before is { } before && WithCommas().IsMatch(before.Text)) return InBrackets($"{string.Join(", ", totals)} {several}".TrimEnd(), sized: false);
        return InBrackets(Said(totals, single, several).TrimEnd(), sized);
    }

    private static string Said(long[] counts, string one, string several) => $"{SizedWords.Of(counts)} {(counts.All(count => count == 1) ? one : several)}";

    /// <summary>Sizes have round brackets of their own: the count's are square then, unless the rows above have it otherwise.</summary>
    private string InBrackets(string words, bool sized) => Before?.Text.TrimStart() switch
    {
        ['[', ..] => $"[{words}]",
        [>= '0' and <= '9', ..] => words,
        ['(', ..] when sized && Before.Text.TrimStart()[1..].Contains('(', StringComparison.Ordinal) => $"({words})",
        _ => sized ? $"[{words}]" : $"({words})",
    };

    /// <summary>'(20, 24, 28 sc)': a number for each size, with commas between.</summary>
    [GeneratedRegex(@"^[^\d(\[]*[(\[]?\s*\d+\s*,\s*\d", RegexOptions.CultureInvariant)]
    private static partial Regex WithCommas();
}
