using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>How much of a row is known.</summary>
public enum RowStatus
{
    /// <summary>Read whole and worked whole.</summary>
    Checked,

    /// <summary>Read, but not worked: the row below is not known, or it has words that can't be worked.</summary>
    NotChecked,

    /// <summary>Some of its words could not be read.</summary>
    NotRead,
}

/// <summary>A row or round as worked.</summary>
/// <param name="Number">Its number; 0 for a foundation.</param>
/// <param name="Instruction">The instruction it was worked from (a repeated row shares it).</param>
/// <param name="Kind">Row, round or foundation.</param>
/// <param name="Side">The side that faces the maker.</param>
/// <param name="Status">How much of it is known; a row that is not checked has no runs.</param>
/// <param name="Runs">Its cells in the order worked.</param>
public sealed record WorkedRow(int Number, RowInstruction Instruction, RowKind Kind, FabricSide Side, RowStatus Status, EquatableArray<Run> Runs)
{
    /// <summary>The label shown: 'Row 3', 'Rnd 3', 'Foundation'.</summary>
    public string Label { get; init; } = "";

    /// <summary>The heading it stands under: 'Border', 'Decrease section'; empty where there is none.</summary>
    public string Section { get; init; } = "";

    /// <summary>The words that call for this row: its own line, or the line that repeats it.</summary>
    public TextSpan CalledBy { get; init; }

    /// <summary>Its own index in its piece.</summary>
    public int Index { get; init; }

    /// <summary>Index of the row it is worked into, in its piece; -1 for none.</summary>
    public int Into { get; init; } = -1;

    /// <summary>Where it stopped in the row below, in cells from where it began, if it leaves the rest unworked; else 0.</summary>
    public long StoppedAt { get; init; }

    /// <summary>True where it is worked back along the row below (the work was turned).</summary>
    public bool Turned { get; init; }

    /// <summary>True where its end is joined to its start.</summary>
    public bool Joined { get; init; }

    /// <summary>True for a round that is not joined: it goes on over its own beginning.</summary>
    internal bool Spiral { get; init; }

    /// <summary>
    /// True for a round whose last loop is closed by a tall stitch at the place where it began ('ch 3, dc in first sc'): the next round begins in the middle of that
    /// loop, and ends there.
    /// </summary>
    internal bool EndsInLoop { get; init; }

    /// <summary>Stitches in all, by the pattern's own convention for turning chains and chains.</summary>
    public long Total { get; init; }

    /// <summary>Stitches by kind (turning chains that count under the stitch they stand for), by name.</summary>
    public EquatableArray<KeyValuePair<string, long>> Counts { get; init; }

    /// <summary>Chain spaces by length: 'ch-2' → 3.</summary>
    public EquatableArray<KeyValuePair<string, long>> Spaces { get; init; }

    /// <summary>The count stated for it, and whether the worked row agrees; null where it states none (or none that can be compared).</summary>
    public StatedCount? Stated { get; init; }

    public bool? CountAgrees { get; init; }

    /// <summary>
    /// The chains of the sample foundation that the row stands on, where the text leaves the length to the maker: its counts are those of the sample, and hold for no
    /// other length. Null where the length is told.
    /// </summary>
    public int? SampleChains { get; init; }

    /// <summary>The label of a row by its number.</summary>
    internal static string LabelOf(RowKind kind, int number) => kind switch
    {
        RowKind.Foundation => "Foundation",
        RowKind.Round => $"Rnd {number}",
        _ => $"Row {number}",
    };

    /// <summary>Number of cells.</summary>
    public long Length => Runs.Sum(run => run.Length);

    /// <summary>True for a magic ring, into which the first round is worked.</summary>
    public bool IsMagicRing => Runs is [{ Unit: [{ Kind: CellKind.Ring }, ..] }, ..];

    /// <summary>Every cell in the order worked, feet in place. Unrolls: ask <see cref="Length"/> first where rows may be vast.</summary>
    public IEnumerable<Cell> Cells()
    {
        foreach (Run run in Runs)
            for (long i = 0; i < run.Length; i++)
                yield return Placed(run.At(i));
    }

    private Cell Placed(Cell cell) => cell.Feet.IsEmpty
        ? cell
        : cell with { Feet = cell.Feet.Select(foot => foot with { Row = Index - foot.Row }).ToEquatableArray() };
}

/// <summary>
/// A piece of fabric in one size: all rows that hang together, from one foundation on. Sections that go on with it ('Decrease section',
/// 'Border') belong to it.
/// </summary>
/// <param name="Name">The heading of its first section; empty where there is none.</param>
/// <param name="Rows">Foundation first, then every row as worked, in order.</param>
public sealed record WorkedPiece(string Name, WorkedRows Rows);

/// <summary>The fabric of one size.</summary>
/// <param name="Size">The size's name; empty where there is one only.</param>
public sealed record Fabric(string Size, EquatableArray<WorkedPiece> Pieces)
{
    /// <summary>True where no row was worked, not even a foundation.</summary>
    public bool IsEmpty => Pieces.All(piece => piece.Rows.IsEmpty);
}
