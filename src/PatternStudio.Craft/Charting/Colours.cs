using System.Globalization;
using PatternStudio.Craft.Charting.Layout;
using PatternStudio.Craft.Text;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting;

/// <summary>A yarn colour in a chart: its name in the pattern, its letter, how it looks.</summary>
/// <param name="Name">As the pattern names it: 'A', 'cream'.</param>
/// <param name="Letter">The letter in each stitch, so that nobody needs to see the colour.</param>
/// <param name="Hex">'#rrggbb'.</param>
public sealed record ChartColour(string Name, string Letter, string Hex)
{
    /// <summary>The yarn that it is worked in, for the key; empty where not told.</summary>
    public string Yarn { get; init; } = "";

    /// <summary>Black or white, whichever is read better on it.</summary>
    public string Ink => Luminance(Hex) > 0.36 ? "#000000" : "#ffffff";

    /// <summary>Relative luminance, 0 to 1 (WCAG 2.2).</summary>
    private static double Luminance(string hex)
    {
        if (hex.Length != 7 || !int.TryParse(hex.AsSpan(1), NumberStyles.HexNumber, CultureInfo.InvariantCulture, out int rgb)) return 1;
        return (0.2126 * Linear(rgb >> 16)) + (0.7152 * Linear(rgb >> 8)) + (0.0722 * Linear(rgb));
    }

    private static double Linear(int channel)
    {
        double share = (channel & 255) / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.Pow((share + 0.055) / 1.055, 2.4);
    }
}

/// <summary>The yarn that one of a pattern's colours is worked in.</summary>
/// <param name="Name">The colour's name in the pattern; empty for the yarn that the pattern does not name.</param>
/// <param name="Hex">'#rrggbb'; empty where nobody noted how it looks.</param>
/// <param name="Yarn">The yarn in words, for the key.</param>
public sealed record YarnColour(string Name, string Hex, string Yarn);

/// <summary>Gives the colours of a pattern their letters and, where the yarn's colour is not told, one of ours.</summary>
internal sealed class Colours(EquatableArray<YarnColour> told)
{
    /// <summary>Told apart also by those who see few colours, by their lightness.</summary>
    private static readonly string[] Ours = ["#f2e3c6", "#2f5d8a", "#b5482f", "#7fa650", "#5b3a6b", "#e0b040", "#3f8f8a", "#8a8a8a"];

    private readonly List<ChartColour> known = [];

    public IReadOnlyList<ChartColour> Known => known;

    public ChartColour Of(string name)
    {
        if (known.Find(colour => colour.Name == name) is { } found) return found;
        YarnColour? yarn = told.FirstOrDefault(it => it.Name == name);
        var colour = new ChartColour(name, LetterOf(name), yarn is { Hex.Length: 7 } ? yarn.Hex : Ours[known.Count % Ours.Length]) { Yarn = yarn?.Yarn ?? "" };
        known.Add(colour);
        return colour;
    }

    /// <summary>Its first letter where that is free, else the next free one.</summary>
    private string LetterOf(string name)
    {
        string own = name.Length == 0 ? "A" : name[..1].ToUpperInvariant();
        return Free(own) ? own : Enumerable.Range('A', 26).Select(letter => ((char)letter).ToString()).FirstOrDefault(Free, own);
    }

    private bool Free(string letter) => known.TrueForAll(colour => colour.Letter != letter);
}

/// <summary>Draws a stitch as a patch of its yarn's colour with the colour's letter in it.</summary>
internal sealed class ColourPatches(IReadOnlyList<LaidRow> rows, Colours colours)
{
    private const double LetterSize = 0.6;
    private readonly Standing standing = new(rows);

    /// <summary>The patch of a cell; none for what takes no room.</summary>
    public IEnumerable<Shape> Of(LaidRow row, int at)
    {
        LaidCell cell = row.Cells[at];
        if (cell.Width <= 0 || cell.Cell.Kind is CellKind.Ring or CellKind.FoundationChain || row.IsCentre) yield break;
        ChartColour colour = colours.Of(cell.Cell.Colour);
        Point left = row.Beside(at, -1) is { } before ? cell.Top.Toward(before.Top, 0.5) : cell.Top - (Along(row, at) * (cell.Width / 2));
        Point right = row.Beside(at, 1) is { } after ? cell.Top.Toward(after.Top, 0.5) : cell.Top + (Along(row, at) * (cell.Width / 2));
        double height = Height(cell);
        Point[] corners = [left, right, right - (cell.Up * height), left - (cell.Up * height)];
        yield return new Patch([.. corners], colour.Hex);
        yield return new Words(corners.Aggregate((sum, corner) => sum + corner) * 0.25, colour.Letter, LetterSize) { Ink = colour.Ink };
    }

    private double Height(LaidCell cell)
    {
        Point[] feet = [.. cell.Cell.Feet.Select(foot => standing.Of(foot, cell.Top)).OfType<Point>()];
        return feet.Length == 0 ? Math.Max(0.6, cell.Form.Height) : feet.Average(foot => ((cell.Top - foot).X * cell.Up.X) + ((cell.Top - foot).Y * cell.Up.Y)) is > 0.3 and var height ? height : 0.6;
    }

    private static Point Along(LaidRow row, int at)
    {
        Point way = row.Beside(at, 1) is { } after ? after.Top - row.Cells[at].Top : row.Beside(at, -1) is { } before ? row.Cells[at].Top - before.Top : row.Cells[at].Up.Right();
        return way.Unit();
    }
}
