using System.Text.RegularExpressions;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Working;
using PatternStudio.Craft.Writing.Instructions;

namespace PatternStudio.Craft.Writing.Completion;

/// <summary>Where the hook can go next: what the row below offers from here on, in every size.</summary>
internal sealed partial class PlaceProposals(RowsAbove above, Trials trials)
{
    private readonly StitchWords stitches = new(above.Pattern);

    private string Across => above.Around ? "around" : "across";

    /// <param name="soFar">The row so far; null where nothing of it is worked yet, or it can't be.</param>
    /// <param name="before">The line up to the place: '… sc in '.</param>
    /// <param name="typed">What is typed of the place.</param>
    public IEnumerable<Proposal> Of(RowSoFar? soFar, string before, string typed)
    {
        if (above.Below is not { } below) return [];
        IEnumerable<Proposal> places = below.Kind == RowKind.Foundation ? OnFoundation(below, soFar) : [.. soFar is null ? [] : Next(soFar), .. All(below, typed).Where(place => soFar is null || IsLeft(place.Words, soFar))];
        // What is left of the row below is known from the row so far; trying the words themselves makes sure, where that takes no time.
        bool sure = soFar is not null && !char.IsDigit(typed.LastOrDefault(char.IsLetterOrDigit)) && !Counted().IsMatch(typed);
        return places.Select(place => place with { Spot = Spot.Place, Holds = () => sure && !trials.HasTime || trials.Holds(before + place.Words + RowSoFar.AsFarAsItGoes) });
    }

    private IEnumerable<Proposal> OnFoundation(WorkedRow foundation, RowSoFar? soFar)
    {
        if (foundation.IsMagicRing)
        {
            yield return new("ring", "the ring at the centre");
            yield break;
        }

        if (soFar is null) yield return new("2nd ch from hook", "the turning chain is 1");
        if (soFar is null) yield return new("4th ch from hook", "the turning chain is 3");
        yield return new("each ch across", "every chain that is left");
        yield return new("next ch", "the next chain");
        if (soFar is not null && Several(soFar, "ch", "ch") is { } several) yield return several;
    }

    /// <summary>The next stitch and the next space, as the hook meets them, and how many alike follow each other.</summary>
    private IEnumerable<Proposal> Next(RowSoFar soFar)
    {
        string[][] bySize = [.. soFar.Sizes.Select(size => size.Next.Select(NameOf).OfType<string>().Distinct().Take(2).ToArray())];
        string[] names = [.. bySize[0].TakeWhile((name, index) => bySize.All(size => index < size.Length && size[index] == name))];
        if (names.Length > 0) yield return new($"next {names[0]}", $"what comes next in {above.LabelBelow}");
        if (names.Length > 1) yield return new($"next {names[1]}", $"what comes after that in {above.LabelBelow}");
        if (names.Length > 0 && soFar.Sizes[0].Next.FirstOrDefault(cell => NameOf(cell) is not null) is { Kind: CellKind.Stitch } next)
            if (Several(soFar, names[0], stitches.Several(next.Stitch)) is { } several) yield return several;
    }

    /// <summary>'next 20 (24, 28) sc': all that follow each other from here on; null where there is but one in every size, or none in any.</summary>
    private Proposal? Several(RowSoFar soFar, string name, string many)
    {
        long[] runs = [.. soFar.Sizes.Select(size => size.Run(cell => NameOf(cell) == name))];
        if (!soFar.HasNumbers || runs.Any(run => run < 1) || runs.All(run => run == 1)) return null;
        return new($"next {SizedWords.Of(runs)} {many}", $"all that follow each other in {above.LabelBelow}");
    }

    private string? NameOf(Cell cell) => cell.Kind switch
    {
        CellKind.Stitch => stitches.Of(cell.Stitch),
        CellKind.Chains when !cell.GoesOn => $"ch-{cell.Chains} sp",
        CellKind.TurningChain when cell.Counts => "st",
        CellKind.FoundationChain => "ch",
        _ => null,
    };

