namespace PatternStudio.Craft.Working;

/// <summary>Rows that go on as the rows just before them: 'rep Rows 2 and 3', where they come out the same each time.</summary>
/// <param name="start">Index of the first of them in their piece.</param>
/// <param name="toldBefore">How many rows worked one by one stand before them.</param>
/// <param name="cycle">The rows that they repeat in turn.</param>
/// <param name="length">How many they are.</param>
internal sealed class RowStretch(int start, int toldBefore, WorkedRow[] cycle, int length)
{
    private WorkedRow?[]? made;

    public int Start => start;

    public int End => start + length;

    public int Length => length;

    public int ToldBefore => toldBefore;

    /// <summary>After how many rows the same comes again.</summary>
    public int Period => cycle.Length;

    /// <summary>The row at a 0-based index in the stretch; always the same object.</summary>
    public WorkedRow Row(int index)
    {
        WorkedRow?[] rows = LazyInitializer.EnsureInitialized(ref made, () => new WorkedRow?[length]);
        return rows[index] ?? Interlocked.CompareExchange(ref rows[index], Make(index), null) ?? rows[index]!;
    }

    private WorkedRow Make(int index)
    {
        WorkedRow like = cycle[index % cycle.Length];
        int further = ((index / cycle.Length) + 1) * cycle.Length;
        return like with
        {
            Number = like.Number + further,
            Index = like.Index + further,
            Into = like.Into + further,
            Label = WorkedRow.LabelOf(like.Kind, like.Number + further),
        };
    }
}
