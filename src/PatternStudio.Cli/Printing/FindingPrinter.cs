using PatternStudio.Cli.Json;
using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Text;

namespace PatternStudio.Cli.Printing;

/// <summary>Writes a finding: where, what, the line with the spot underlined, the change that mends it.</summary>
internal static class FindingPrinter
{
    public static void Print(Finding finding, SourceText source, string name, TextWriter output)
    {
        LinePosition place = source.Locate(finding.Span.Start);
        string size = finding.Size.Length > 0 ? $", size {finding.Size}" : "";
        output.WriteLine($"{name}:{place.Line}:{place.Column}: {FindingJson.SeverityName(finding.Severity)}{size} ({finding.Code})");
        output.WriteLine($"  {finding.Message}");
        foreach (string line in Excerpt.Of(source, finding.Span)) output.WriteLine("    " + line);
        if (finding.Fix is { } fix) output.WriteLine($"  {Change(fix, source)}");
    }

    private static string Change(TextEdit fix, SourceText source)
    {
        string old = source.Slice(fix.Span);
        if (old.Length == 0) return $"To mend it, add '{fix.NewText.Trim()}' there.";
        return fix.NewText.Length == 0 ? $"To mend it, take out '{old.Trim()}'." : $"To mend it, change '{old}' to '{fix.NewText}'.";
    }
}
