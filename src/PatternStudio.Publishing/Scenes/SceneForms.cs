using PatternStudio.Craft.Charting;

namespace PatternStudio.Publishing.Scenes;

/// <summary>The forms of stitches, each kept once: in a straight cloth every single crochet has the same.</summary>
internal sealed class SceneForms
{
    private readonly Dictionary<int[], int> known = new(new SameNumbers());

    public List<int> Starts { get; } = [0];

    public List<int> Strokes { get; } = [];

    public int Count => Starts.Count - 1;

    public int Of(int[] strokes)
    {
        if (known.TryGetValue(strokes, out int form)) return form;
        known[strokes] = Count;
        Strokes.AddRange(strokes);
        Starts.Add(Strokes.Count);
        return Count - 1;
    }

    private sealed class SameNumbers : IEqualityComparer<int[]>
    {
        public bool Equals(int[]? one, int[]? other) => one.AsSpan().SequenceEqual(other);

        public int GetHashCode(int[] numbers)
        {
            var hash = new HashCode();
            foreach (int number in numbers) hash.Add(number);
            return hash.ToHashCode();
        }
    }
}

/// <summary>The stitches of a scene, in columns: alike numbers beside each other pack well.</summary>
internal sealed class SceneStitches(int most)
{
    private readonly int[][] columns = [.. Enumerable.Range(0, 7).Select(_ => new int[most])];
    private readonly List<int> strokes = [];

    public int Count { get; private set; }

    public IEnumerable<int[]> Columns => columns;

    public void Add(Symbol symbol, SceneStrokes writer, SceneForms forms, Interned names)
    {
        Box box = symbol.Shapes.Aggregate(Box.Empty, (all, shape) => all.With(shape.Bounds));
        (int x, int y) = (SceneStrokes.Of((box.Left + box.Right) / 2), SceneStrokes.Of((box.Top + box.Bottom) / 2));
        strokes.Clear();
        foreach (Shape shape in symbol.Shapes) writer.Add(shape, x, y, strokes);
        int[] row = [forms.Of([.. strokes]), x, y, symbol.Source.Start, symbol.Source.End, names.Of(symbol.Name), (int)symbol.Cell];
        for (int i = 0; i < row.Length; i++) columns[i][Count] = row[i];
        Count++;
    }
}
