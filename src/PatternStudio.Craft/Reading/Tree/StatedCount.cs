using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Tree;

/// <summary>What a stated number counts.</summary>
public enum CountedThing
{
    /// <summary>'sts', or a bare number.</summary>
    Stitches,

    /// <summary>One kind of stitch: '20 sc', '10 puffs'.</summary>
    Stitch,

    /// <summary>'4 ch-2 sps'.</summary>
    ChainSpaces,

    /// <summary>'12 sps', '8 loops', '12 meshes'.</summary>
    Spaces,

    /// <summary>A named group: '5 shells'.</summary>
    Groups,

    /// <summary>'35 patterns', '6 repeats', '49 squares': read, not compared.</summary>
    Other,
}

/// <summary>One number of a stated count: '11 sc' in '(10 puffs, 11 sc)'.</summary>
public sealed record StatedItem(SizedNumber Number, CountedThing Thing, PlaceKind? Kind, TextSpan Span);

/// <summary>The count that a row states: '(20 sts)', '— 20 sc', '(10 puffs, 11 sc, 1 ch-2 sp)', '(20, 30, 40 sts)'.</summary>
public sealed record StatedCount(EquatableArray<StatedItem> Items, string Text, TextSpan Span)
{
    /// <summary>
    /// True for 'Rows 3–5: … (7, 9, 11 sc)': one number for each of the heading's rows in turn. Its items are <see cref="CountedThing.Other"/>, with the kind that
    /// they count, so that nobody takes them for three counts of one row.
    /// </summary>
    public bool PerRow { get; init; }
}
