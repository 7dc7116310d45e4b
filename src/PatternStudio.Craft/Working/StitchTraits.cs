using PatternStudio.Craft.Anatomy;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Working;

/// <summary>What working needs to know of a stitch.</summary>
/// <param name="Takes">Places it takes: 2 for 'sc2tog'.</param>
/// <param name="Makes">Stitches it makes: 2 for 'inc'.</param>
/// <param name="Height">Height in chains.</param>
/// <param name="Base">The plain stitch it is a form of.</param>
/// <param name="Definition">The pattern's own definition, where it has one told in stitches.</param>
internal sealed record StitchTraits(int Takes, int Makes, double Height, StitchId Base, StitchDefinition? Definition)
{
    /// <summary>The traits of a stitch: the pattern's own definition first, then the vocabulary.</summary>
    public static StitchTraits Of(StitchId stitch, StitchDefinition? definition)
    {
        StitchTerm? term = Vocabulary.Standard.Find(stitch);
        StitchTraits known = term is null
            ? new StitchTraits(1, 1, 3, stitch, definition)
            : new StitchTraits(term.Takes, term.Makes, term.HeightInChains, term.Base, term.Takes > 1 ? null : definition);
        // A definition by motions of a stitch that the vocabulary does not know says itself how many places it takes.
        return term is null && definition?.Motions is { } read ? known with { Takes = PlacesTaken(read) } : known;
    }

    /// <summary>True for a stitch worked round a post.</summary>
    public static bool IsPost(StitchId stitch) => Vocabulary.Standard.Find(stitch) is { Post: not null and not "" };

    private static int PlacesTaken(ReadMotions read) =>
        1 + read.Motions.Count(located => located.Motion is Insert { NextPlace: true });
}
