using PatternStudio.Craft.Charting;

namespace PatternStudio.Publishing.Scenes;

/// <summary>Writes strokes as numbers: what it is, then its lengths in hundredths of a stitch width from a given place.</summary>
internal sealed class SceneStrokes
{
    /// <summary>Hundredths of a stitch width: finer than any screen shows.</summary>
    public const double Unit = 100;

    private enum Kind { Line, Curve, Oval, Dot, Block, Patch, Words }

    public Interned Texts { get; } = new();

    public Interned Inks { get; } = new();

    /// <param name="x">The place that lengths are counted from.</param>
    public void Add(Shape shape, int x, int y, List<int> into)
    {
        switch (shape)
        {
            case Line line: into.Add((int)Kind.Line); At(line.From); At(line.To); break;
            case Curve curve: into.Add((int)Kind.Curve); At(curve.From); At(curve.Toward); At(curve.To); break;
            case Oval { Filled: true } dot: into.Add((int)Kind.Dot); At(dot.Centre); into.Add(Of(dot.Along)); break;
            case Oval oval: into.Add((int)Kind.Oval); At(oval.Centre); into.AddRange([Of(oval.Along), Of(oval.Across), (int)Math.Round(oval.Turn)]); break;
            case Block block: into.Add((int)Kind.Block); At(new Point(block.Area.Left, block.Area.Top)); At(new Point(block.Area.Right, block.Area.Bottom)); break;
            case Patch patch:
                into.AddRange([(int)Kind.Patch, Inks.Of(patch.Hex), patch.Corners.Count]);
                foreach (Point corner in patch.Corners) At(corner);
                break;
            case Words words:
                into.Add((int)Kind.Words);
                At(words.At);
                into.AddRange([Of(words.Size), (int)words.Anchor, Texts.Of(words.Text), words.Ink is null ? -1 : Inks.Of(words.Ink)]);
                break;
        }

        void At(Point at) => into.AddRange([Of(at.X) - x, Of(at.Y) - y]);
    }

    public static int Of(double stitches) => (int)Math.Round(stitches * Unit);
}

/// <summary>Words that come again and again, each kept once.</summary>
internal sealed class Interned
{
    private readonly Dictionary<string, int> known = [];
    private readonly List<string> all = [];

    public IReadOnlyList<string> All => all;

    public int Of(string words)
    {
        if (known.TryGetValue(words, out int place)) return place;
        known[words] = all.Count;
        all.Add(words);
        return all.Count - 1;
    }
}
