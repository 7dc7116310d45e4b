using System.IO.Compression;
using System.Text;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Exchange;
using PatternStudio.Studio.Materials;

namespace PatternStudio.Studio.Tests;

/// <summary>Files of all sorts brought in.</summary>
public sealed class ImportTests
{
    private const string Words = "Möwe cloth ½\nCh 21.\nRow 1: Sc in 2nd ch from hook and in each ch across. (20 sc)";

    public static TheoryData<string, byte[]> Encodings => new()
    {
        { "UTF-8", Encoding.UTF8.GetBytes(Words) },
        { "UTF-8 with a mark", [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(Words)] },
        { "UTF-16", [.. Encoding.Unicode.Preamble, .. Encoding.Unicode.GetBytes(Words)] },
        { "UTF-16, the other way round", [.. Encoding.BigEndianUnicode.Preamble, .. Encoding.BigEndianUnicode.GetBytes(Words)] },
        { "UTF-16 without a mark", Encoding.Unicode.GetBytes(Words) },
        { "Latin-1", Encoding.Latin1.GetBytes(Words) },
        { "lines of another system", Encoding.UTF8.GetBytes(Words.Replace("\n", "\r\n")) },
    };

    [Theory]
    [MemberData(nameof(Encodings))]
    public void Every_usual_encoding_is_read(string name, byte[] file)
    {
        Assert.NotEmpty(name);
        Assert.Equal(Words, FileText.Decode(file).Value);
    }

    /// <summary>Windows-1252 has printers' quotes where Latin-1 has control characters (Unicode's mapping table CP1252: 0x93 is U+201C).</summary>
    [Fact]
    public void Printers_quotes_of_the_western_table_are_read() => Assert.Equal("the “chain” é", FileText.Decode([.. "the "u8, 0x93, .. "chain"u8, 0x94, .. " "u8, 0xe9]).Value);

    [Theory]
    [InlineData("%PDF-1.7 …", "a PDF")]
    [InlineData("{\\rtf1 x}", "RTF")]
    [InlineData("   \n ", "empty")]
    [InlineData("a\u0001\u0002\u0003b", "no text")]
    public void What_is_no_text_is_said_to_be_none(string content, string says) =>
        Assert.Contains(says, FileText.Decode(Encoding.UTF8.GetBytes(content)).ToString(), StringComparison.Ordinal);

    [Fact]
    public async Task Many_files_are_looked_through_and_taken_each_with_its_report()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        await studio.NewDesignAsync(caller, "Möwe cloth", Texts.Cloth);
        IncomingFile[] files =
        [
            new("a/moewe.txt", Encoding.UTF8.GetBytes("Möwe cloth\n\nCh 9.\nRow 1: Sc in 2nd ch from hook and in each ch across. (8 sc)")),
            new("b/twin.txt", Encoding.UTF8.GetBytes(Texts.Cloth)),
            new("c/wrack_line-cowl.txt", "> Ch 9.\n> Row 1: Sc in 2nd ch from hook and in each ch across. (8 sc)"u8.ToArray()),
            new("d/paper.pdf", "%PDF-"u8.ToArray()),
            new("e/more.zip", Zip(("x/one.txt", "One\nCh 5."), ("x/.DS_Store", "junk"), ("inner.zip", "PK"))),
        ];

        IReadOnlyList<IncomingText> looked = await studio.Get<TextImport>().LookAsync(caller, files);
        Assert.Equal(1, (await studio.Library.ListAsync(caller, new())).Total);
        Assert.Equal(["Möwe cloth (2)", "", "wrack line cowl", "", "One", ""], looked.Select(text => text.Title));
        Assert.Contains("already, as 'Möwe cloth'", looked[1].Refusal, StringComparison.Ordinal);
        Assert.Contains("Tidied", looked[2].Note, StringComparison.Ordinal);
        Assert.Contains("a zip within a zip", looked[5].Refusal, StringComparison.Ordinal);

        var seen = new List<int>();
        IReadOnlyList<ImportLine> report = await studio.Get<TextImport>().TakeAsync(caller, looked, new Heard(seen));

        Assert.Equal([1, 2, 3, 4, 5, 6], seen);
        Assert.Equal(3, report.Count(line => line.DesignId is not null));
        Assert.Equal((1, 0), (await OneAsync("wrack")));

