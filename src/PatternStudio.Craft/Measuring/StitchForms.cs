using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Measuring;

/// <summary>Finds the build of every stitch of one pattern: its own definitions first, then the trade's.</summary>
public sealed class StitchForms
{
    private readonly Dictionary<StitchId, StitchDefinition> defined;
    private readonly Dictionary<StitchId, StitchForm> found = [];

    /// <summary>The stitches of a pattern with its definitions.</summary>
    public StitchForms(Pattern pattern) =>
        defined = pattern.Definitions.GroupBy(definition => definition.Id).ToDictionary(same => same.Key, same => same.First());

    /// <summary>How a stitch is built; <see cref="FormKind.Unknown"/> where neither the pattern nor the trade tells.</summary>
    public StitchForm Of(StitchId id)
    {
        if (found.TryGetValue(id, out StitchForm? known)) return known;
        StitchForm form = FromDefinition(id) ?? FromName(id.Value) ?? StitchForm.UnknownOf(id);
        found[id] = form with { Id = id };
        return found[id];
    }

    private StitchForm? FromDefinition(StitchId id) =>
        defined.TryGetValue(id, out StitchDefinition? definition) && definition.Motions is { Unread.IsEmpty: true, Motions.IsEmpty: false } motions
            ? MotionForm.Read(id, motions.Motions.Select(located => located.Motion))
            : null;

    /// <summary>'dc', 'fpdc', 'dc3tog', 'puff'.</summary>
    internal static StitchForm? FromName(string name) =>
        PlainStitches.Find(name) ?? Usual(name) ?? Post(name) ?? Gathered(name, "tog", FormKind.Together) ?? Gathered(name, "cl", FormKind.Cluster) ?? Formed(name);

    /// <summary>A post stitch is somewhat shorter than the plain one, since its foot is round the post below (from memory: by a fifth).</summary>
    private static StitchForm? Post(string name)
    {
        bool front = name.StartsWith("fp", StringComparison.Ordinal);
        if (!front && !name.StartsWith("bp", StringComparison.Ordinal)) return null;
        return FromName(name[2..]) is { } plain
            ? plain with { FrontPost = front, BackPost = !front, Height = plain.Height * 0.8 }
            : null;
    }

    /// <summary>'dc3tog', 'dc3cl': the legs' last loops are closed by one yarn over.</summary>
    private static StitchForm? Gathered(string name, string ending, FormKind kind)
    {
        if (!name.EndsWith(ending, StringComparison.Ordinal)) return null;
        string stem = name[..^ending.Length];
        int digits = stem.Length - stem.AsSpan().TrimEnd("0123456789").Length;
        return digits is 1 or 2 && int.TryParse(stem[^digits..], out int legs) && legs > 1 && PlainStitches.Find(stem[..^digits]) is { } plain
            ? Gather(plain, kind, legs)
            : null;
    }

    /// <summary>
    /// Extended stitches draw one chain-like loop before they are worked off, foundation stitches make their own chain: one loop more each. Linked and standing
    /// stitches are the plain ones begun in another way.
    /// </summary>
    private static StitchForm? Formed(string name)
    {
        foreach ((string prefix, int loops, double higher) in new[] { ("st-", 0, 0.0), ("e", 1, 0.4), ("f", 1, 0.0), ("l", 0, 0.0) })
            if (name.StartsWith(prefix, StringComparison.Ordinal) && PlainStitches.Find(name[prefix.Length..]) is { Kind: FormKind.Plain } plain)
                return plain with { Loops = plain.Loops + loops, Height = plain.Height + higher };
        return null;
    }

    /// <summary>Names that every author defines anew; these are the commonest builds, used only where the pattern defines none (common practice, no source).</summary>
    private static StitchForm? Usual(string name) => name switch
    {
        "cl" or "cluster" => Gather(PlainStitches.Find("dc")!, FormKind.Cluster, 3),
        "bobble" or "bo" => Gather(PlainStitches.Find("dc")!, FormKind.Cluster, 5),
        "puff" or "puffst" => new(new StitchId(name), FormKind.Puff, StitchId.HalfDouble, 1, 3, 1.27, 7),
        "popcorn" or "pop" or "pc" => new(new StitchId(name), FormKind.Popcorn, StitchId.Double, 1, 5, 1.91, 21),
        "picot" => new(new StitchId(name), FormKind.Chain, StitchId.Chain, 0, 1, 0, 4),
        "dec" or "invdec" => FromName("sc2tog"),
        "hdcdec" => FromName("hdc2tog"),
        "dcdec" => FromName("dc2tog"),
        "bean" => FromName("puff"),
        "rsc" or "crab" or "revsc" => PlainStitches.Find("sc"),
        _ => null,
    };

    internal static StitchForm Gather(StitchForm leg, FormKind kind, int legs) =>
        leg with { Kind = kind, Legs = legs, Loops = (legs * (leg.Loops - 1)) + 1 };
}
