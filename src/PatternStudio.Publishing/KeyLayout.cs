using PatternStudio.Craft.Charting;
using PatternStudio.Craft.Charting.InSpace;
using PatternStudio.Craft.Text;

namespace PatternStudio.Publishing;

/// <summary>The key, the tones and the notes, in lines under the chart.</summary>
internal sealed record KeyLayout(Box Bounds, EquatableArray<Shape> Symbols, EquatableArray<(RowTone Tone, EquatableArray<Shape> Shapes)> Tones)
{
    private const double Size = 0.9;
    private const double Gap = 0.8;
    private const double SymbolRoom = 4;

    public static KeyLayout Under(Drawing drawing)
    {
        double left = drawing.Bounds.Left + 0.5;
        double y = drawing.Bounds.Bottom + 0.5;
        var shapes = new List<Shape>();
        if (!drawing.Key.IsEmpty)
        {
            shapes.Add(new Words(new Point(left, y + (Size / 2)), drawing.KeyTitle, Size, Anchor.Start));
            y += Size + Gap;
        }
        foreach (KeyEntry entry in drawing.Key) y = AddEntry(shapes, entry, left, y);
        foreach (ChartColour colour in drawing.Colours)
        {
            var area = new Box(left + 1.3, y, left + 2.7, y + Size);
            shapes.Add(new Patch([new Point(area.Left, area.Top), new Point(area.Right, area.Top), new Point(area.Right, area.Bottom), new Point(area.Left, area.Bottom)], colour.Hex));
            shapes.Add(new Words(new Point((area.Left + area.Right) / 2, y + (Size / 2)), colour.Letter, Size * 0.7) { Ink = colour.Ink });
            shapes.Add(Text(NameOf(colour), left, y + (Size / 2)));
            y += Size + (Gap * 0.6);
        }
        var tones = new List<(RowTone, EquatableArray<Shape>)>();
        foreach (ToneMeaning tone in drawing.Tones)
        {
            var at = new Point(left + (SymbolRoom / 2), y + (Size / 2));
            tones.Add((tone.Tone, [new Line(at - new Point(1.2, 0), at + new Point(1.2, 0)), Text(tone.Text, left, at.Y)]));
            y += Size + Gap;
        }
        foreach (string note in drawing.Notes.Concat(drawing.Flatness.Where(flat => flat.Text.Length > 0).Select(Lies)).SelectMany(note => Wrapped(note, Math.Max(40, (int)(drawing.Bounds.Width / (Size * 0.6))))))
        {
            shapes.Add(new Words(new Point(left, y + (Size / 2)), note, Size, Anchor.Start));
            y += Size + (Gap / 2);
        }
        Box all = shapes.Concat(tones.SelectMany(tone => tone.Item2)).Aggregate(drawing.Bounds, (box, shape) => box.With(shape.Bounds));
        return new KeyLayout(all.With(new Point(left, y + 0.5)), shapes.ToEquatableArray(), tones.ToEquatableArray());
    }

    /// <summary>'A: Tideline Cotton, slate'.</summary>
    private static string NameOf(ChartColour colour) => (colour.Name.Length == 0 ? "the yarn" : colour.Name) + (colour.Yarn.Length == 0 ? "" : $": {colour.Yarn}");

    public void Paint(SvgWriter svg)
    {
        svg.OpenGroup("-key", "key", "Key");
        svg.Shapes(Symbols);
        svg.CloseGroup();
        foreach ((RowTone tone, EquatableArray<Shape> shapes) in Tones)
        {
            svg.OpenGroup(SvgStyle.ClassOf(tone));
            svg.Shapes(shapes);
            svg.CloseGroup();
        }
    }

    private static string Lies(PieceFlatness flat) => flat.Piece.Length == 0 ? flat.Text : $"{flat.Piece}: {flat.Text}";

    private static double AddEntry(List<Shape> shapes, KeyEntry entry, double left, double y)
    {
        Box symbol = entry.Shapes.Aggregate(Box.Empty, (box, shape) => box.With(shape.Bounds));
        double height = Math.Max(Size, symbol.Height);
        var by = new Point(left + (SymbolRoom / 2) - ((symbol.Left + symbol.Right) / 2), y + (height / 2) - ((symbol.Top + symbol.Bottom) / 2));
        shapes.AddRange(entry.Shapes.Select(shape => shape.Moved(by)));
        string name = entry.OtherName.Length == 0 ? entry.Name : $"{entry.Name}  ({entry.OtherName})";
        shapes.Add(Text(name, left, y + (height / 2)));
        return y + height + (Gap * 0.6);
    }

    private static Words Text(string text, double left, double y) => new(new Point(left + SymbolRoom + 0.5, y), text, Size, Anchor.Start);

    private static IEnumerable<string> Wrapped(string note, int letters)
    {
        string line = "";
        foreach (string word in note.Split(' '))
        {
            if (line.Length > 0 && line.Length + word.Length >= letters)
            {
                yield return line;
                line = "";
            }
            line += line.Length == 0 ? word : " " + word;
        }
        yield return line;
    }
}