        async Task<(int Rows, int Errors)> OneAsync(string search)
        {
            DesignSummary line = Assert.Single((await studio.Library.ListAsync(caller, new(search))).Designs);
            return (line.Rows, line.Errors);
        }
    }

    [Fact]
    public async Task Stopped_midway_what_was_taken_is_whole_and_the_rest_is_said_not_to_be()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        using var stop = new CancellationTokenSource();
        IReadOnlyList<IncomingText> looked = await studio.Get<TextImport>().LookAsync(caller, [.. Enumerable.Range(1, 5).Select(i => new IncomingFile($"{i}.txt", Encoding.UTF8.GetBytes($"Cloth no {i}\nCh {i + 5}.")))]);

        IReadOnlyList<ImportLine> report = await studio.Get<TextImport>().TakeAsync(caller, looked, new StopAt(2, stop), stop.Token);

        Assert.Equal([true, true, false, false, false], report.Select(line => line.DesignId is not null));
        Assert.Equal(2, (await studio.Library.ListAsync(caller, new())).Total);
    }

    [Theory]
    [InlineData("../outside.txt")]
    [InlineData("a/../../outside.txt")]
    [InlineData("/etc/motd")]
    [InlineData("C:\\x.txt")]
    public async Task A_zip_that_leaves_its_folder_is_refused(string name)
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        IncomingText looked = Assert.Single(await studio.Get<TextImport>().LookAsync(await studio.NewCallerAsync(), [new IncomingFile("x.zip", Zip((name, "One\nCh 5.")))]));
        Assert.Contains("outside of its own folders", looked.Refusal, StringComparison.Ordinal);
    }

    [Fact]
    public void A_zip_that_unpacks_to_hundreds_of_times_its_size_is_refused_unopened()
    {
        Outcome<PackedFiles> opened = PackedFiles.Open(new MemoryStream(Zip(("bomb.txt", new string('0', 20_000_000)))));
        Assert.Contains("hundreds of times", opened.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_in_a_zip_that_is_too_large_or_cut_off_is_refused()
    {
        byte[] zip = Zip(("long.txt", string.Concat(Enumerable.Range(0, 60_000).Select(i => $"{i} "))));
        using PackedFiles files = PackedFiles.Open(new MemoryStream(zip)).Value!;
        Assert.Contains("larger than", files.Read("long.txt", 1000).ToString(), StringComparison.Ordinal);
        Assert.Contains("damaged", PackedFiles.Open(new MemoryStream(zip[..(zip.Length / 2)])).ToString(), StringComparison.Ordinal);
    }

    /// <summary>By hand: 109 yd × 0.9144 = 99.67 m; 1.75 oz × 28.3495 = 49.6 g.</summary>
    [Fact]
    public async Task A_yarn_table_is_read_whatever_its_columns_are_called()
    {
        const string Table = "Brand;Yarn;Fiber;Weight;Yardage (yd);Ball weight (oz);Colorway;Dye lot;Skeins;Price;Bin\nMarram;Dune;\"wool; silk\";DK;109;1,75;Dusk;L 4;3;€ 4,50;12\nMarram;Dune;;worsted;125 m;50 g;Dawn;;;;\n;;;;;;;;;;\nMarram;;;;;;;;;;\nMarram;Foam;;fluffy;long;;;;2.5;;";
        YarnTable table = YarnTable.Read(Table).Value!;

        Assert.Equal(["Bin"], table.Passed);
        Assert.Equal([2, 3, 5, 6], table.Lines.Select(line => line.Number));
        YarnDetails dune = table.Lines[0].Yarn!;
        Assert.Equal(("Marram Dune", "wool; silk", 3, 99.67, 49.61, "Dusk", 4.5m, "EUR"), (dune.Name, dune.Fibre, dune.WeightClass, Math.Round(dune.MetresPerBall!.Value, 2), Math.Round(dune.GramsPerBall!.Value, 2), dune.ColourName, dune.Price, dune.Currency));
        Assert.Equal((4, 125.0, 50.0), (table.Lines[1].Yarn!.WeightClass, table.Lines[1].Yarn!.MetresPerBall, table.Lines[1].Yarn!.GramsPerBall));
        Assert.Equal(["It has no name."], table.Lines[2].Faults);
        Assert.Equal(3, table.Lines[3].Faults.Count);

        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Assert.Equal(new YarnsTaken(2, 1, 0), (await studio.Get<YarnImport>().TakeAsync(caller, table)).Value);
        Assert.Equal(new YarnsTaken(0, 0, 2), (await studio.Get<YarnImport>().TakeAsync(caller, table)).Value);
        Assert.Equal((3, "L 4"), (await studio.Stash.ListAsync(caller)).Select(lot => (lot.Details.Balls, lot.Details.DyeLot)).Single());
    }

    [Theory]
    [InlineData("", "empty")]
    [InlineData("colour,price\nred,3", "No column is called 'name'")]
    public void A_table_without_yarns_is_told_so(string table, string says) => Assert.Contains(says, YarnTable.Read(table).ToString(), StringComparison.Ordinal);

    private static byte[] Zip(params (string Name, string Content)[] files)
    {
        using var zip = new MemoryStream();
        using (var archive = new ZipArchive(zip, ZipArchiveMode.Create, leaveOpen: true))
            foreach ((string name, string content) in files)
            {
                using Stream entry = archive.CreateEntry(name).Open();
                entry.Write(Encoding.UTF8.GetBytes(content));
            }

        return zip.ToArray();
    }

    private sealed class Heard(List<int> seen) : IProgress<int>
    {
        public void Report(int value) => seen.Add(value);
    }

    private sealed class StopAt(int at, CancellationTokenSource stop) : IProgress<int>
    {
        public void Report(int value)
        {
            if (value == at) stop.Cancel();
        }
    }
}
