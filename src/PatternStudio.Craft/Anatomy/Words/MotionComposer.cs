using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Anatomy.Words;

/// <summary>Puts motions together as their words are read, and knows where the hook is while it does.</summary>
internal sealed class MotionComposer
{
    private readonly List<LocatedMotion> motions = [];
    private readonly List<TextSpan> unread = [];
    private (int Times, TextSpan Span)? wraps;
    private int pulls = 1;
    private int places;

    /// <summary>Number of motions so far: where a repeat that starts here begins.</summary>
    public int Count => motions.Count;

    /// <summary>More motions than any stitch has: the rest is left unread.</summary>
    public bool IsFull => motions.Count >= MotionLimits.Motions;

    public int Loops { get; private set; } = LoopTrace.AtStart;

    /// <summary>The hook is in the work and no loop has been drawn up yet.</summary>
    public bool HookIsIn => places > 0;

    /// <summary>The hook holds several places at once, as for an invisible decrease.</summary>
    public bool HookIsInSeveral => places > 1;

    /// <summary>The working loop has been dropped and not been drawn through yet.</summary>
    public bool LoopIsDropped { get; set; }

    /// <summary>'keeping last loop of each on hook' was said of the stitches that follow.</summary>
    public bool KeepsLastLoop { get; set; }

    /// <summary>The hook holds the working loop alone, as after a stitch.</summary>
    public bool IsFinished => motions.Count > 0 && Loops == LoopTrace.AtStart && !HookIsIn && !LoopIsDropped && !HasWraps;

    public bool HasWraps => wraps is not null;

    /// <summary>A 'yo' whose use is known only from what follows: before inserting it stays, before drawing it is drawn.</summary>
    public void HoldWraps(int times, TextSpan span)
    {
        wraps = wraps is { } held ? (held.Times + times, held.Span.Through(span)) : (times, span);
    }

    /// <summary>A 'yo' that nothing has drawn stays on the hook.</summary>
    public void SettleWraps()
    {
        if (wraps is { } held) Add(new YarnOver(held.Times), held.Span);
        wraps = null;
    }

    /// <summary>
    /// The hook goes into a place; under 'next 2 sts' at once, so that one loop comes through both; but into 'each of next 2 sts' in
    /// turn, with a loop drawn through each.
    /// </summary>
    public void EnterPlace(Place place, TextSpan span)
    {
        SettleWraps();
        if (LoopIsDropped) return;
        pulls = place.IsEach ? Math.Max(1, place.Count) : 1;
        Add(new Insert(place.IsNext), span);
        places++;
        for (int i = 1; i < place.Count && !place.IsEach && !IsFull; i++, places++) Add(new Insert(true), span);
    }

    /// <summary>A loop comes up through the place where the hook is, or through the place that the words name after it.</summary>
    public void DrawUp(Place? place, int? chains, TextSpan span)
    {
        if (!HookIsIn && place is { } entered) EnterPlace(entered with { IsEach = true }, span);
        var loop = new DrawUpLoop { Chains = chains };
        span = TakeWrapForDrawing(span);
        Add(loop, span);
        for (int i = 1; i < pulls && !IsFull; i++)
        {
            Add(new Insert(true), span);
            Add(loop, span);
        }

        LeavePlace();
    }

    /// <summary>A draw through loops; the 'yo' before it is part of it.</summary>
    public void Draw(Motion motion, TextSpan span)
    {
        Add(motion, TakeWrapForDrawing(span));
        LeavePlace();
        KeepsLastLoop = false;
    }

    /// <summary>A motion that leaves loops in peace.</summary>
    public void Put(Motion motion, TextSpan span)
    {
        SettleWraps();
        Add(motion, span);
    }

    /// <summary>Motions of a stitch that is told by its name.</summary>
    public void Put(IEnumerable<Motion> named, TextSpan span)
    {
        foreach (Motion motion in named) Put(motion, span);
    }

    /// <summary>Works what was read since <paramref name="from"/> more times. False where that is more than any stitch has.</summary>
    public bool Repeat(int from, int more, Place? places = null)
    {
        SettleWraps();
        int length = motions.Count - from;
        if (places is { IsSame: true }) SetPlaces(from, length, _ => false);
        if ((long)length * more + motions.Count > MotionLimits.Motions) return false;
        for (int turn = 0; turn < more; turn++)
        {
            int copy = motions.Count;
            for (int i = 0; i < length; i++) Add(motions[from + i].Motion, motions[from + i].Span);
            if (places is { IsNext: true }) SetPlaces(copy, length, first => first);
        }

        return true;
    }

    /// <summary>Takes back what was read since <paramref name="from"/>: 'rep from * for each' tells the stitch after this one.</summary>
    public void Forget(int from)
    {
        SettleWraps();
        motions.RemoveRange(from, motions.Count - from);
        Loops = LoopTrace.Of(motions.Select(located => located.Motion)).DefaultIfEmpty(LoopTrace.AtStart).Last();
    }

    /// <summary>How many turns more bring the hook to so many loops; null where no whole number does.</summary>
    public int? TurnsUntil(int loops, int from)
    {
        SettleWraps();
        int before = LoopTrace.Of(motions.Take(from).Select(located => located.Motion)).DefaultIfEmpty(LoopTrace.AtStart).Last();
        int gain = Loops - before;
        return gain > 0 && loops >= Loops && (loops - Loops) % gain == 0 ? (loops - Loops) / gain : null;
    }

    public void LeaveUnread(TextSpan span)
    {
        if (!IsFull) SettleWraps();
        if (unread.Count > 0 && span.Start - unread[^1].End <= 1) unread[^1] = unread[^1].Through(span);
        else unread.Add(span);
    }

    public ReadMotions Finish()
    {
        SettleWraps();
        int first = motions.FindIndex(located => located.Motion is Insert);
        if (first >= 0) motions[first] = motions[first] with { Motion = new Insert(false) };
        return new ReadMotions(motions.ToEquatableArray(), unread.ToEquatableArray());
    }

    /// <summary>One 'yo' is drawn; any before it stay on the hook.</summary>
    private TextSpan TakeWrapForDrawing(TextSpan span)
    {
        if (wraps is not { } held) return span;
        wraps = null;
        if (held.Times > 1) Add(new YarnOver(held.Times - 1), held.Span);
        return held.Span.Through(span);
    }

    private void LeavePlace()
    {
        pulls = 1;
        places = 0;
    }

    private void SetPlaces(int from, int length, Func<bool, bool> isNext)
    {
        bool first = true;
        for (int i = from; i < from + length; i++)
        {
            if (motions[i].Motion is not Insert) continue;
            motions[i] = motions[i] with { Motion = new Insert(isNext(first)) };
            first = false;
        }
    }

    private void Add(Motion motion, TextSpan span)
    {
        if (IsFull)
        {
            LeaveUnread(span);
            return;
        }

        motions.Add(new LocatedMotion(motion, span));
        Loops = LoopTrace.After(Loops, motion);
    }
}
