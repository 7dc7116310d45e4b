namespace PatternStudio.Craft.Measuring;

/// <summary>Finished width and height of a piece, each with its trace.</summary>
internal sealed record PieceSize(Measured<Length> Width, Measured<Length> Height)
{
    /// <summary>Once round a tube; null where the piece has no round to measure along.</summary>
    public Measured<Length>? Around { get; init; }

    public static PieceSize NotKnown(string reason) => new(Measured.NotKnown<Length>(reason), Measured.NotKnown<Length>(reason));

    public static PieceSize Square(Length side, string trace) => new(Measured.Known(side, trace), Measured.Known(side, trace));
}
