using System.Text.RegularExpressions;
using PatternStudio.Craft.Checking;

namespace PatternStudio.Craft.Tests.Checking;

/// <summary>Every finding has a page with an example that raises it and one that mends it; the examples are held to it here.</summary>
public sealed partial class FindingPageTests
{
    private static string Folder { get; } = Repository.Path("docs/findings");

    public static TheoryData<string> Codes => [.. FindingCodes.All];

    [Theory]
    [MemberData(nameof(Codes))]
    public void The_first_example_of_a_page_raises_its_finding_alone(string code) =>
        Assert.Equal([code], PatternCheck.Check(Examples(code)[0]).Findings.Select(finding => finding.Code));

    [Theory]
    [MemberData(nameof(Codes))]
    public void The_second_example_of_a_page_raises_nothing(string code) =>
        Assert.Equal([], PatternCheck.Check(Examples(code)[1]).Findings.Select(finding => finding.Message));

    [Theory]
    [MemberData(nameof(Codes))]
    public void A_page_is_headed_by_its_code_and_says_how_much_it_matters(string code)
    {
        string page = Page(code);
        Assert.StartsWith($"# {code}\n", page, StringComparison.Ordinal);
        Assert.Contains($"**{FindingCodes.SeverityOf(code)}.**", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_page_is_of_a_code_and_the_list_names_them_all()
    {
        string[] pages = [.. Directory.EnumerateFiles(Folder, "*.md").Select(path => Path.GetFileNameWithoutExtension(path)).Where(name => name != "README").Order(StringComparer.Ordinal)];
        Assert.Equal(FindingCodes.All.Order(StringComparer.Ordinal), pages);
        string list = File.ReadAllText(Path.Combine(Folder, "README.md"));
        Assert.All(pages, page => Assert.Contains($"[{page}]({page}.md)", list, StringComparison.Ordinal));
    }

    [Fact]
    public void A_code_is_lower_case_words_with_hyphens() => Assert.All(FindingCodes.All, code => Assert.Matches("^[a-z]+(-[a-z]+)*$", code));

    private static string[] Examples(string code) =>
        [.. Example().Matches(Page(code)).Select(match => match.Groups[1].Value)];

    private static string Page(string code) => File.ReadAllText(Path.Combine(Folder, code + ".md")).ReplaceLineEndings("\n");

    [GeneratedRegex("^```pattern\n(.*?)\n```$", RegexOptions.Singleline | RegexOptions.Multiline)]
    private static partial Regex Example();
}
