using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Tree;

/// <summary>How far a repeat or an 'each' goes.</summary>
public enum ExtentKind
{
    /// <summary>A stated number of times in all.</summary>
    Times,

    /// <summary>'across', 'around', 'to end': as often as fits, with nothing left.</summary>
    ToEnd,

    /// <summary>'to last 3 sts', 'until 3 sts remain', 'to within 2 sts of end'.</summary>
    ToLast,

    /// <summary>'to next corner', 'to corner sp': up to the next place of <see cref="Extent.Kind"/>.</summary>
    ToPlace,

    /// <summary>'rep from *' with nothing more: as often as fits.</summary>
    Unstated,
}

/// <summary>How far a repeat or an 'each' goes.</summary>
/// <param name="Kind">Which sort of end.</param>
/// <param name="Span">The words that say it.</param>
public sealed record Extent(ExtentKind Kind, TextSpan Span)
{
    /// <summary>
    /// For <see cref="ExtentKind.Times"/>, how often the passage is worked IN ALL (a star's 'rep from * 5 times' is 6 here);
    /// for <see cref="ExtentKind.ToLast"/>, how many places stay unworked.
    /// </summary>
    public SizedNumber? Count { get; init; }

    /// <summary>The kind of place that <see cref="Count"/> counts, or that stops the repeat.</summary>
    public PlaceKind? Place { get; init; }

    /// <summary>True where the words say 'around' rather than 'across'.</summary>
    public bool Around { get; init; }
}
