using System.Text.RegularExpressions;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Working;
using PatternStudio.Craft.Writing.Instructions;

namespace PatternStudio.Craft.Writing.Completion;

/// <summary>How rows begin, go on and end: the next row's number, 'rep from *', the count that the row comes to.</summary>
internal sealed partial class RowProposals(RowsAbove above, Trials trials)
{
    private readonly StitchWords stitches = new(above.Pattern);

    private string Across => above.Around ? "around" : "across";

    /// <summary>What a line can begin with.</summary>
    public IEnumerable<Proposal> Beginnings()
    {
        if (above.Below is not { } below) yield break;
        string word = above.LastRow is { } last && WordOfHeading().Match(last.Heading.Text) is { Success: true } written ? written.Value
            : above.Around ? "Rnd" : "Row";
        if (above.NextNumber is { } number)
            yield return new($"{word} {number}: ", below.Kind == RowKind.Foundation ? "the first, worked into the foundation" : $"the one after {below.Label}", Spot.RowStart);
        if (below.Kind != RowKind.Foundation) yield return new("Fasten off.", "ends the yarn", Spot.RowStart);
    }

    /// <summary>What a row can go on with, besides stitches and places.</summary>
    /// <param name="line">The line up to the cursor.</param>
    /// <param name="cursor">Where it ends.</param>
    /// <param name="soFar">The row so far; null where it can't be worked.</param>
    public IEnumerable<Proposal> Steps(string line, LineSpot cursor, RowSoFar? soFar)
    {
        foreach (Proposal again in new RepeatProposals(above, trials).Of(line, cursor, soFar)) yield return again;
        if (soFar is { AtEnd: true })
            foreach (string count in new CountProposals(above, stitches).Of(soFar))
            {
                string whole = $"{cursor.Begun.TrimEnd(' ', ',', ';', '.')}. {count}";
                bool Agrees() => trials.Holds(whole) && trials.Of(whole) is { Sizes: { Count: > 0 } sizes } && sizes.All(size => size.Row.CountAgrees == true);
                yield return new(count, "what the row comes to, as worked") { Holds = Agrees };
                if (above.Around) yield return new($"{JoinTo(soFar)}. {count}", "closes the round; with its count") { Holds = () => JoinHolds(cursor, soFar) && Agrees() };
                else if (!Turns().IsMatch(line)) yield return new($"turn. {count}", "ends the row; with its count") { Holds = Agrees };
            }

        if (above.Around) yield return new(JoinTo(soFar), "closes the round") { Holds = () => JoinHolds(cursor, soFar) };
        else if (!Turns().IsMatch(line)) yield return new("turn", "ends the row");
        if (soFar is not { AtEnd: true }) yield return new(above.Terms == Terminology.Uk ? "miss next st" : "skip next st", "leaves one out");
        if (cursor.Spot is Spot.AfterStitch or Spot.Within)
            yield return new($"in each st {Across}", "every stitch of the row below", Spot.AfterStitch) { Holds = () => trials.Holds(line[..line.LastIndexOf(' ')] + $" in each st {Across}" + RowSoFar.AsFarAsItGoes) };
    }

    private bool JoinHolds(LineSpot cursor, RowSoFar? soFar) => soFar is null || trials.Holds($"{cursor.Begun.TrimEnd(' ', ',', ';', '.')}, {JoinTo(soFar)}{(soFar.AtEnd ? "." : RowSoFar.AsFarAsItGoes)}");

    /// <summary>'join with sl st to first sc': the stitch that the round itself begins with.</summary>
    private string JoinTo(RowSoFar? soFar)
    {
        Cell?[] firsts = soFar is null ? [] : [.. soFar.Sizes.Select(size => size.Row.Runs is [{ Unit: var unit }, ..] ? unit.FirstOrDefault(cell => cell.Kind != CellKind.Join && (cell.Counts || cell.Kind != CellKind.TurningChain)) : null)];
        string to = firsts.Length == 0 || firsts.Any(cell => cell?.Kind != firsts[0]?.Kind || cell?.Stitch != firsts[0]?.Stitch || cell?.Chains != firsts[0]?.Chains) ? "first st" : firsts[0] switch
        {
            { Kind: CellKind.Stitch, Stitch: var stitch } => $"first {stitches.Of(stitch)}",
            { Kind: CellKind.TurningChain, Chains: var chains } => $"top of beg ch-{chains}",
            _ => "first st",
        };
        return $"join with sl st to {to}";
    }

    [GeneratedRegex(@"\bturn(?:ed|ing)?\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Turns();

    [GeneratedRegex(@"^\s*(?:Row|Rnd|Round|ROW|RND|ROUND)\b(?=\s+\d)", RegexOptions.CultureInvariant)]
    private static partial Regex WordOfHeading();
}