    private IEnumerable<Proposal> All(WorkedRow below, string typed)
    {
        string[] kinds = [.. KindsOfAll(below).Select(kind => stitches.Of(new StitchId(kind)))];
        string[] spaces = [.. below.Spaces.Select(space => space.Key).Where(space => above.Belows.All(row => SpacesOf(row, space) > 0))];
        if (Counted().Match(typed) is { Success: true } counted && FitsSizes(counted.Groups["list"].Value))
        {
            foreach (string kind in KindsOfAll(below)) yield return new($"{counted.Value}{stitches.Several(new StitchId(kind))}", $"so many of {above.LabelBelow}");
            yield return new($"{counted.Value}sts", $"so many of {above.LabelBelow}");
        }

        yield return new("next st", $"the next stitch of {above.LabelBelow}");
        yield return new($"each st {Across}", $"every stitch of {above.LabelBelow}");
        foreach (string kind in kinds) yield return new($"each {kind} {Across}", $"every {kind} of {above.LabelBelow}");
        foreach (string space in spaces)
        {
            string? count = above.Belows.Any(row => row.SampleChains is not null) ? null : SizedWords.Of(above.Belows.Select(row => SpacesOf(row, space)));
            yield return new($"next {space} sp", count is null ? $"a space of {above.LabelBelow}" : $"{above.LabelBelow} has {count}");
            yield return new($"each {space} sp {Across}", count is null ? $"every one of {above.LabelBelow}" : $"all {count} of {above.LabelBelow}");
            yield return new($"{space} sp", count is null ? $"a space of {above.LabelBelow}" : $"{above.LabelBelow} has {count}");
        }

        if (kinds.Length > 0) yield return new($"first {kinds[0]}", $"the first of {above.LabelBelow}");
        if (kinds.Length > 0) yield return new($"last {kinds[^1]}", $"the last of {above.LabelBelow}");
        foreach (string kind in kinds) yield return new($"next {kind}", $"a stitch of {above.LabelBelow}");
        yield return new("same st", "where the last stitch was worked");
    }

    /// <summary>A size list has a number for each size of the pattern; it may be the first to tell that there are several.</summary>
    private bool FitsSizes(string list)
    {
        int numbers = 1 + list.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Length;
        return numbers == 1 || numbers == above.Pattern.Sizes.Count || above.Pattern.Sizes.Count == 1 && numbers > 2;
    }

    /// <summary>The kinds of stitches that the row below has in every size.</summary>
    private IEnumerable<string> KindsOfAll(WorkedRow below) => below.Counts.Select(kind => kind.Key).Where(kind => above.Belows.All(row => CountOf(row, kind) > 0));

    /// <summary>False for what the row is past: the next where none is left in a size, the first where it is begun. A round meets its beginning again.</summary>
    private bool IsLeft(string words, RowSoFar soFar)
    {
        if (words.StartsWith("first", StringComparison.Ordinal)) return above.Around || soFar.Sizes.All(size => size.At == 0);
        if (words.StartsWith("same", StringComparison.Ordinal)) return above.Around || soFar.Sizes.All(size => size.At > 0);
        return soFar.Sizes.All(size => size.Any(cell => NameOf(cell) is { } name && (words.Contains(name, StringComparison.Ordinal) || !name.EndsWith(" sp", StringComparison.Ordinal) && words.Contains(" st", StringComparison.Ordinal))));
    }

    private static long CountOf(WorkedRow row, string kind) => row.Counts.FirstOrDefault(count => count.Key == kind).Value;

    private static long SpacesOf(WorkedRow row, string space) => row.Spaces.FirstOrDefault(count => count.Key == space).Value;

    /// <summary>'next 4 ', 'last 13 (15, 17) '.</summary>
    [GeneratedRegex(@"^(?:next|first|last) \d+(?: \((?<list>[\d\s,]+)\))? ", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Counted();
}
