using System.IO.Compression;
using System.Runtime.InteropServices;
using System.Text.Json;
using PatternStudio.Craft.Charting;
using PatternStudio.Craft.Working;

namespace PatternStudio.Publishing.Scenes;

/// <summary>
/// Writes a drawing for a canvas: what is drawn alike is written once, and each stitch says which form stands where and which words made it. 40 000 single crochet
/// take less than a tenth of what the same drawing takes as SVG.
/// </summary>
/// <remarks>
/// Gzip of: the length of the head in bytes (a 32-bit number, as all that follow are, lowest byte first), the head as JSON (<see cref="SceneHead"/>), then numbers one after the
/// other: for all stitches their form, x, y, first and last character of their words, name and place in the row; where each form begins among the strokes, and one more; the
/// strokes of all forms; the marks of all rows. Lengths are hundredths of a stitch width. Strokes are written by <see cref="SceneStrokes"/>.
/// </remarks>
public static class ScenePainter
{
    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web);

    /// <summary>Writes a drawing.</summary>
    /// <param name="drawing">The chart.</param>
    /// <param name="fabric">What was drawn: it tells which words call for a row, and how many stitches it has.</param>
    public static byte[] Paint(Drawing drawing, Fabric fabric)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        ArgumentNullException.ThrowIfNull(fabric);
        var strokes = new SceneStrokes();
        var forms = new SceneForms();
        var names = new Interned();
        var stitches = new SceneStitches(drawing.Rows.Sum(row => row.Symbols.Count));
        var marks = new List<int>();
        var rows = new List<SceneRow>();
        foreach (DrawnRow row in drawing.Rows)
        {
            int first = stitches.Count;
            foreach (Symbol symbol in row.Symbols) stitches.Add(symbol, strokes, forms, names);
            int from = marks.Count;
            foreach (Shape mark in row.Marks) strokes.Add(mark, 0, 0, marks);
            rows.Add(SceneRow.Of(row, WorkedAs(row, fabric)) with { First = first, Count = stitches.Count - first, MarksFrom = from, MarksTo = marks.Count });
        }
        Box box = drawing.Bounds;
        var head = new SceneHead(
            drawing.Title, drawing.Description, [box.Left, box.Top, box.Right, box.Bottom], drawing.IsOverview, rows, names.All, strokes.Texts.All, strokes.Inks.All,
            stitches.Count, forms.Count, forms.Strokes.Count, marks.Count);
        return Pack(head, [.. stitches.Columns, [.. forms.Starts], [.. forms.Strokes], [.. marks]]);
    }

    private static WorkedRow? WorkedAs(DrawnRow row, Fabric fabric) =>
        row.Piece < fabric.Pieces.Count && row.Row < fabric.Pieces[row.Piece].Rows.Count ? fabric.Pieces[row.Piece].Rows[row.Row] : null;

    private static byte[] Pack(SceneHead head, int[][] numbers)
    {
        using var packed = new MemoryStream();
        using (var gzip = new GZipStream(packed, CompressionLevel.Fastest))
        {
            byte[] words = JsonSerializer.SerializeToUtf8Bytes(head, Options);
            int whole = (words.Length + 3) / 4 * 4;
            gzip.Write(BitConverter.GetBytes(whole));
            gzip.Write(words);
            for (int i = words.Length; i < whole; i++) gzip.WriteByte((byte)' ');
            foreach (int[] column in numbers) gzip.Write(MemoryMarshal.AsBytes(column.AsSpan()));
        }
        return packed.ToArray();
    }
}
