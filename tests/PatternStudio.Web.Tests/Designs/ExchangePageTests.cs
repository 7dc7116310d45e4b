using System.IO.Compression;
using System.Text;
using Bunit;
using Microsoft.AspNetCore.Components.Forms;
using PatternStudio.Studio.Designs;
using PatternStudio.Web.Features.Designs.Exchange;

namespace PatternStudio.Web.Tests.Designs;

/// <summary>Files of every kind are brought in, judged one by one, and can be taken back.</summary>
public sealed class ExchangePageTests : StudioPageTest
{
    private const string Cowl = "Eelgrass cowl\n\nCh 9.\nRow 1: Sc in 2nd ch from hook and in each ch across. (8 sc)";

    [Fact]
    public async Task Designs_that_were_taken_in_by_mistake_are_taken_off_the_shelf_at_once_and_no_others()
    {
        await Desk.CreateAsync(Caller, "There before", "Ch 5.");
        IRenderedComponent<ExchangePage> page = Render<ExchangePage>();
        Bring(page, ("cowl.txt", Cowl), ("mitts.txt", Cowl.Replace("cowl", "mitts", StringComparison.Ordinal)));
        page.WaitForAssertion(() => Assert.Equal("2 of 2 files can be taken", page.Find("section.report h2").TextContent));
        page.Button("Take 2 designs in").Click();
        page.WaitForAssertion(() => Assert.Contains("2 of 2 files were taken in.", page.Markup, StringComparison.Ordinal));

        page.Button("Take these 2 designs off the shelf again").Click();

        page.WaitForAssertion(() => Assert.Contains("2 designs were taken off the shelf again. They lie among the deleted ones.", page.Markup, StringComparison.Ordinal));
        Assert.Equal(["There before"], (await Library.ListAsync(Caller, new())).Designs.Select(design => design.Title));
        Assert.Equal(2, (await Library.ListAsync(Caller, new DesignQuery { Deleted = true })).Total);
        Assert.DoesNotContain(page.FindAll("button"), button => button.TextContent.Contains("off the shelf", StringComparison.Ordinal));
    }

    [Fact]
    public async Task What_was_taken_before_it_was_stopped_can_be_taken_back_too()
    {
        IRenderedComponent<ExchangePage> page = Render<ExchangePage>();
        Bring(page, [.. Enumerable.Range(1, 300).Select(number => ($"{number}.txt", Cowl.Replace("cowl", $"cowl {number}", StringComparison.Ordinal)))]);
        page.WaitForAssertion(() => Assert.NotEmpty(page.FindAll("section.report h2")), TimeSpan.FromSeconds(60));
        Task taking = page.Button("Take 300 designs in").ClickAsync();
        page.WaitForAssertion(() => page.Button("Stop"), TimeSpan.FromSeconds(30));
        page.Button("Stop").Click();
        await taking;

        page.WaitForAssertion(() => Assert.Contains("Stopped: ", page.Find(".notice").TextContent, StringComparison.Ordinal), TimeSpan.FromSeconds(60));
        int there = (await Library.ListAsync(Caller, new())).Total;
        Assert.InRange(there, 0, 299);
        if (there > 0) await page.FindAll(".notice button").Single().ClickAsync();
        Assert.Equal(0, (await Library.ListAsync(Caller, new())).Total);
    }

