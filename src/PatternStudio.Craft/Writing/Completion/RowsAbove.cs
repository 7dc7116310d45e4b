using PatternStudio.Craft.Reading;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Writing.Completion;

/// <summary>What stands above the line that is being written: read and worked once in every size, however much is typed in that line.</summary>
public sealed class RowsAbove
{
    private RowsAbove(string text, Pattern pattern, WorkedPiece? piece, EquatableArray<WorkedRow> belows) => (Text, Pattern, Piece, Belows) = (text, pattern, piece, belows);

    /// <summary>The words above.</summary>
    public string Text { get; }

    internal Pattern Pattern { get; }

    internal Terminology Terms => Pattern.Terms.Terminology;

    /// <summary>The piece that the line goes on with, in the first size; null where nothing is worked yet.</summary>
    internal WorkedPiece? Piece { get; }

    /// <summary>The row that the line's row is worked into in each size, foundations too; empty where it is not known in all, or is not of one kind.</summary>
    internal EquatableArray<WorkedRow> Belows { get; }

    /// <summary>The same in the first size; null where it is not known.</summary>
    internal WorkedRow? Below => Belows.Count == 0 ? null : Belows[0];

    /// <summary>The number that the next row has in all sizes; null where it is not known, or sizes have worked more rows than others.</summary>
    internal int? NextNumber => Below is not { } below || Belows.Any(row => row.Number != below.Number) ? null
        : below.Kind == RowKind.Foundation ? 1 : below.Number + 1;

    /// <summary>How the row below is called: 'Row 3'; 'the row below' where it has another number in each size.</summary>
    internal string LabelBelow => Below is { } below && Belows.All(row => row.Label == below.Label) ? below.Label : "the row below";

    /// <summary>The last entry that is a row.</summary>
    internal RowInstruction? LastRow => Pattern.Pieces.SelectMany(piece => piece.Items).OfType<RowInstruction>().LastOrDefault(row => row.Heading.Kind != RowKind.Foundation);

    /// <summary>True where the rows go around.</summary>
    internal bool Around => (LastRow?.Heading.Kind ?? Below?.Kind) == RowKind.Round || LastRow is null && Below is { IsMagicRing: true };

    /// <summary>Reads and works the words above a line. Never throws on any text.</summary>
    public static RowsAbove Of(string text)
    {
        Pattern pattern = PatternReader.Read(text);
        WorkedPiece?[] pieces = [.. Enumerable.Range(0, pattern.Sizes.Count).Select(size => PatternWorker.Work(pattern, size).Fabric.Pieces is [.., var last] ? last : null)];
        WorkedRow[] belows = [.. pieces.Select(piece => piece is { Rows: { Count: > 0 } rows } ? rows[^1] : null).OfType<WorkedRow>().Where(row => row.Status == RowStatus.Checked)];
        bool known = belows.Length == pieces.Length && belows.All(row => row.Kind == belows[0].Kind);
        return new RowsAbove(text, pattern, pieces[0], known ? belows.ToEquatableArray() : []);
    }
}
