using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Anatomy;

/// <summary>
/// The plain stitches, which definitions of others are told in. They follow one rule: so many yarn overs, insert, draw up a loop,
/// then two loops at a time; the half double alone takes all three at once.
/// </summary>
/// <param name="YarnOvers">Before inserting.</param>
/// <param name="AtOnce">True for the half double.</param>
internal sealed record PlainStitch(StitchId Id, int YarnOvers, bool AtOnce)
{
    public static readonly PlainStitch Single = new(StitchId.Single, 0, false);
    public static readonly PlainStitch HalfDouble = new(StitchId.HalfDouble, 1, true);
    public static readonly PlainStitch Double = new(StitchId.Double, 1, false);
    public static readonly PlainStitch Treble = new(StitchId.Treble, 2, false);
    public static readonly PlainStitch DoubleTreble = new(StitchId.DoubleTreble, 3, false);
    public static readonly PlainStitch TripleTreble = new(new StitchId("trtr"), 4, false);

    private static readonly PlainStitch[] All = [Single, HalfDouble, Double, Treble, DoubleTreble, TripleTreble];

    /// <summary>The motions up to the loop drawn up.</summary>
    public IEnumerable<Motion> Begin(bool nextPlace)
    {
        if (YarnOvers > 0) yield return new YarnOver(YarnOvers);
        yield return new Insert(nextPlace);
        yield return new DrawUpLoop();
    }

    /// <summary>The motions that work its own loops off, down to the one it began with.</summary>
    public IEnumerable<Motion> Finish()
    {
        if (AtOnce) return [new DrawThrough(3, null)];
        return Enumerable.Repeat<Motion>(new DrawThrough(2, null), YarnOvers + 1);
    }

    /// <summary>'keeping last loop on hook': all but the last draw through. A half double keeps its two loops.</summary>
    public IEnumerable<Motion> OpenLeg(bool nextPlace) => [.. Begin(nextPlace), .. Finish().SkipLast(1)];

    /// <summary>The whole stitch.</summary>
    public IReadOnlyList<Motion> Motions() => [.. Begin(false), .. Finish()];

    public static PlainStitch? Find(StitchId id) => Array.Find(All, plain => plain.Id == id);

    /// <summary>Height in chains; a chain's own for a chain, none for a slip stitch; a stitch not known here is taken as a single.</summary>
    public static double HeightOf(StitchId id) =>
        id == StitchId.SlipStitch ? 0 : StitchHeight.Of((Find(id) ?? Single).Motions());

    public static double YarnLengthOf(StitchId id) =>
        id == StitchId.SlipStitch || id == StitchId.Chain ? 1 : YarnModel.LengthOf((Find(id) ?? Single).Motions());
}
