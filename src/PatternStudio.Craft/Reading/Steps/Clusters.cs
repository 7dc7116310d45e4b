using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>Reads clusters told by their legs: '3-dc cl', '2 d c cluster st', 'cluster of 3 tr'.</summary>
internal static class Clusters
{
    private const int MostLegs = 20;
    private static readonly Phrase Cluster = new("cl|cluster|clust st?");
    private static readonly Phrase ClusterOf = new("cl|cluster st? of");

    public static StitchId? Take(Cursor cursor)
    {
        int from = cursor.At;
        bool of = cursor.Take(ClusterOf);
        int? legs = Numbers.TakePlain(cursor);
        cursor.Take(TokenKind.Hyphen);
        if (legs is >= 2 and <= MostLegs && cursor.TakeStitch() is { } stitch && stitch != StitchId.Chain && (of || cursor.Take(Cluster)))
            return Own(cursor, from) ?? Vocabulary.Cluster(legs.Value, stitch);
        cursor.At = from;
        return null;
    }

    /// <summary>The text's own name for the same words goes before the general rule.</summary>
    private static StitchId? Own(Cursor cursor, int from)
    {
        int after = cursor.At;
        cursor.At = from;
        (StitchId? own, int end) = StitchNames.Longest(cursor, cursor.Context.OwnNames);
        cursor.At = after;
        return own is not null && end >= after ? own : null;
    }
}
