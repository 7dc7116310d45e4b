using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Charting.InSpace;

/// <summary>What a fabric does when nobody holds it.</summary>
public enum Shape3
{
    /// <summary>Not worked out: rows not checked, or too large.</summary>
    NotKnown,

    /// <summary>It lies flat.</summary>
    Flat,

    /// <summary>It rises to a bowl or tube: too few stitches for a flat round.</summary>
    Cupped,

    /// <summary>Its edge waves: too many stitches for a flat round.</summary>
    Ruffled,
}

/// <summary>A round beside a flat one.</summary>
/// <param name="Row">Index of the round in its piece.</param>
/// <param name="Label">'Rnd 5'.</param>
/// <param name="Stitches">Stitches in it, chains of spaces counted one each.</param>
/// <param name="Flat">Stitches that would lie flat there: 2π × distance from the centre ÷ stitch width.</param>
/// <param name="Shape">What the round does.</param>
public sealed record RoundFlatness(int Row, string Label, long Stitches, double Flat, Shape3 Shape)
{
    /// <summary>Stitches to add (above 0) or to leave out (below 0) for a round that lies flat, whole.</summary>
    public long Change => (long)Math.Round(Flat) - Stitches;
}

/// <summary>Whether a piece lies flat, and where it stops to.</summary>
/// <param name="Piece">The piece's name.</param>
/// <param name="Shape">What it does as a whole: what its first round that does not lie flat does.</param>
/// <param name="Rounds">Each round, in the order worked.</param>
/// <param name="Text">The same in a sentence.</param>
public sealed record PieceFlatness(string Piece, Shape3 Shape, EquatableArray<RoundFlatness> Rounds, string Text)
{
    /// <summary>The first round that does not lie flat; null where all do.</summary>
    public RoundFlatness? Begins => Rounds.FirstOrDefault(round => round.Shape is Shape3.Cupped or Shape3.Ruffled);
}