    /// <summary>Ten million zeros pack to ten thousand bytes: a thousand to one.</summary>
    [Fact]
    public void Zips_that_are_broken_or_made_to_fill_a_memory_are_told_by_name()
    {
        IRenderedComponent<ExchangePage> page = Render<ExchangePage>();
        page.FindComponents<InputFile>()[0].UploadFiles(
            InputFileContent.CreateFromBinary(Zip(("bomb.txt", new byte[10_000_000])), "bomb.zip"),
            InputFileContent.CreateFromBinary("no zip"u8.ToArray(), "torn.zip"),
            InputFileContent.CreateFromText(Cowl, "cowl.txt"),
            InputFileContent.CreateFromBinary("%PDF-1.7"u8.ToArray(), "leaflet.pdf"),
            InputFileContent.CreateFromText("", "empty.txt"));

        page.WaitForAssertion(() => Assert.Equal("1 of 5 files can be taken", page.Find("section.report h2").TextContent));
        string[] rows = [.. page.FindAll("section.report tbody tr").Select(row => row.Reads())];
        Assert.Contains(rows, row => row.StartsWith("bomb.zip", StringComparison.Ordinal) && row.Contains("Not taken", StringComparison.Ordinal));
        Assert.Contains(rows, row => row.StartsWith("torn.zip", StringComparison.Ordinal) && row.Contains("damaged or no zip at all", StringComparison.Ordinal));
        Assert.Contains(rows, row => row.StartsWith("leaflet.pdf", StringComparison.Ordinal) && row.Contains("It is a PDF, not a text.", StringComparison.Ordinal));
        Assert.Contains(rows, row => row.StartsWith("empty.txt", StringComparison.Ordinal) && row.Contains("Not taken", StringComparison.Ordinal));
    }

    [Fact]
    public async Task An_archive_that_is_wrong_anywhere_brings_nothing_and_says_where()
    {
        IRenderedComponent<ExchangePage> page = Render<ExchangePage>();
        page.FindComponents<InputFile>()[0].UploadFiles(InputFileContent.CreateFromBinary(Zip(("archive.json", "{\"format\":\"pattern-studio-archive\",\"layout\":1}"u8.ToArray())), "studio.zip"));

        page.WaitForAssertion(() => Assert.Contains("yarns.json", page.Find("[role=alert]").TextContent, StringComparison.Ordinal));
        Assert.Equal(0, (await Library.ListAsync(Caller, new())).Total);
    }

    [Fact]
    public void Script_in_a_text_or_a_files_name_stays_words()
    {
        IRenderedComponent<ExchangePage> page = Render<ExchangePage>();
        Bring(page, ("<img src=x onerror=alert(1)>.txt", "<script>alert(1)</script>\n\nCh 9."));

        page.WaitForAssertion(() => Assert.NotEmpty(page.FindAll("section.report tbody tr")));
        Assert.Empty(page.FindAll("script, section.report img"));
    }

    [Fact]
    public void A_table_of_yarns_says_what_is_wrong_in_each_line()
    {
        IRenderedComponent<ExchangePage> page = Render<ExchangePage>();
        page.FindComponents<InputFile>()[2].UploadFiles(InputFileContent.CreateFromText("Yarn,Metres,Grams\nMarram Dune,125,50\n,3,4\nMarram Tuft,many,50\n", "yarns.csv"));

        page.WaitForAssertion(() => Assert.Equal("1 of 3 lines can be taken", page.Find("section.report h2").TextContent));
        Assert.Equal(2, page.FindAll(".badge-warning").Count);
        page.Button("Take 1 yarn in").Click();
        page.WaitForAssertion(() => Assert.Empty(page.FindAll("section.report")));
    }

    [Fact]
    public void A_table_that_is_none_is_told()
    {
        IRenderedComponent<ExchangePage> page = Render<ExchangePage>();
        page.FindComponents<InputFile>()[2].UploadFiles(InputFileContent.CreateFromBinary([0x89, 0x50, 0x4E, 0x47, 0, 0, 1, 2], "picture.csv"));

        page.WaitForAssertion(() => Assert.NotEmpty(page.Find("[role=alert]").TextContent));
    }

    private static void Bring(IRenderedComponent<ExchangePage> page, params (string Name, string Words)[] files) =>
        page.FindComponents<InputFile>()[0].UploadFiles([.. files.Select(file => InputFileContent.CreateFromText(file.Words, file.Name))]);

    private static byte[] Zip(params (string Name, byte[] Content)[] files)
    {
        using var zip = new MemoryStream();
        using (var archive = new ZipArchive(zip, ZipArchiveMode.Create, leaveOpen: true, Encoding.UTF8))
            foreach ((string name, byte[] content) in files)
            {
                using Stream entry = archive.CreateEntry(name).Open();
                entry.Write(content);
            }

        return zip.ToArray();
    }
}
