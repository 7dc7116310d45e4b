using PatternStudio.Craft.Charting;
using PatternStudio.Publishing;

namespace PatternStudio.Cli;

/// <summary>Where a chart is written to, and as what: that is told by the ending of the file's name.</summary>
/// <param name="Path">The file; - for the output.</param>
internal sealed record ChartFile(string Path, Func<Drawing, byte[]> Paint)
{
    private const string Output = "-";

    /// <exception cref="Refusal">No file was named, or its ending is none that charts are written as.</exception>
    public static ChartFile Of(string? path)
    {
        if (string.IsNullOrEmpty(path)) throw new Refusal("Name the file to write: chart FILE -o OUT.svg, or OUT.png, or OUT.pdf.");
        return new ChartFile(path, System.IO.Path.GetExtension(path).ToLowerInvariant() switch
        {
            ".png" => drawing => PngPainter.Paint(drawing),
            ".pdf" => PdfPainter.Paint,
            ".svg" => Svg,
            _ when path == Output => Svg,
            _ => throw new Refusal($"Charts are written as .svg, .png or .pdf; '{path}' ends in none of these."),
        });
    }

    /// <exception cref="Refusal">The file can't be written.</exception>
    public void Write(Drawing drawing, Terminal terminal)
    {
        if (Path == Output)
        {
            terminal.Output.WriteLine(SvgPainter.Paint(drawing));
            return;
        }

        byte[] painted = Paint(drawing);
        try
        {
            File.WriteAllBytes(Path, painted);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            throw new Refusal($"'{Path}' can't be written: {problem.Message}");
        }
    }

    private static byte[] Svg(Drawing drawing) => System.Text.Encoding.UTF8.GetBytes(SvgPainter.Paint(drawing));
}
