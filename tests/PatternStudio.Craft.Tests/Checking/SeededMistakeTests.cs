using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Tests.Checking;

/// <summary>
/// Every right pattern with one mistake put in. Where the mistake changes a count or makes a row unworkable, it must be found, at its row, as one error.
/// </summary>
public sealed class SeededMistakeTests(ITestOutputHelper output)
{
    private sealed record Outcome(MistakeKind Kind, bool Found, bool RightRow, int Errors, string What);

    [Fact]
    public void Mistakes_that_change_a_count_are_found_at_their_row_as_one_error()
    {
        List<Outcome> outcomes = [.. Directory.EnumerateFiles(RightPatterns.Folder, "*.txt").Order(StringComparer.Ordinal).SelectMany(Try)];
        foreach (IGrouping<MistakeKind, Outcome> kind in outcomes.GroupBy(outcome => outcome.Kind).OrderBy(kind => kind.Key)) output.WriteLine(Line(kind.Key.ToString(), [.. kind]));
        output.WriteLine(Line("all", outcomes));
        foreach (Outcome missed in outcomes.Where(outcome => !outcome.Found).Take(60)) output.WriteLine("missed: " + missed.What);
        foreach (Outcome wrong in outcomes.Where(outcome => outcome is { Found: true, RightRow: false }).Take(60)) output.WriteLine("other row: " + wrong.What);
        Assert.InRange(Share(outcomes, outcome => outcome.Found), 0.98, 1);
        List<Outcome> found = [.. outcomes.Where(outcome => outcome.Found)];
        Assert.InRange(Share(found, outcome => outcome.RightRow), 0.95, 1);
        int[] errors = [.. found.Select(outcome => outcome.Errors).Order()];
        Assert.Equal(1, errors[errors.Length / 2]);
        Assert.InRange(errors[errors.Length * 95 / 100], 1, 2);
    }

    private static IEnumerable<Outcome> Try(string path)
    {
        string text = File.ReadAllText(path);
        List<string> right = Totals(PatternCheck.Check(text));
        // Every third mistake keeps the suite quick; the shares are the same with all of them.
        foreach (SeededMistake mistake in SeededMistake.All(text).Where((_, index) => index % 3 == 0))
        {
            CheckedPattern result = PatternCheck.Check(mistake.Edit.ApplyTo(text));
            Finding[] errors = [.. result.Findings.Where(finding => finding.Severity == Severity.Error)];
            if (errors.Length == 0 && Totals(result).SequenceEqual(right)) continue; // it changes no count
            int[] lines = [.. errors.Select(error => result.Pattern.Source.Locate(error.Span.Start).Line)];
            string what = $"{Path.GetFileNameWithoutExtension(path)} line {mistake.Line}: '{text.Substring(mistake.Edit.Span.Start, mistake.Edit.Span.Length)}' to '{mistake.Edit.NewText}' at {mistake.Edit.Span.Start}, errors on {string.Join(',', lines)}";
            yield return new Outcome(mistake.Kind, errors.Length > 0 || NotRead(result), errors.Length == 0 || lines.Contains(mistake.Line) || mistake.InFoundation && lines.Min() - mistake.Line is 1 or 2, Math.Max(1, errors.Length), what);
        }
    }

    private static bool NotRead(CheckedPattern result) => result.Findings.Any(finding => finding.Code is FindingCodes.NotRead or FindingCodes.NotWorked);

    private static List<string> Totals(CheckedPattern result) =>
        [.. result.Sizes.SelectMany(size => size.Rows).Select(row => row.Status == RowStatus.Checked ? $"{row.Stitches}" : "?")];

    private static double Share(List<Outcome> outcomes, Func<Outcome, bool> which) => outcomes.Count == 0 ? 1 : (double)outcomes.Count(which) / outcomes.Count;

    private static string Line(string label, List<Outcome> outcomes) =>
        $"{label,-12} {outcomes.Count,6} mistakes, found {Share(outcomes, o => o.Found):P1}, at the right row {Share([.. outcomes.Where(o => o.Found)], o => o.RightRow):P1}";
}
