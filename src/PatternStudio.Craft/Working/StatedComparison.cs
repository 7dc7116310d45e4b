using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Working;

/// <summary>Compares the count that a row states with the row as worked.</summary>
internal static class StatedComparison
{
    /// <summary>The first stated number that disagrees, with the worked one; <c>Agrees</c> is null where nothing can be compared.</summary>
    public static (bool? Agrees, StatedItem? Item, long Worked) Compare(StatedCount stated, Tally tally, int size, int row = 0)
    {
        if (stated.PerRow) return ComparePerRow(stated, tally, size, row);
        bool compared = false;
        foreach (StatedItem item in stated.Items)
        {
            if (item.Number.For(size) is not { } number || Worked(item, tally, stated.Items.Count == 1) is not { } worked) continue;
            compared = true;
            if (worked != number && !IsBesideGroups(stated, item, worked - number, size)) return (false, item, worked);
        }
        return (compared ? true : null, null, 0);
    }

    /// <summary>'11 groups of 3 dc, 2 dc': the stitches of the groups are not counted again.</summary>
    private static bool IsBesideGroups(StatedCount stated, StatedItem item, long more, int size) =>
        item.Thing == CountedThing.Stitch && more > 0
        && stated.Items.Any(other => !ReferenceEquals(other, item) && (other.Kind?.Noun == PlaceNoun.Group || IsAnyCluster(other.Kind?.Stitch?.Value)) && other.Number.For(size) is > 0 and { } groups && more % groups == 0);

    /// <summary>'9 clusters' of a granny are groups of plain stitches in one place.</summary>
    private static bool IsAnyCluster(string? named) => named is "cl" or "cluster";

    /// <summary>'Rows 3–5: … (7, 9, 11 sc)': each row has its own number.</summary>
    private static (bool? Agrees, StatedItem? Item, long Worked) ComparePerRow(StatedCount stated, Tally tally, int size, int row)
    {
        if (row >= stated.Items.Count) return (null, null, 0);
        StatedItem item = stated.Items[row] with { Thing = stated.Items[row].Kind?.Stitch is null ? CountedThing.Stitches : CountedThing.Stitch };
        if (item.Number.For(size) is not { } number || Worked(item, tally, alone: true) is not { } worked) return (null, null, 0);
        return (worked == number, item, worked);
    }

    private static long? Worked(StatedItem item, Tally tally, bool alone) => item.Thing switch
    {
        CountedThing.Stitches => tally.Total,
        CountedThing.Groups when item.Kind?.Stitch is { } group && tally.Of(group.Value) is null => null,
        CountedThing.Stitch or CountedThing.Groups when item.Kind?.Stitch is { } stitch => OfKind(stitch.Value, tally, alone),
        CountedThing.ChainSpaces when item.Kind?.Chains is { } chains => tally.SpacesOf(chains),
        CountedThing.ChainSpaces or CountedThing.Spaces => tally.SpaceCount,
        _ => null,
    };

    /// <summary>'20 sc' in a row of sc and sc2tog counts them all: so a lone kind is the total where the row has forms of it only.</summary>
    private static long? OfKind(string named, Tally tally, bool alone)
    {
        if (named == "ch") return tally.Chains;
        long forms = tally.OfForms(named);
        if (forms == 0 && tally.Of(named) is null && MayBeOfOtherThings(new StitchId(named))) return null;
        return alone && forms == tally.Total ? tally.Total : tally.Of(named) ?? forms;
    }

    /// <summary>
    /// A name that is no stitch ('4 blocks') counts something that is not worked out here; '4 clusters' of a granny square are its groups of three. Where no stitch of such a
    /// name is worked, something else is meant.
    /// </summary>
    private static bool MayBeOfOtherThings(StitchId named) => Vocabulary.Standard.Find(named) is null or { IsGroup: true } || Places.IsCluster(named);
}
