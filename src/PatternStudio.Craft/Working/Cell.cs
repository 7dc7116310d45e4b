using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>What a cell of a worked row is.</summary>
public enum CellKind
{
    /// <summary>A worked stitch; its top can be worked into.</summary>
    Stitch,

    /// <summary>A run of chains between stitches: one space, and <see cref="Cell.Chains"/> single chains.</summary>
    Chains,

    /// <summary>The chain at the start of a row or round.</summary>
    TurningChain,

    /// <summary>One chain of the foundation.</summary>
    FoundationChain,

    /// <summary>The ring at the centre: a chain ring of <see cref="Cell.Chains"/> chains, or a magic ring (0).</summary>
    Ring,

    /// <summary>A picot: an ornament on the stitch before it, no place of its own in the count.</summary>
    Picot,

    /// <summary>A slip stitch that moves or joins: neither counted nor worked into.</summary>
    Join,
}

/// <summary>How the hook entered the place at a stitch's foot.</summary>
public enum FootKind { BothLoops, FrontLoop, BackLoop, ThirdLoop, FrontPost, BackPost, Space, Chain, Ring, Between, RowEnd, OtherSide }

/// <summary>What one leg of a stitch stands in.</summary>
/// <param name="Row">
/// In <see cref="WorkedRow.Cells"/>: index of the row in its piece's <see cref="WorkedPiece.Rows"/>. In a <see cref="Run"/>: how many rows of
/// that list lie between (1: the row just before, 0: this very row), so that like rows have equal runs.
/// </param>
/// <param name="Place">0-based index of the cell in that row, in the order that row was worked.</param>
/// <param name="Chain">For a single chain of a <see cref="CellKind.Chains"/> cell, its 0-based number; else -1.</param>
/// <param name="Kind">How the hook entered.</param>
public readonly record struct Foot(int Row, long Place, int Chain, FootKind Kind);

/// <summary>The smallest part of a worked row: a stitch, a run of chains, a turning chain.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Stitch">Which stitch; <c>ch</c> for chains; the stitch that a counting turning chain stands for.</param>
/// <param name="Chains">Number of chains, for chains, turning chains, rings and picots; else 0.</param>
/// <param name="Feet">What it stands in; empty for chains. Several for '2 together'.</param>
/// <param name="Counts">True where it counts in the row's total.</param>
/// <param name="Source">The words that made it.</param>
public sealed record Cell(CellKind Kind, StitchId Stitch, int Chains, EquatableArray<Foot> Feet, bool Counts, TextSpan Source)
{
    /// <summary>The named group it belongs to ('shell'), null for none.</summary>
    public StitchId? Group { get; init; }

    /// <summary>0-based index in that group, and the group's size in cells.</summary>
    public int GroupIndex { get; init; }

    public int GroupSize { get; init; }

    /// <summary>True for chains that go on behind a picot: one loop with the chains before it, and no space of their own.</summary>
    public bool GoesOn { get; init; }

    /// <summary>The colour's name as the pattern gives it; empty where it names none.</summary>
    public string Colour { get; init; } = "";
}
