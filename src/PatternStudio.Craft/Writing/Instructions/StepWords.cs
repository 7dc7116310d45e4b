using System.Text;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Writing.Instructions;

/// <summary>Writes the steps of a row.</summary>
internal sealed class StepWords
{
    private readonly StitchWords stitches;
    private readonly PlaceWords places;
    private readonly RepeatWords repeats;

    /// <param name="stitches">The names.</param>
    /// <param name="inAStar">True for the steps inside a starred repeat, where a second star would be one too many.</param>
    public StepWords(StitchWords stitches, bool inAStar = false)
    {
        this.stitches = stitches;
        places = new PlaceWords(stitches);
        repeats = new RepeatWords(this, inAStar ? this : new StepWords(stitches, inAStar: true), places);
    }

    /// <summary>Steps one after the other, parted by commas where those mean nothing else.</summary>
    /// <param name="inGroup">True inside the brackets of a group, where all steps share a place.</param>
    public string List(IReadOnlyList<Step> steps, bool inGroup = false)
    {
        var words = new StringBuilder();
        for (int i = 0; i < steps.Count; i++)
        {
            if (i > 0) words.Append(IsAside(steps[i]) ? " " : !inGroup && NeedsSemicolon(steps, i) ? "; " : ", ");
            words.Append(Of(steps[i], inGroup));
        }

        return words.ToString();
    }

    /// <summary>'rep Row 2, 8 dc' would name Row 8; an ending goes on to the next semicolon; 'sc, ch 1, sc in next st' would be one group in one place.</summary>
    private static bool NeedsSemicolon(IReadOnlyList<Step> steps, int at)
    {
        if (steps[at - 1] is AsRowStep or RepeatStep { Ending.IsEmpty: false }) return true;
        if (steps[at] is not StitchStep { Where: { } where }) return false;
        int first = at;
        for (int i = at - 1; i >= 0 && IsOfAList(steps[i]); i--)
            if (steps[i] is StitchStep)
                first = i;
        return first < at && (where.Choice == PlaceChoice.Same || steps.Take(at).Skip(first).Any(step => step is ChainStep));
    }

    /// <summary>'(2 sc in each row end)': said of the step before it.</summary>
    private static bool IsAside(Step step) => step is RemarkStep remark && remark.Text.StartsWith('(');

    private static bool IsOfAList(Step step) => step is StitchStep { Where: null } or ChainStep { Role: ChainRole.Unstated };

    public string Of(Step step, bool inGroup = false) => step switch
    {
        StitchStep stitch when stitches.Know(stitch.Stitch) => Of(stitch, inGroup),
        ChainStep chain => $"ch {NumberWords.Of(chain.Count)}{StandsFor(chain.Role, chain.CountsAs, chain.ThenChains, "")}",
        SkipStep skip => "sk next " + places.Counted(skip.Count, skip.Kind),
        GroupStep group => Of(group),
        RepeatStep repeat => repeats.Of(repeat),
        TurnStep => "turn",
        DoNotTurnStep => "do not turn",
        JoinStep { CountsAsSpace: null } join => Of(join),
        DoNotJoinStep => "do not join",
        MagicRingStep => "make a magic ring",
        FastenOffStep => "fasten off",
        ColourStep { Colour.Length: > 0 } colour => "change to " + colour.Colour,
        MarkerStep => "place marker",
        AsRowStep { IsUnchanged: true } row => Of(row),
        _ => stitches.AsWritten(step.Span),
    };

    private string Of(StitchStep step, bool inGroup)
    {
        string name = stitches.Of(step.Stitch);
        if (!inGroup && LoopAlone(step) is { } loop) return $"{loop} {name} {NumberWords.Of(step.Where!.Count!)}";
        string words = step switch
        {
            { Count: { } count } when inGroup => $"{NumberWords.Of(count)} {name}",
            { Count: { } count } when step.ChainsBetween is not null || step.Where is not null => $"{NumberWords.Of(count)} {name}",
            { Count: { } count } => $"{name} {NumberWords.Of(count)}",
            { PerPlace: { } each } when !NumberWords.IsOne(each) => $"{NumberWords.Of(each)} {name}",
            _ => name,
        };
        if (step.Where is { } where) words += " " + places.Of(where);
        if (step.ChainsBetween is { } chains) words += $" with ch {NumberWords.Of(chains)} between";
        if (step.Completes is { } whole) words += $" for {stitches.Of(whole)}";
        return words + StandsFor(step.Skipped);
    }

    /// <summary>'BLO' for 'BLO sc 18', '18 sc BLO': the number is of the stitches, and no place is named; null for other steps.</summary>
    private static string? LoopAlone(StitchStep step) =>
        step is { Completes: null, ChainsBetween: null, Where: { Choice: PlaceChoice.Next, Count: { } count, And: null, Loop: LoopChoice.Back or LoopChoice.Front } where } && (count.Span.Start < where.Span.Start || count.Span.Start >= where.Span.End)
            ? where.Loop == LoopChoice.Back ? "BLO" : "FLO"
            : null;

    /// <summary>What the chains passed over count as; nothing where that is not told.</summary>
    private string StandsFor(SkippedChains? skipped) =>
        skipped is null ? "" : StandsFor(skipped.Role, skipped.CountsAs, skipped.ThenChains, "skipped chs ", skipped.ThenSkips);

    private string StandsFor(ChainRole role, StitchId? stitch, int thenChains, string subject, int? thenSkips = null)
    {
        bool several = subject.Length > 0;
        string thing = stitch is { } named ? stitches.Of(named) : "a st";
        string skips = thenSkips > 0 ? $" and {thenSkips} skipped {(thenSkips == 1 ? "ch" : "chs")}" : "";
        string rest = thenChains <= 0 ? skips : (skips.Length > 0 ? $", ch {thenChains}" : $" and ch {thenChains}") + skips;
        return role switch
        {
            ChainRole.Counts => $" ({subject}{(several ? "count" : "counts")} as {thing}{rest})",
            ChainRole.DoesNotCount => $" ({subject}{(several ? "do" : "does")} not count as a st)",
            _ => "",
        };
    }

    private string Of(GroupStep group)
    {
        string words = $"({List(group.Steps, inGroup: true)}) {places.Of(group.Where)}";
        if (group.Named is { } name) words += $" ({stitches.Of(name)} made)";
        return words + StandsFor(group.Skipped);
    }

    private string Of(JoinStep join)
    {
        string with = join.Where is null && !join.FormsRing && join.Stitch == StitchId.SlipStitch ? "" : $" with {stitches.Of(join.Stitch)}";
        string where = join.Where is { } place ? " " + places.Of(place) : "";
        return $"join{with}{where}{(join.FormsRing ? " to form a ring" : "")}";
    }

    private static string Of(AsRowStep step)
    {
        string rows = step.PreviousRow ? "last row" : step.Rows.Count == 1 ? $"Row {step.Rows[0]}" : $"Rows {NumberWords.List(step.Rows)}";
        return $"rep {rows}{(step.Times is { } times ? " " + NumberWords.Times(times) : "")}";
    }
}
