using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>
/// A row told by another row and what differs: 'same as last row, ending with ch 4, tr in tr', 'but having 8 chs in each loop'. What can't be put in without doubt
/// gives null, and the row is left to the maker.
/// </summary>
internal static class RowChanges
{
    /// <summary>The steps of the row named, changed as told.</summary>
    public static EquatableArray<Step>? Apply(EquatableArray<Step> row, AsRowStep told, Func<SizedNumber?, int?> number)
    {
        EquatableArray<Step>? changed = told.LoopChains is { } chains ? WithLoopsOf(chains, row, number) : row;
        if (changed is { } loops && told.LoopsBelow is { } below) changed = IntoLoopsOf(below, loops);
        return changed is { } steps && !told.Ending.IsEmpty ? Closing(steps, told.Ending) : changed;
    }

    /// <summary>The steps that close a row: its last repeat's own ending, or what is worked behind that repeat; empty where it has no repeat.</summary>
    public static EquatableArray<Step> EndingOf(EquatableArray<Step> row)
    {
        int repeat = LastRepeat(row);
        if (repeat < 0) return [];
        return row[repeat] is RepeatStep { Ending: { IsEmpty: false } ending } ? ending : row.Skip(repeat + 1).Where(ClosesRow).ToEquatableArray();
    }

    /// <summary>
    /// '…, ending row same as last row': that ending, where the row was told to end like another. 'tr tr in d tr' there is 'tr tr in tr tr' here: each time the stitch that
    /// closes the row below.
    /// </summary>
    public static EquatableArray<Step> WithEnding(EquatableArray<Step> row, RepeatStep repeat, EquatableArray<Step> ending)
    {
        EquatableArray<Step> here = ending.Select((step, i) => i > 0 && ending[i - 1] is ChainStep && step is StitchStep { Where: { Choice: PlaceChoice.Next, Kind: { Noun: PlaceNoun.Stitch, Stitch: { } named } } where } closing && named != StitchId.SlipStitch
            ? closing with { Where = where with { Kind = PlaceKind.Of(closing.Stitch) } } : step).ToEquatableArray();
        return row.Select(step => ReferenceEquals(step, repeat) ? repeat with { Ending = here } : step).ToEquatableArray();
    }

    private static EquatableArray<Step>? Closing(EquatableArray<Step> row, EquatableArray<Step> ending)
    {
        int at = LastRepeat(row);
        if (at < 0 || row[at] is not RepeatStep { LastStopsAfter: null } repeat || repeat.Extent.Kind == ExtentKind.Times) return null;
        IEnumerable<Step> behind = row.Skip(at + 1).Where((step, i) => !ClosesRow(step) || IsBeforeTurn(row, at + 1 + i));
        return [.. row.Take(at), repeat with { Ending = ending }, .. behind];
    }

    private static int LastRepeat(EquatableArray<Step> row)
    {
        for (int i = row.Count - 1; i >= 0; i--)
            if (row[i] is RepeatStep) return i;
        return -1;
    }

    private static bool ClosesRow(Step step) => step is StitchStep or GroupStep or ChainStep or SkipStep or JoinStep;

    private static bool IsBeforeTurn(EquatableArray<Step> row, int at) => row[at] is ChainStep && at + 1 < row.Count && row[at + 1] is TurnStep;

    /// <summary>Where all loops of the repeat have one length, they have the new one.</summary>
    private static EquatableArray<Step>? WithLoopsOf(SizedNumber chains, EquatableArray<Step> row, Func<SizedNumber?, int?> number)
    {
        int at = LastRepeat(row);
        if (at < 0 || row[at] is not RepeatStep repeat || row.Take(at).Any(step => step is ChainStep)) return null;
        int?[] lengths = [.. repeat.Steps.OfType<ChainStep>().Select(chain => number(chain.Count)).Distinct()];
        if (lengths is not [not null] || repeat.Steps.Any(step => step is GroupStep or RepeatStep)) return null;
        RepeatStep longer = repeat with { Steps = repeat.Steps.Select(step => step is ChainStep chain ? chain with { Count = chains } : step).ToEquatableArray() };
        return row.Select((step, i) => i == at ? longer : step).ToEquatableArray();
    }

    /// <summary>Where the row names loops of one length, they have the new one.</summary>
    private static EquatableArray<Step>? IntoLoopsOf(int chains, EquatableArray<Step> row)
    {
        var found = new HashSet<int>();
        EquatableArray<Step> changed = row.Select(step => Into(step, chains, found)).ToEquatableArray();
        return found.Count == 1 ? changed : null;
    }

    private static Step Into(Step step, int chains, HashSet<int> found)
    {
        switch (step)
        {
            case StitchStep { Where: { Kind: { Noun: PlaceNoun.ChainSpace, Chains: { } was } kind } where } stitch:
                found.Add(was);
                return stitch with { Where = where with { Kind = kind with { Chains = chains } } };
            case GroupStep { Where: { Kind: { Noun: PlaceNoun.ChainSpace, Chains: { } was } kind } where } group:
                found.Add(was);
                return group with { Where = where with { Kind = kind with { Chains = chains } } };
            case RepeatStep repeat:
                return repeat with { Steps = repeat.Steps.Select(inner => Into(inner, chains, found)).ToEquatableArray() };
            default:
                return step;
        }
    }
}
