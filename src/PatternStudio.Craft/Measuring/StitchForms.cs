using PatternStudio.Craft.Anatomy;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Measuring;

/// <summary>Finds the build of every stitch of one pattern: its own definitions first, then the vocabulary's. Made for one computation; not shared between threads.</summary>
public sealed class StitchForms
{
    private readonly Pattern pattern;
    private readonly Dictionary<StitchId, StitchDefinition> defined;
    private readonly Dictionary<StitchId, StitchForm> found = [];

    /// <summary>The stitches of a pattern with its definitions.</summary>
    public StitchForms(Pattern pattern)
    {
        this.pattern = pattern;
        defined = pattern.Definitions.GroupBy(definition => definition.Id).ToDictionary(same => same.Key, same => same.First());
    }

    /// <summary>How a stitch is built; <see cref="FormKind.Unknown"/> where neither the pattern nor the trade tells.</summary>
    public StitchForm Of(StitchId id)
    {
        if (found.TryGetValue(id, out StitchForm? known)) return known;
        StitchForm form = (FromDefinition(id) ?? FromName(id.Value) ?? StitchForm.UnknownOf(id)) with { Id = id };
        found[id] = form;
        return form;
    }

    /// <summary>A post stitch stays one when a pattern defines it in its own words.</summary>
    private StitchForm? FromDefinition(StitchId id) =>
        defined.TryGetValue(id, out StitchDefinition? definition) && MotionsOf(definition) is { IsWhole: true, Motions.IsEmpty: false } motions
            ? OnPost(id.Value, AnatomyForm.Of(id, [.. motions.Motions.Select(located => located.Motion)]))
            : null;

    private ReadMotions? MotionsOf(StitchDefinition definition) =>
        definition.Motions ?? (definition.Body.Length > 0 ? MotionReader.Read(pattern.Source, definition.Body, pattern.Terms.Terminology) : null);

    /// <summary>'dc', 'fpdc', 'dc3tog', 'puff'.</summary>
    internal static StitchForm? FromName(string name) =>
        Usual(name) ?? FromVocabulary(name) ?? Post(name) ?? Gathered(name, "tog") ?? Gathered(name, "cl") ?? Formed(name);

    /// <summary>The vocabulary tells the plain stitches motion by motion.</summary>
    private static StitchForm? FromVocabulary(string name)
    {
        var id = new StitchId(name);
        if (id == StitchId.Chain) return new StitchForm(id, FormKind.Chain, id, 0, 1, 0, 1);
        if (Vocabulary.Standard.Find(id) is not { Motions.Length: > 0, Post: null, Takes: 1 } term) return null;
        ReadMotions read = MotionReader.Read(term.Motions);
        return read is { IsWhole: true, Motions.IsEmpty: false } ? AnatomyForm.Of(id, [.. read.Motions.Select(located => located.Motion)]) : null;
    }

    private static StitchForm? Post(string name) =>
        IsPost(name) && FromName(name[2..]) is { } plain ? OnPost(name, plain) : null;

    private static bool IsPost(string name) =>
        name.StartsWith("fp", StringComparison.Ordinal) || name.StartsWith("bp", StringComparison.Ordinal);

    /// <summary>A post stitch is somewhat shorter than the plain one, since its foot is round the post below (from memory: by a fifth).</summary>
    private static StitchForm OnPost(string name, StitchForm form) => !IsPost(name) ? form : form with
    {
        FrontPost = name[0] == 'f',
        BackPost = name[0] == 'b',
        Height = form.Height * 0.8,
    };

    /// <summary>'dc3tog' and 'dc3cl': legs closed by one yarn over, in places of their own or in one.</summary>
    private static StitchForm? Gathered(string name, string ending)
    {
        if (!name.EndsWith(ending, StringComparison.Ordinal)) return null;
        string stem = name[..^ending.Length];
        int digits = stem.Length - stem.AsSpan().TrimEnd("0123456789").Length;
        if (digits is 0 or > 2 || int.Parse(stem[^digits..]) is var legs && legs < 2) return null;
        bool together = ending == "tog";
        return Motions(stem[..^digits], int.Parse(stem[^digits..]), together) is { } motions ? AnatomyForm.Of(new StitchId(name), motions) : null;
    }

    private static IReadOnlyList<Motion>? Motions(string leg, int legs, bool together) => leg switch
    {
        "sc" => together ? StitchFamily.Together(0, legs) : StitchFamily.Cluster(0, legs),
        "hdc" => together ? StitchFamily.HalfDoublesTogether(legs) : StitchFamily.Puff(legs),
        "dc" => together ? StitchFamily.Together(1, legs) : StitchFamily.Cluster(1, legs),
        "tr" => together ? StitchFamily.Together(2, legs) : StitchFamily.Cluster(2, legs),
        "dtr" => together ? StitchFamily.Together(3, legs) : StitchFamily.Cluster(3, legs),
        _ => null,
    };

    /// <summary>
    /// Extended stitches draw one chain-like loop before they are worked off, foundation stitches make their own chain: one chain's yarn more each. Linked and standing
    /// stitches are the plain ones begun in another way.
    /// </summary>
    private static StitchForm? Formed(string name)
    {
        foreach ((string prefix, int yarn, double higher) in new[] { ("st-", 0, 0.0), ("e", 1, 0.4), ("f", 1, 0.0), ("l", 0, 0.0) })
            if (name.StartsWith(prefix, StringComparison.Ordinal) && FromVocabulary(name[prefix.Length..]) is { Kind: FormKind.Plain } plain)
                return plain with { Yarn = plain.Yarn + yarn, Height = plain.Height + higher };
        return null;
    }

    /// <summary>Names that every author defines anew; these are the commonest builds, used only where the pattern defines none (common practice, no source).</summary>
    private static StitchForm? Usual(string name) => name switch
    {
        "cl" => FromName("dc3cl"),
        "bobble" => FromName("dc5cl"),
        "puff" => FromName("hdc3cl"),
        "bean" => FromName("hdc3cl"),
        "popcorn" => AnatomyForm.Of(new StitchId(name), [new WholeStitch(StitchId.Double, 5), new DrawDroppedLoop()]),
        "dec" or "invdec" => FromName("sc2tog"),
        "hdcdec" => FromName("hdc2tog"),
        "dcdec" => FromName("dc2tog"),
        "rsc" => FromVocabulary("sc"),
        _ => null,
    };
}
