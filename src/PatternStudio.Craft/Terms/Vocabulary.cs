namespace PatternStudio.Craft.Terms;

/// <summary>All stitches the engine knows by name. Immutable once made; safe to share.</summary>
public sealed class Vocabulary
{
    private readonly Dictionary<StitchId, StitchTerm> terms;
    private readonly NameTree us = new();
    private readonly NameTree uk = new();

    private Vocabulary(IEnumerable<StitchTerm> listed)
    {
        terms = listed.ToDictionary(term => term.Id);
        foreach (StitchTerm term in StitchFamilies.All(terms).ToList()) terms.TryAdd(term.Id, term);
        foreach (StitchTerm term in terms.Values)
        {
            foreach (string name in term.Us) us.Add(name, term.Id);
            foreach (string name in term.Uk) uk.Add(name, term.Id);
        }
    }

    /// <summary>The vocabulary of the engine's own term files.</summary>
    public static Vocabulary Standard { get; } = new(StitchFile.Read());

    /// <summary>Every term, families included (clusters of n apart: they are without end).</summary>
    public IEnumerable<StitchTerm> Terms => terms.Values;

    /// <summary>The term of a stitch; null for a designer's own special stitches.</summary>
    public StitchTerm? Find(StitchId id) =>
        terms.TryGetValue(id, out StitchTerm? term) ? term : StitchFamilies.Cluster(id, terms);

    /// <summary>The id of a cluster of n open stitches in one place.</summary>
    public static StitchId Cluster(int legs, StitchId of) => StitchFamilies.ClusterId(legs, of);

    /// <summary>The names of a terminology.</summary>
    public NameTree Names(Terminology terminology) => terminology == Terminology.Us ? us : uk;

    /// <summary>The stitch that a whole name means; null where it means none.</summary>
    public StitchId? Meaning(string name, Terminology terminology)
    {
        NameTree? node = Names(terminology);
        foreach (string word in NameWords.Of(name)) node = node?.Next(word);
        return node?.Stitch;
    }
}
