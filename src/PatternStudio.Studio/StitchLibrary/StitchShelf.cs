using System.Collections.Concurrent;
using System.Globalization;
using System.Reflection;
using PatternStudio.Craft.Checking;
using PatternStudio.Studio.Designs;

namespace PatternStudio.Studio.StitchLibrary;

/// <summary>
/// The stitch patterns that come with the program: common knowledge of the trade in our own words, a plain text file each
/// (name, kind, difficulty, other names, multiple, a sentence; then '--' and the pattern).
/// </summary>
public static class StitchShelf
{
    private const string Folder = "Stitches/";

    /// <summary>Pictures show so many repeats: enough to see how they meet.</summary>
    private const int PictureRepeats = 3;

    /// <summary>Of a stitch whose repeat is narrower than this, more repeats are shown.</summary>
    private const int PictureStitches = 13;

    private static readonly ConcurrentDictionary<string, byte[]?> Pictures = [];

    /// <summary>All of them, by kind and name.</summary>
    public static IReadOnlyList<LibraryStitch> All { get; } =
        [.. ReadAll().OrderBy(stitch => stitch.Kind).ThenBy(stitch => stitch.Difficulty).ThenBy(stitch => stitch.Name, StringComparer.Ordinal)];

    /// <summary>The stitch of this key; null for none.</summary>
    public static LibraryStitch? Find(string key) => All.FirstOrDefault(stitch => stitch.Key == key);

    /// <summary>Those whose name, kind, other names or description hold all words of a search.</summary>
    public static IEnumerable<LibraryStitch> Search(string words, StitchKind? kind = null)
    {
        string[] asked = (words ?? "").Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        return All.Where(stitch => (kind is null || stitch.Kind == kind) && asked.All(word =>
            $"{stitch.Name} {stitch.Kind} {stitch.Also} {stitch.About}".Contains(word, StringComparison.OrdinalIgnoreCase)));
    }

    /// <summary>Its small chart as a PNG, drawn once.</summary>
    public static byte[]? Picture(LibraryStitch stitch)
    {
        ArgumentNullException.ThrowIfNull(stitch);
        return Pictures.GetOrAdd(stitch.Key, _ =>
            SmallChart.Draw(PatternCheck.Check(stitch.Write(Math.Max(PictureRepeats, PictureStitches / stitch.StitchesEach)))));
    }

    private static IEnumerable<LibraryStitch> ReadAll()
    {
        Assembly here = typeof(StitchShelf).Assembly;
        foreach (string name in here.GetManifestResourceNames().Where(name => name.StartsWith(Folder, StringComparison.Ordinal)))
        {
            using var reader = new StreamReader(here.GetManifestResourceStream(name)!);
            yield return Parse(name[Folder.Length..^".txt".Length], reader.ReadToEnd().ReplaceLineEndings("\n"));
        }
    }

    /// <exception cref="FormatException">The file lacks a line that every stitch has.</exception>
    internal static LibraryStitch Parse(string key, string file)
    {
        if (file.Split("\n--\n", 2) is not [var head, var template]) throw new FormatException($"The stitch '{key}' has no line '--' before its pattern.");
        Dictionary<string, string> lines = head.Split('\n').Select(line => line.Split(": ", 2)).ToDictionary(pair => pair[0], pair => pair[^1]);
        return new LibraryStitch(
            key, Line("Name"), Enum.Parse<StitchKind>(Line("Kind"), ignoreCase: true), Line("Also"),
            int.Parse(Line("Difficulty"), CultureInfo.InvariantCulture), Line("Multiple"), Line("About"))
        {
            Template = template.Trim(),
        };

        string Line(string name) => lines.TryGetValue(name, out string? found) ? found : throw new FormatException($"The stitch '{key}' has no line '{name}:'.");
    }
}
