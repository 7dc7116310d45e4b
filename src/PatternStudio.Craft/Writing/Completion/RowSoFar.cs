using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Writing.Completion;

/// <summary>The row being written, worked as far as it goes, in one size.</summary>
/// <param name="Row">As worked.</param>
/// <param name="Below">The row below as the hook meets it; null where the row is worked into none.</param>
/// <param name="At">Where in it the hook has come to, in cells.</param>
internal sealed record SizeSoFar(WorkedRow Row, Course? Below, long At)
{
    /// <summary>Cells looked ahead: what comes next is soon met.</summary>
    private const int Ahead = 8;

    /// <summary>Stitches and spaces of the row below that are left.</summary>
    public long Left => Places(At, Below?.Length ?? 0);

    /// <summary>The cells that come next, in the order in which the hook meets them; empty where all are worked.</summary>
    public IEnumerable<Cell> Next
    {
        get
        {
            for (long at = At; Below is not null && at < Below.Length && at < At + Ahead; at++) yield return Below.At(at);
        }
    }

    /// <summary>True where nothing that can be worked into is left.</summary>
    public bool AtEnd => Left == 0;

    /// <summary>How many stitches and spaces lie between two cells of the row below, as the hook meets them.</summary>
    public long Places(long from, long to) => Below?.Sum(from, to, (cell, _) => IsPlace(cell) ? 1 : 0) ?? 0;

    /// <summary>A turning chain that counts as none is not worked into.</summary>
    private static bool IsPlace(Cell cell) => cell.Kind is not (CellKind.Join or CellKind.Picot) && (cell.Kind != CellKind.TurningChain || cell.Counts);

    /// <summary>True where such a cell is left.</summary>
    public bool Any(Func<Cell, bool> such) => Below is not null && Below.Find(At, (cell, _) => such(cell)) >= 0;

    /// <summary>How many cells alike stand next to each other from here on.</summary>
    /// <param name="like">Which cells.</param>
    public long Run(Func<Cell, bool> like)
    {
        if (Below is null) return 0;
        long end = Below.Find(At, (cell, _) => !like(cell));
        return (end < 0 ? Below.Length : end) - At;
    }
}

/// <summary>The row being written, worked as far as it goes in every size.</summary>
/// <param name="Sizes">One for each size.</param>
internal sealed record RowSoFar(IReadOnlyList<SizeSoFar> Sizes)
{
    /// <summary>What makes of a row begun a whole instruction: nobody calls the rest a mistake.</summary>
    public const string AsFarAsItGoes = ", leaving remaining sts unworked.";

    /// <summary>Works the beginning of a row; null where it can't be read or worked in every size.</summary>
    /// <param name="trials">The rows above.</param>
    /// <param name="begun">The line as far as its steps are whole.</param>
    public static RowSoFar? Of(Trials trials, string begun)
    {
        begun = begun.TrimEnd(' ', ',', ';', '.', '*');
        if (begun.Length == 0 || trials.Of(begun + AsFarAsItGoes) is not { IsWrong: false, Sizes: { Count: > 0 } sizes }) return null;
        return new RowSoFar([.. sizes.Select(size => Of(size.Rows, size.Row))]);
    }

    /// <summary>True where the counts are those of the pattern, not of a sample of a foundation whose length the maker chooses.</summary>
    public bool HasNumbers => Sizes.All(size => size.Row.SampleChains is null);

    public bool AtEnd => Sizes.All(size => size.AtEnd);

    private static SizeSoFar Of(WorkedRows rows, WorkedRow row)
    {
        if (row.Into < 0) return new SizeSoFar(row, null, 0);
        var course = new Course(rows[row.Into], row.Into, row.Turned);
        return new SizeSoFar(row, course, Math.Min(course.Length, row.StoppedAt));
    }
}
