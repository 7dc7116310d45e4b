using PatternStudio.Craft.Reading;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Writing.Completion;

/// <summary>What stands above the line that is being written: read and worked once, however much is typed in that line.</summary>
public sealed class RowsAbove
{
    private RowsAbove(string text, Pattern pattern, WorkedPiece? piece) => (Text, Pattern, Piece) = (text, pattern, piece);

    /// <summary>The words above.</summary>
    public string Text { get; }

    internal Pattern Pattern { get; }

    internal Terminology Terms => Pattern.Terms.Terminology;

    /// <summary>The piece that the line goes on with; null where nothing is worked yet.</summary>
    internal WorkedPiece? Piece { get; }

    /// <summary>The row that the line's row is worked into, foundations too; null where it is not known.</summary>
    internal WorkedRow? Below => Piece is { Rows.Count: > 0 } piece && piece.Rows[^1] is { Status: RowStatus.Checked } row ? row : null;

    /// <summary>The last entry that is a row.</summary>
    internal RowInstruction? LastRow => Pattern.Pieces.SelectMany(piece => piece.Items).OfType<RowInstruction>().LastOrDefault(row => row.Heading.Kind != RowKind.Foundation);

    /// <summary>True where the rows go around.</summary>
    internal bool Around => (LastRow?.Heading.Kind ?? Below?.Kind) == RowKind.Round || LastRow is null && Below?.Runs is [{ Unit: [{ Kind: CellKind.Ring }, ..] }, ..];

    /// <summary>Reads and works the words above a line. Never throws on any text.</summary>
    public static RowsAbove Of(string text)
    {
        Pattern pattern = PatternReader.Read(text);
        EquatableArray<WorkedPiece> pieces = PatternWorker.Work(pattern, 0).Fabric.Pieces;
        return new RowsAbove(text, pattern, pieces.Count == 0 ? null : pieces[pieces.Count - 1]);
    }
}
