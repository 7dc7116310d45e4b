using System.Collections;
using System.Runtime.CompilerServices;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>
/// The rows of a piece in order. Rows that come round are kept as 'these two rows, a thousand times': a row of such a stretch is made when it is first asked
/// for, so that a long blanket costs what its instruction costs. Equal to another list when its rows are.
/// </summary>
[CollectionBuilder(typeof(WorkedRows), nameof(Create))]
public sealed class WorkedRows : IReadOnlyList<WorkedRow>, IEquatable<WorkedRows>
{
    private readonly List<WorkedRow> told = [];
    private readonly List<RowStretch> stretches = [];
    private int inStretches;

    /// <summary>A list of the given rows.</summary>
    public static WorkedRows Create(ReadOnlySpan<WorkedRow> rows)
    {
        var made = new WorkedRows();
        made.told.AddRange(rows);
        return made;
    }

    /// <summary>A list of the given rows.</summary>
    public static implicit operator WorkedRows(EquatableArray<WorkedRow> rows) => Create(rows.Span);

    /// <summary>Number of rows.</summary>
    public int Count => told.Count + inStretches;

    /// <summary>True where there are none.</summary>
    public bool IsEmpty => told.Count == 0;

    /// <summary>The rows that were worked one by one: all that are not of a stretch.</summary>
    internal IReadOnlyList<WorkedRow> Told => told;

    /// <summary>The row at a 0-based index.</summary>
    public WorkedRow this[int index]
    {
        get
        {
            for (int i = stretches.Count - 1; i >= 0; i--)
            {
                RowStretch stretch = stretches[i];
                if (index >= stretch.End) return told[stretch.ToldBefore + index - stretch.End];
                if (index >= stretch.Start) return stretch.Row(index - stretch.Start);
            }
            return told[index];
        }
    }

    internal void Add(WorkedRow row) => told.Add(row);

    /// <summary>Puts another row in the place of the last, which was worked by itself.</summary>
    internal void ReplaceLast(WorkedRow row) => told[^1] = row;

    /// <summary>Adds so many rows that go on as the last <paramref name="cycle"/> rows do.</summary>
    internal void ComeRound(int cycle, int rows)
    {
        int start = Count;
        stretches.Add(new RowStretch(start, told.Count, [.. Enumerable.Range(start - cycle, cycle).Select(index => this[index])], rows));
        inStretches += rows;
    }

    /// <summary>The stretch that holds an index; null for a row worked by itself.</summary>
    internal RowStretch? StretchAt(int index) => stretches.Find(stretch => index >= stretch.Start && index < stretch.End);

    /// <summary>The index of the last row of that sort; -1 where there is none.</summary>
    internal int FindLastIndex(Predicate<WorkedRow> wanted)
    {
        int index = Count - 1;
        while (index >= 0 && !wanted(this[index])) index--;
        return index;
    }

    /// <inheritdoc/>
    public IEnumerator<WorkedRow> GetEnumerator()
    {
        int count = Count;
        for (int i = 0; i < count; i++) yield return this[i];
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <inheritdoc/>
    public bool Equals(WorkedRows? other) => other is not null && Count == other.Count && this.SequenceEqual(other);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as WorkedRows);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Count, told.Count > 0 ? told[^1] : null);
}
