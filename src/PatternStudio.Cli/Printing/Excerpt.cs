using PatternStudio.Craft.Text;

namespace PatternStudio.Cli.Printing;

/// <summary>The line of a finding with its spot underlined; of a long line the stretch around the spot.</summary>
internal static class Excerpt
{
    private const int Width = 96;
    private const int Before = 32;

    public static IEnumerable<string> Of(SourceText source, TextSpan span)
    {
        LinePosition place = source.Locate(span.Start);
        TextSpan line = source.Line(place.Line);
        int start = line.Length <= Width ? line.Start : Math.Max(line.Start, Math.Min(span.Start - Before, line.End - Width));
        int end = Math.Min(line.End, start + Width);
        string left = start > line.Start ? "… " : "";
        string right = end < line.End ? " …" : "";
        string number = place.Line.ToString();
        yield return $"{number} | {left}{source.Slice(TextSpan.FromTo(start, end)).Replace('\t', ' ')}{right}";
        int length = Math.Clamp(span.Length, 1, Math.Max(1, end - span.Start));
        yield return $"{new string(' ', number.Length)} | {new string(' ', left.Length + span.Start - start)}{new string('^', length)}";
    }
}
