using System.Collections;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Checking;

/// <summary>Worked rows as the reports that screens and files show, foundations left out. A report is made when it is first asked for.</summary>
internal sealed class RowReports : IReadOnlyList<RowReport>
{
    private readonly SourceText source;
    private readonly RowReport?[] made;
    private readonly (WorkedRows Rows, int[] Foundations)[] pieces;
    private readonly Dictionary<object, IReadOnlyDictionary<string, long>> counts = new(ReferenceEqualityComparer.Instance);

    public RowReports(Fabric fabric, SourceText source)
    {
        this.source = source;
        pieces = [.. fabric.Pieces.Select(piece => (piece.Rows, Foundations(piece.Rows)))];
        made = new RowReport?[pieces.Sum(piece => piece.Rows.Count - piece.Foundations.Length)];
    }

    public int Count => made.Length;

    public RowReport this[int index] => made[index] ??= Of(RowAt(index));

    /// <summary>Rows in all, rows read whole, rows worked whole. Rows that come round are worked whole.</summary>
    public static ReadSummary Summary(Fabric fabric)
    {
        WorkedRow[] told = [.. fabric.Pieces.SelectMany(piece => piece.Rows.Told).Where(row => row.Kind != RowKind.Foundation)];
        int comeRound = fabric.Pieces.Sum(piece => piece.Rows.Count - piece.Rows.Told.Count);
        return new ReadSummary(
            comeRound + told.Length,
            comeRound + told.Count(row => row.Status != RowStatus.NotRead),
            comeRound + told.Count(row => row.Status == RowStatus.Checked));
    }

    public IEnumerator<RowReport> GetEnumerator()
    {
        for (int i = 0; i < Count; i++) yield return this[i];
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    private static int[] Foundations(WorkedRows rows) =>
        [.. rows.Told.Where(row => row.Kind == RowKind.Foundation).Select(row => row.Index)];

    private WorkedRow RowAt(int index)
    {
        foreach ((WorkedRows rows, int[] foundations) in pieces)
        {
            int inPiece = rows.Count - foundations.Length;
            if (index >= inPiece)
            {
                index -= inPiece;
                continue;
            }
            foreach (int foundation in foundations)
                if (foundation <= index) index++;
            return rows[index];
        }
        throw new ArgumentOutOfRangeException(nameof(index));
    }

    private RowReport Of(WorkedRow row) => new(
        row.Section,
        row.Number,
        row.Label,
        source.Locate(row.CalledBy.Start).Line,
        row.Status,
        row.Side == FabricSide.Right ? "RS" : "WS",
        row.Status == RowStatus.Checked ? row.Total : null,
        row.Stated?.Text,
        row.CountAgrees,
        Shared(row.Counts),
        Shared(row.Spaces)) { SampleChains = row.SampleChains };

    /// <summary>Rows that are worked alike share their counts.</summary>
    private IReadOnlyDictionary<string, long> Shared(EquatableArray<KeyValuePair<string, long>> pairs)
    {
        if (pairs.Identity is not { } key) return new Dictionary<string, long>();
        lock (counts)
        {
            if (!counts.TryGetValue(key, out IReadOnlyDictionary<string, long>? known)) counts[key] = known = new Dictionary<string, long>(pairs);
            return known;
        }
    }
}
