using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>
/// Rows worked before: the same steps on the same row below make the same row. Once a blanket's rows come round, the next thousand
/// cost no more than looking them up.
/// </summary>
internal sealed class WorkMemo
{
    private readonly Dictionary<Key, Made> made = [];
    private readonly Dictionary<object, List<EquatableArray<Run>>> likely = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<(object?, object?), EquatableArray<Step>> joined = [];
    private readonly Dictionary<object, EquatableArray<Step>> inlined = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<object, bool> deeper = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<object, EquatableArray<Step>?> inTurn = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<object, RowSteps> split = new(ReferenceEqualityComparer.Instance);

    /// <summary>What decides how a row comes out.</summary>
    public readonly record struct Key(object Steps, object? Below, int Down, bool BelowJoined, bool BelowSpiral, bool BelowEndsInLoop, bool Turned, bool Around, string Colour, long StartAt, bool TurnsBack);

    /// <summary>How it came out.</summary>
    public sealed record Made(EquatableArray<Run> Runs, Tally Tally, Mishap? Mishap, string Colour, bool FastenedOff, bool Joined, Mishap? Passed, long StoppedAt, bool EndsInLoop);

    public Made? Find(Key key) => made.GetValueOrDefault(key);

    /// <summary>True where the steps reach below the row below: then what they make depends on more than the key says.</summary>
    public bool ReachesDeeper(EquatableArray<Step> steps)
    {
        if (steps.Identity is not { } key) return false;
        return deeper.TryGetValue(key, out bool known) ? known : deeper[key] = steps.Any(Reaches);
    }

    /// <summary>Keeps a row that came out; what goes wrong in one names rows, so it is worked anew. Where the same steps have made an equal row before, that one is kept in its stead, so that the next row finds it.</summary>
    public Made Keep(Key key, Made row)
    {
        if (row.Mishap is not null) return row;
        if (!likely.TryGetValue(key.Steps, out List<EquatableArray<Run>>? before)) likely[key.Steps] = before = [];
        int equal = before.FindIndex(runs => runs == row.Runs);
        if (equal >= 0) row = row with { Runs = before[equal] };
        else
        {
            if (before.Count == 4) before.RemoveAt(0);
            before.Add(row.Runs);
        }
        return made[key] = row;
    }

    private static bool Reaches(Step step) => step switch
    {
        StitchStep stitch => Reaches(stitch.Where),
        GroupStep group => Reaches(group.Where) || group.Steps.Any(Reaches),
        RepeatStep repeat => repeat.Steps.Any(Reaches) || repeat.Ending.Any(Reaches),
        _ => false,
    };

    private static bool Reaches(Placement? where) => where is not null && (where.RowsBelow > 0 || Reaches(where.And));

    /// <summary>A special stitch that begins a row with chains of its own ('beginning tile: ch 6, dc in 4th ch from hook, …') is put in as its steps.</summary>
    public EquatableArray<Step> Inline(EquatableArray<Step> steps, WorkContext context)
    {
        if (steps.Identity is not { } key) return steps;
        if (inlined.TryGetValue(key, out EquatableArray<Step> known)) return known;
        int at = 0;
        while (at < steps.Count && steps[at] is TurnStep or RemarkStep or ColourStep or MarkerStep) at++;
        bool begins = at < steps.Count && steps[at] is StitchStep { Where: null } first
            && context.Traits(first.Stitch).Definition is { Steps.Count: > 1 } own && own.Steps[0] is ChainStep && own.Steps[1] is StitchStep { Where.Choice: PlaceChoice.FromHook };
        return inlined[key] = begins
            ? [.. steps.Take(at), .. context.Traits(((StitchStep)steps[at]).Stitch).Definition!.Steps, .. steps.Skip(at + 1)]
            : steps;
    }

    /// <summary>The steps carried over from the row before, then the row's own; the same list for the same two.</summary>
    public EquatableArray<Step> Join(EquatableArray<Step> carried, EquatableArray<Step> own)
    {
        if (carried.IsEmpty) return own;
        var key = (carried.Identity, own.Identity);
        return joined.TryGetValue(key, out EquatableArray<Step> known) ? known : joined[key] = [.. carried, .. own];
    }

    /// <summary>The steps with open places read the other way, the same list for the same steps; null where nothing is open.</summary>
    public EquatableArray<Step>? InTurn(EquatableArray<Step> steps)
    {
        if (steps.Identity is not { } key) return PlaceReadings.InTurn(steps);
        return inTurn.TryGetValue(key, out EquatableArray<Step>? known) ? known : inTurn[key] = PlaceReadings.InTurn(steps);
    }

    /// <summary>The row's steps with its ends put straight; the same for the same steps.</summary>
    public RowSteps Split(EquatableArray<Step> steps)
    {
        if (steps.Identity is not { } key) return RowSteps.Split(steps);
        return split.TryGetValue(key, out RowSteps? known) ? known : split[key] = RowSteps.Split(steps);
    }
}
