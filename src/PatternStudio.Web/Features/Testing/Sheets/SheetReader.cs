using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Web.Features.Testing.Sheets;

/// <summary>Lays a checked pattern out as a tester reads it. Text stays text: nothing in it becomes markup.</summary>
internal static class SheetReader
{
    /// <param name="pattern">In the terms that it is to be read in.</param>
    /// <param name="size">0-based; a size that is not there is the first.</param>
    public static Sheet Read(CheckedPattern pattern, int size)
    {
        int shown = size >= 0 && size < pattern.Sizes.Count ? size : 0;
        CheckedSize worked = pattern.Sizes[shown];
        ILookup<int, RowReport> rows = worked.Rows.ToLookup(row => row.Line);
        SourceText source = pattern.Pattern.Source;
        var words = new LineWords(pattern.Sizes.Count, shown);
        bool severalPieces = RowNames.NeedPieces(worked.Rows);
        var blocks = new List<SheetBlock>();
        for (int line = 1; line <= source.LineCount; line++)
            if (Block(source.Slice(source.Line(line)).Trim(), [.. rows[line]], words, severalPieces) is { } block)
                blocks.Add(block);
        if (blocks is [{ Kind: SheetBlockKind.Heading, Level: 1 }, ..]) blocks.RemoveAt(0);
        Terminology terms = pattern.Pattern.Terms.Terminology;
        return new Sheet(
            [.. pattern.Sizes.Select(it => it.Name)], shown, terms == Terminology.Uk, blocks, [.. Stitches(pattern)],
            worked.Fabric.Pieces.Any(piece => !piece.Rows.IsEmpty));
    }

    private static SheetBlock? Block(string line, RowReport[] rows, LineWords words, bool severalPieces)
    {
        if (line.Length == 0) return null;
        if (rows.Length > 0)
            return new SheetBlock(SheetBlockKind.Row, 0, words.DivideRow(Item(line)))
            {
                Row = RowNames.Of(rows, severalPieces),
                Times = rows.Length,
                Counted = rows[^1].Stated is null ? rows[^1].Stitches : null,
            };
        int level = line.TakeWhile(letter => letter == '#').Count();
        if (level is > 0 and < 7) return new SheetBlock(SheetBlockKind.Heading, Math.Min(level, 4), [new SheetWords(line[level..].Trim(), false, SizeMark.None)]);
        string item = Item(line);
        return new SheetBlock(item.Length < line.Length ? SheetBlockKind.Item : SheetBlockKind.Words, 0, words.Divide(item));
    }

    private static string Item(string line) => line is ['-' or '•', ' ', ..] ? line[2..].TrimStart() : line;

    private static IEnumerable<NamedStitch> Stitches(CheckedPattern pattern) =>
        from stitch in UsedStitches.Of(pattern.Pattern)
        where stitch is { Told: null, Names.Count: > 1 }
        select new NamedStitch(stitch.Names[0], stitch.Names[1]);
}
