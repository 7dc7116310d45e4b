using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Cli.Printing;

/// <summary>Writes a checked pattern for a reader: its terms, a table of rows for every size, the findings, a closing line.</summary>
internal static class CheckPrinter
{
    public static void Print(CheckedPattern found, string name, TextWriter output)
    {
        output.WriteLine(Terms(found.Pattern.Terms));
        foreach (CheckedSize size in found.Sizes)
        {
            output.WriteLine();
            if (size.Name.Length > 0) output.WriteLine($"Size {size.Name}");
            RowTable.Print(size, output);
        }

        foreach (Finding finding in found.Findings)
        {
            output.WriteLine();
            FindingPrinter.Print(finding, found.Pattern.Source, name, output);
        }

        output.WriteLine();
        output.WriteLine(Closing(found.Findings, found.Sizes.All(size => size.Read.Rows > 0 && size.Read.Checked == size.Read.Rows)));
    }

    private static string Terms(TermsDecision terms)
    {
        string whose = terms.Terminology == Terminology.Us ? "US terms" : "UK terms";
        return terms.Origin switch
        {
            TermsOrigin.Told => $"Read in {whose}, as told.",
            TermsOrigin.Stated => $"Read in {whose}, as the pattern states.",
            TermsOrigin.Found => $"Read in {whose}, found from its words.",
            _ => $"Read in {whose}; the pattern does not say which it uses.",
        };
    }

    private static string Closing(EquatableArray<Finding> findings, bool whole)
    {
        if (findings.Count == 0) return whole ? "Nothing to correct was found." : "Nothing to correct was found in what was checked; not all rows were.";
        string[] counts =
        [
            Count(findings, Severity.Error, "error"), Count(findings, Severity.Warning, "warning"), Count(findings, Severity.Note, "note"),
        ];
        return string.Join(", ", counts.Where(count => count.Length > 0)) + ".";
    }

    private static string Count(EquatableArray<Finding> findings, Severity severity, string word)
    {
        int count = findings.Count(finding => finding.Severity == severity);
        return count == 0 ? "" : $"{count} {word}{(count == 1 ? "" : "s")}";
    }
}
