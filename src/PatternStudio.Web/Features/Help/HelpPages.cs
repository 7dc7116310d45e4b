using Markdig;
using Markdig.Extensions.Tables;
using Markdig.Renderers.Html;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace PatternStudio.Web.Features.Help;

/// <summary>A page of help, ready to show.</summary>
/// <param name="Title">Its first heading.</param>
/// <param name="Html">All below that heading. It comes from the program's own files, never from a designer.</param>
public sealed record HelpText(string Title, string Html);

/// <summary>The documents that come with the program, as pages: the same files that one reads beside the sources.</summary>
public static class HelpPages
{
    private const string Root = "help/";
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().UsePipeTables().DisableHtml().Build();

    /// <summary>A page by its address below 'help/', such as 'findings/count-differs'; null where there is none.</summary>
    public static HelpText? Find(string address)
    {
        foreach (string name in (string[])[$"{address}.md", $"{address}/README.md"])
            if (typeof(HelpPages).Assembly.GetManifestResourceStream(Root + name.ToLowerInvariant()) is { } file)
                using (var reader = new StreamReader(file))
                    return Read(reader.ReadToEnd(), name.Contains('/', StringComparison.Ordinal) ? name[..name.LastIndexOf('/')] : "");
        return null;
    }

    private static HelpText Read(string markdown, string folder)
    {
        MarkdownDocument document = Markdown.Parse(markdown, Pipeline);
        var heading = document.OfType<HeadingBlock>().FirstOrDefault();
        string title = Spoken(heading?.Inline?.FirstChild?.ToString() ?? "");
        if (heading is not null) document.Remove(heading);
        foreach (LinkInline link in document.Descendants<LinkInline>().Where(link => link.Url is { } url && !url.Contains(':', StringComparison.Ordinal)))
            link.Url = Address(link.Url!, folder);
        foreach (Table table in document.Descendants<Table>())
        {
            table.GetAttributes().AddClass("plain");
            Label(table);
        }

        return new HelpText(title, document.ToHtml(Pipeline));
    }

    /// <summary>On a phone each row stands as a list, and its cells say themselves what the head of their column would.</summary>
    private static void Label(Table table)
    {
        string[] heads = [.. table.OfType<TableRow>().First().OfType<TableCell>().Select(cell => string.Concat(cell.Descendants<LiteralInline>()))];
        foreach (TableRow row in table.OfType<TableRow>().Skip(1))
            foreach ((TableCell cell, string head) in row.OfType<TableCell>().Zip(heads)) cell.GetAttributes().AddProperty("data-says", head);
    }

    /// <summary>'count-differs', the short name of a finding, is 'Count differs' at the head of a page.</summary>
    private static string Spoken(string title) =>
        title.Length == 0 || title.Contains(' ', StringComparison.Ordinal) ? title : char.ToUpperInvariant(title[0]) + title[1..].Replace('-', ' ');

    /// <summary>'count-differs.md' in the folder 'findings' is the page 'help/findings/count-differs'.</summary>
    private static string Address(string file, string folder)
    {
        string path = new Uri(new Uri($"file:///{(folder.Length > 0 ? folder + "/" : "")}"), file).AbsolutePath.TrimStart('/');
        path = path.EndsWith("/README.md", StringComparison.OrdinalIgnoreCase) ? path[..^"/README.md".Length] : path;
        return Root + (path.EndsWith(".md", StringComparison.Ordinal) ? path[..^3] : path);
    }
}
