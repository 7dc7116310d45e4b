using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Checking;

/// <summary>A stitch that the rows of a pattern use.</summary>
/// <param name="Id">Its key, whatever the terms.</param>
/// <param name="Names">In the pattern's terms: its abbreviation, then its full name where there is one.</param>
/// <param name="Others">The same in the other terms; empty where they are no others, and for a stitch of the pattern's own.</param>
/// <param name="Told">The words that define it in the pattern; null where it needs none.</param>
public sealed record UsedStitch(StitchId Id, EquatableArray<string> Names, EquatableArray<string> Others, TextSpan? Told);

/// <summary>The list of abbreviations that a pattern needs: what its rows use, and what its special stitches are made of.</summary>
public static class UsedStitches
{
    /// <summary>The chain, then from the lowest stitch to the highest, the pattern's own ones last.</summary>
    public static EquatableArray<UsedStitch> Of(Pattern pattern)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        var told = pattern.Definitions.GroupBy(definition => definition.Id).ToDictionary(same => same.Key, same => same.First());
        var used = new HashSet<StitchId>();
        foreach (Step step in TreeSteps.OfRows(pattern)) Use(step, told, used);
        return
        [
            .. from id in used
               let stitch = Named(id, told.GetValueOrDefault(id), pattern.Terms.Terminology)
               orderby stitch.Told is not null, id != StitchId.Chain, Vocabulary.Standard.Find(id)?.HeightInChains ?? 0, stitch.Names[0]
               select stitch,
        ];
    }

    private static void Use(Step step, Dictionary<StitchId, StitchDefinition> told, HashSet<StitchId> used)
    {
        if (StitchOf(step) is not { } id || !used.Add(id) || !told.TryGetValue(id, out StitchDefinition? definition)) return;
        foreach (Step part in definition.Steps.SelectMany(TreeSteps.WithInner)) Use(part, told, used);
    }

    private static StitchId? StitchOf(Step step) => step switch
    {
        StitchStep stitch => stitch.Stitch,
        ChainStep => StitchId.Chain,
        JoinStep join => join.Stitch,
        AttachStep attach => attach.Stitch,
        GroupStep group => group.Named,
        _ => null,
    };

    private static UsedStitch Named(StitchId id, StitchDefinition? told, Terminology terms)
    {
        StitchTerm? term = Vocabulary.Standard.Find(id);
        if (told is not null) return new UsedStitch(id, told.Names, [], told.Span);
        if (term is null) return new UsedStitch(id, [id.Value], [], null);
        EquatableArray<string> names = Two(term.Names(terms)), others = Two(term.Names(terms == Terminology.Us ? Terminology.Uk : Terminology.Us));
        return new UsedStitch(id, names, others == names ? [] : others, null);

        // Further names are other spellings.
        static EquatableArray<string> Two(EquatableArray<string> names) => names.Take(2).ToEquatableArray();
    }
}
