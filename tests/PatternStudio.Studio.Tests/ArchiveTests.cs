using System.IO.Compression;
using System.Text;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Exchange;
using PatternStudio.Studio.Materials;

namespace PatternStudio.Studio.Tests;

/// <summary>A studio taken out as one zip and brought in again.</summary>
public sealed class ArchiveTests
{
    [Fact]
    public async Task Everything_comes_back()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        await ComesBackAsync(studio);
    }

    /// <summary>Shared with the tests on PostgreSQL.</summary>
    internal static async Task ComesBackAsync(TestStudio studio)
    {
        Caller from = await studio.NewCallerAsync("", sample: true);
        Guid yarn = (await studio.Yarns.AddAsync(from, Texts.Yarn with { Price = 4.55m, Currency = "EUR" })).Value;
        Guid id = await studio.NewDesignAsync(from, "Élan, “quoted” / cloth");
        studio.Clock.Advance(TimeSpan.FromHours(3));
        await studio.Desk.SaveAsync(from, id, Texts.WrongCloth, 1);
        await studio.Yarns.ChooseAsync(from, id, yarn);
        await studio.Swatches.AddAsync(from, id, Texts.Swatch with { YarnId = yarn, Counted = Counting.Repeats, StitchesEach = 6 }, PhotoReader.Read(PhotoTests.Jpeg(60, 40)).Value);
        await studio.Swatches.AddAsync(from, id, Texts.Swatch with { Stitch = "dc" });
        await studio.DesignPhotos.AddAsync(from, id, DesignPhotoTests.Picture, "on the line");
        await studio.DesignPhotos.ChooseAsync(from, id, (await studio.DesignPhotos.AddAsync(from, id, DesignPhotoTests.Picture)).Value);
        await studio.Get<ColourYarns>().ChooseAsync(from, id, "MC", yarn);
        await studio.Tags.PutAsync(from, "Baby gifts", [id]);
        Guid lot = (await studio.Stash.AddAsync(from, new LotDetails(yarn, 4, 20, "S 1", "attic", ""))).Value;
        await studio.Stash.ReserveAsync(from, id, lot, 50);
        await studio.Desk.MoveToAsync(from, id, DesignState.Testing);
        Guid gone = await studio.NewDesignAsync(from, "Deleted one");
        await studio.Desk.DeleteAsync(from, gone);
        byte[] zip = await WrittenAsync(studio, from);

        studio.Clock.Advance(TimeSpan.FromDays(40));
        Caller to = await studio.NewCallerAsync("Other");
        Outcome<ArchiveTaken> taken = await studio.Get<ArchiveImport>().TakeAsync(to, new MemoryStream(zip));

        Assert.True(taken.Succeeded, taken.ToString());
        Assert.Equal(9, taken.Value!.Designs.Count);
        Assert.Equivalent(await SnapshotAsync(studio, from), await SnapshotAsync(studio, to), strict: true);
    }

    [Fact]
    public async Task Brought_in_twice_nothing_is_there_twice()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync("", sample: true);
        byte[] zip = await WrittenAsync(studio, caller);

        ArchiveTaken taken = (await studio.Get<ArchiveImport>().TakeAsync(caller, new MemoryStream(zip))).Value!;

        Assert.Empty(taken.Designs);
        Assert.Equal((7, 0), (taken.Known.Count, taken.Yarns));
        Assert.Equal(7, (await studio.Library.ListAsync(caller, new())).Total);
        Assert.Equal(4, (await studio.Yarns.ListAsync(caller)).Count);
    }

    [Fact]
    public async Task A_selection_brings_its_own_yarns_alone_and_a_taken_title_gets_a_number()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller from = await studio.NewCallerAsync();
        Guid used = (await studio.Yarns.AddAsync(from, Texts.Yarn)).Value;
        await studio.Yarns.AddAsync(from, Texts.Yarn with { Name = "Unused" });
        Guid id = await studio.NewDesignAsync(from, "Cloth");
        await studio.NewDesignAsync(from, "Left at home");
        await studio.Yarns.ChooseAsync(from, id, used);
        byte[] zip = await WrittenAsync(studio, from, [id, Guid.NewGuid()]);
        Caller to = await studio.NewCallerAsync("Other");
        await studio.NewDesignAsync(to, "cloth", "Ch 9.");

        ArchiveTaken taken = (await studio.Get<ArchiveImport>().TakeAsync(to, new MemoryStream(zip))).Value!;

        Assert.Equal(["Cloth (2)"], taken.Renamed);
        Assert.Equal(["Marram Cotton"], (await studio.Yarns.ListAsync(to)).Select(yarn => yarn.Details.Name));
    }

    [Fact]
    public async Task The_zip_is_plain_files_under_plain_names()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid id = await studio.NewDesignAsync(caller, "Élan, / cloth");
        await studio.Swatches.AddAsync(caller, id, Texts.Swatch);
        using var zip = new ZipArchive(new MemoryStream(await WrittenAsync(studio, caller)));

        Assert.Equal(
            ["archive.json", "designs/0001-lan-cloth/design.json", "designs/0001-lan-cloth/pattern.txt", "designs/0001-lan-cloth/rows.csv", "designs/0001-lan-cloth/versions/0001.txt", "yarns.csv", "yarns.json"],
            zip.Entries.Select(entry => entry.FullName).Order(StringComparer.Ordinal));
        using var pattern = new StreamReader(zip.GetEntry("designs/0001-lan-cloth/pattern.txt")!.Open());
        Assert.Equal(Texts.Cloth, await pattern.ReadToEndAsync());
    }

    [Theory]
    [InlineData("archive.json", "{}", "no archive of this program")]
    [InlineData("archive.json", "{\"format\":\"pattern-studio-archive\",\"layout\":2}", "newer program")]
    [InlineData("yarns.json", "not json", "not written as")]
    [InlineData("yarns.json", "{\"yarns\":[{\"id\":\"5f0b6c1e-0000-4000-8000-000000000001\",\"details\":{\"name\":\"\",\"fibre\":\"\",\"colourName\":\"\",\"colourHex\":\"\"}}],\"lots\":[]}", "needs a name")]
    [InlineData("designs/0001-cloth/design.json", "{\"title\":\"x\"}", "lists are missing")]
    [InlineData("designs/0001-cloth/versions/0001.txt", "\0", "can't be kept")]
    [InlineData("designs/0001-cloth/versions/0001.txt", null, "has no file")]
    public async Task A_broken_archive_is_refused_whole(string file, string? content, string says)
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller from = await studio.NewCallerAsync();
        await studio.Yarns.AddAsync(from, Texts.Yarn);
        await studio.NewDesignAsync(from, "Cloth");
        byte[] zip = Changed(await WrittenAsync(studio, from), file, content);
        Caller to = await studio.NewCallerAsync("Other");

        Outcome<ArchiveTaken> taken = await studio.Get<ArchiveImport>().TakeAsync(to, new MemoryStream(zip));

        Assert.Contains(says, taken.ToString(), StringComparison.Ordinal);
        Assert.Equal(0, (await studio.Library.ListAsync(to, new())).Total);
        Assert.Empty(await studio.Yarns.ListAsync(to));
    }

    [Fact]
    public async Task Stopped_midway_nothing_is_brought_in()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller from = await studio.NewCallerAsync("", sample: true);
        byte[] zip = await WrittenAsync(studio, from);
        Caller to = await studio.NewCallerAsync("Other");
        using var stop = new CancellationTokenSource();

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() =>
            studio.Get<ArchiveImport>().TakeAsync(to, new MemoryStream(zip), new StopAfter(3, stop), stop.Token));

        Assert.Equal(0, (await studio.Library.ListAsync(to, new())).Total);
        Assert.Empty(await studio.Yarns.ListAsync(to));
    }

    private static async Task<byte[]> WrittenAsync(TestStudio studio, Caller caller, Guid[]? designs = null)
    {
        using var zip = new MemoryStream();
        await studio.Get<ArchiveWriter>().WriteAsync(caller, designs, zip);
        return zip.ToArray();
    }

    /// <summary>Everything that a designer sees of a studio, without ids.</summary>
    private static async Task<object> SnapshotAsync(TestStudio studio, Caller caller)
    {
        var designs = new List<object>();
        foreach (DesignQuery query in new DesignQuery[] { new(Order: DesignOrder.Title, Descending: false), new() { Deleted = true } })
            foreach (DesignSummary line in (await studio.Library.ListAsync(caller, query)).Designs)
            {
                OpenDesign? open = await studio.Desk.OpenAsync(caller, line.Id);
                var texts = new List<object>();
                foreach (VersionSummary version in await studio.Versions.ListAsync(caller, line.Id))
                    texts.Add((version.Number, version.SavedAt, version.Rows, version.Errors, (await studio.Versions.FindAsync(caller, line.Id, version.Number))!.Text));
                IReadOnlyList<KeptYarn> yarns = await studio.Yarns.ListAsync(caller);
                IReadOnlyList<KeptSwatch> swatches = await studio.Swatches.ListAsync(caller, line.Id);
                designs.Add(new
                {
                    line.Title, line.State, line.Version, line.Rows, line.Errors, line.WidthCm, line.HeightCm, line.Updated, line.Deleted, line.Tags, line.HasSwatch,
                    HasPhoto = line.PhotoId is not null,
                    Photos = (await studio.DesignPhotos.ListAsync(caller, line.Id)).Select(photo => (photo.Caption, photo.OnCard)).ToList(),
                    Colours = (await studio.Get<ColourYarns>().OfAsync(caller, line.Id)).Select(colour => (colour.Key, yarns.Single(yarn => yarn.Id == colour.Value).Details)).ToList(),
                    Texts = texts, open?.Text, open?.Results, open?.Yarn,
                    Swatches = swatches.Select(swatch => (swatch.Details with { YarnId = null }, swatch.Chosen, swatch.PhotoId is not null)).ToList(),
                });
            }

        return new
        {
            Designs = designs,
            Yarns = (await studio.Yarns.ListAsync(caller)).Select(yarn => (yarn.Details, yarn.Designs)).ToList(),
            Lots = (await studio.Stash.ListAsync(caller)).Select(lot => (lot.Details with { YarnId = Guid.Empty }, lot.Yarn, string.Join(',', lot.Reserved.Select(it => $"{it.Title} {it.Grams}")))).ToList(),
            Tags = (await studio.Tags.ListAsync(caller)).Select(tag => (tag.Name, tag.Designs)).ToList(),
        };
    }

    private static byte[] Changed(byte[] zip, string file, string? content)
    {
        using var changed = new MemoryStream();
        changed.Write(zip);
        using (var archive = new ZipArchive(changed, ZipArchiveMode.Update, leaveOpen: true))
        {
            archive.GetEntry(file)!.Delete();
            if (content is not null)
            {
                using Stream entry = archive.CreateEntry(file).Open();
                entry.Write(Encoding.UTF8.GetBytes(content));
            }
        }

        return changed.ToArray();
    }

    private sealed class StopAfter(int designs, CancellationTokenSource stop) : IProgress<(int Done, int Of)>
    {
        public void Report((int Done, int Of) value)
        {
            if (value.Done >= designs) stop.Cancel();
        }
    }
}
