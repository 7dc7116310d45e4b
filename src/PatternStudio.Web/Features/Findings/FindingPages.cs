using Markdig;
using Microsoft.AspNetCore.Components;

namespace PatternStudio.Web.Features.Findings;

/// <summary>The pages of docs/findings, which the program carries with it: what each finding means and how to mend it.</summary>
internal static class FindingPages
{
    private const string Folder = "findings/";

    /// <summary>The page of a finding.</summary>
    /// <param name="code">'count-differs'.</param>
    /// <returns>Null where there is no such code.</returns>
    public static MarkupString? Of(string code)
    {
        using Stream? page = typeof(FindingPages).Assembly.GetManifestResourceStream($"{Folder}{code}.md");
        if (page is null) return null;
        using var reader = new StreamReader(page);
        return new MarkupString(Markdown.ToHtml(reader.ReadToEnd()));
    }
}
