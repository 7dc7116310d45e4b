using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.Json;
using CsvHelper;
using Microsoft.EntityFrameworkCore;
using PatternStudio.Craft.Measuring;
using PatternStudio.Studio.Data;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Materials;

namespace PatternStudio.Studio.Exchange;

/// <summary>Writes designs, or the whole studio, as one zip of plain files.</summary>
public sealed class ArchiveWriter(IDbContextFactory<StudioDbContext> contexts, TimeProvider clock)
{
    private static readonly UTF8Encoding Utf8 = new(false);

    /// <summary>Writes an archive.</summary>
    /// <param name="designIds">The designs; null for the whole studio, deleted designs and yarns without a design too.</param>
    /// <param name="to">Written from front to end; stays open.</param>
    /// <returns>How many designs were written.</returns>
    public async Task<int> WriteAsync(Caller caller, IReadOnlyCollection<Guid>? designIds, Stream to, CancellationToken cancel = default)
    {
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        List<Guid> ids = await DesignsAsync(context, caller, designIds, cancel);
        var zip = new ZipArchive(to, ZipArchiveMode.Create, leaveOpen: true, Utf8);
        await using (zip.ConfigureAwait(false))
        {
            string studio = await context.Studios.Where(it => it.Id == caller.StudioId).Select(it => it.Name).FirstOrDefaultAsync(cancel) ?? "";
            await PutJsonAsync(zip, ArchiveLayout.Head, new ArchiveHead(ArchiveLayout.Format, ArchiveLayout.Number, studio, clock.Now(), ids.Count), cancel);
            HashSet<Guid> yarns = [], lots = [];
            for (int i = 0; i < ids.Count; i++)
            {
                await PutDesignAsync(zip, caller, ids[i], i + 1, yarns, lots, cancel);
            }

            await PutYarnsAsync(zip, context, caller, designIds is null ? null : yarns, lots, cancel);
        }

        return ids.Count;
    }

    /// <summary>In the order in which they were begun.</summary>
    private static async Task<List<Guid>> DesignsAsync(StudioDbContext context, Caller caller, IReadOnlyCollection<Guid>? asked, CancellationToken cancel)
    {
        List<Guid> all = await (asked is null ? context.AllDesignsOf(caller) : context.DesignsOf(caller))
            .OrderBy(design => design.Created).ThenBy(design => design.Id).Select(design => design.Id).ToListAsync(cancel);
        return asked is null ? all : [.. all.Where(asked.ToHashSet().Contains)];
    }

    private async Task PutDesignAsync(ZipArchive zip, Caller caller, Guid id, int number, HashSet<Guid> yarns, HashSet<Guid> lots, CancellationToken cancel)
    {
        // A context for each: what was read of one design is let go before the next.
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        Design design = await context.AllDesignsOf(caller).AsNoTracking().FirstAsync(it => it.Id == id, cancel);
        string folder = ArchiveLayout.FolderOf(number, design.Title);
        List<Materials.Swatch> swatches = await context.Swatches.AsNoTracking().Where(it => it.DesignId == id).OrderBy(it => it.Id).ToListAsync(cancel);
        List<ArchivedReservation> reserved = await (
            from it in context.Reservations
            where it.DesignId == id
            select new ArchivedReservation(it.LotId, it.Kilograms * 1000)).ToListAsync(cancel);
        List<string> tags = await (
            from worn in context.DesignTags
            join tag in context.Tags on worn.TagId equals tag.Id
            where worn.DesignId == id
            orderby tag.NameKey
            select tag.Name).ToListAsync(cancel);
        List<ArchivedPhoto> photos = await context.DesignPhotos.Where(it => it.DesignId == id).OrderBy(it => it.Place)
            .Select(it => new ArchivedPhoto(it.PhotoId, it.Caption)).ToListAsync(cancel);
        List<ArchivedColour> colours = await context.ColourYarns.Where(it => it.DesignId == id).OrderBy(it => it.Colour)
            .Select(it => new ArchivedColour(it.Colour, it.YarnId)).ToListAsync(cancel);
        var versions = new List<ArchivedVersion>();
        await foreach ((ArchivedVersion version, string text) in VersionsAsync(context, id, cancel))
        {
            versions.Add(version);
            await PutAsync(zip, ArchiveLayout.VersionFile(folder, version.Number), text, cancel);
        }

        await PutAsync(zip, folder + ArchiveLayout.Pattern, design.Text, cancel);
        await PutJsonAsync(zip, folder + ArchiveLayout.Design, new ArchivedDesign(
            design.Title, design.State, design.Created, design.Updated, design.Deleted, tags, design.YarnId, design.SwatchId, versions,
            [.. swatches.Select(swatch => new ArchivedSwatch(swatch.Id, swatch.Details, swatch.PhotoId))], reserved)
            {
                Photos = photos,
                OnCard = design.PhotoId,
                Colours = colours.Count > 0 ? colours : null,
            }, cancel);
        await PutRowsAsync(zip, folder, context, design, cancel);
        foreach (Guid photo in swatches.Select(swatch => swatch.PhotoId).OfType<Guid>().Concat(photos.Select(it => it.Id))) await PutPhotoAsync(zip, context, photo, cancel);
        yarns.UnionWith(swatches.Select(swatch => swatch.YarnId).Append(design.YarnId).OfType<Guid>().Concat(colours.Select(colour => colour.Yarn)));
        lots.UnionWith(reserved.Select(it => it.Lot));
    }

    private static async IAsyncEnumerable<(ArchivedVersion Version, string Text)> VersionsAsync(
        StudioDbContext context, Guid design, [System.Runtime.CompilerServices.EnumeratorCancellation] CancellationToken cancel)
    {
        var versions =
            from version in context.Versions.AsNoTracking()
            where version.DesignId == design
            join computed in context.Computations on new { version.DesignId, Version = version.Number } equals new { computed.DesignId, computed.Version }
            join account in context.Users on version.SavedBy equals account.Id into accounts
            from account in accounts.DefaultIfEmpty()
            orderby version.Number
            select new
            {
                version.Number, version.SavedAt, version.Text, Email = account == null ? "" : account.Email ?? "",
                Computed = new ComputedSummary(
                    computed.Version, computed.EngineVersion, computed.ComputedAt, computed.Rows, computed.RowsChecked, computed.Errors, computed.Warnings,
                    computed.WidthMetres, computed.HeightMetres),
            };
        await foreach (var it in versions.AsAsyncEnumerable().WithCancellation(cancel))
            yield return (new ArchivedVersion(it.Number, it.SavedAt, it.Email, it.Computed), it.Text);
    }

    /// <summary>The row schedule of the first size, for spreadsheets: it can be computed again and is not read back.</summary>
    private static async Task PutRowsAsync(ZipArchive zip, string folder, StudioDbContext context, Design design, CancellationToken cancel)
    {
        Measured<RowSchedule> schedule = DesignResults.Schedule(design.Text, await context.MaterialsOfAsync(design, cancel));
        if (schedule.IsKnown) await PutAsync(zip, folder + ArchiveLayout.Rows, "\ufeff" + ScheduleCsv.Write(schedule.Value), cancel);
    }

    private static async Task PutPhotoAsync(ZipArchive zip, StudioDbContext context, Guid photo, CancellationToken cancel)
    {
        byte[]? picture = await context.Photos.Where(it => it.Id == photo).Select(it => it.Picture).FirstOrDefaultAsync(cancel);
        if (picture is null) return;
        await using Stream file = await zip.CreateEntry(ArchiveLayout.PhotoFile(photo), CompressionLevel.NoCompression).OpenAsync(cancel);
        await file.WriteAsync(picture, cancel);
    }

    /// <param name="yarns">Those to write; null for all.</param>
    private static async Task PutYarnsAsync(
        ZipArchive zip, StudioDbContext context, Caller caller, HashSet<Guid>? yarns, HashSet<Guid> lots, CancellationToken cancel)
    {
        List<StashLot> keptLots = [.. (await context.LotsOf(caller).AsNoTracking().ToListAsync(cancel)).Where(lot => yarns is null || lots.Contains(lot.Id))];
        yarns?.UnionWith(keptLots.Select(lot => lot.YarnId));
        List<Yarn> kept = [.. (await context.YarnsOf(caller).AsNoTracking().OrderBy(yarn => yarn.Name).ThenBy(yarn => yarn.Id).ToListAsync(cancel))
            .Where(yarn => yarns is null || yarns.Contains(yarn.Id))];
        await PutJsonAsync(zip, ArchiveLayout.Yarns, new ArchivedYarns(
            [.. kept.Select(yarn => new ArchivedYarn(yarn.Id, yarn.Details))], [.. keptLots.Select(lot => new ArchivedLot(lot.Id, lot.Details))]), cancel);
        await PutAsync(zip, ArchiveLayout.YarnTable, "\ufeff" + Table(kept.Select(yarn => yarn.Details)), cancel);
    }

    private static string Table(IEnumerable<YarnDetails> yarns)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        using var csv = new CsvWriter(text, new CsvHelper.Configuration.CsvConfiguration(CultureInfo.InvariantCulture)
        {
            InjectionOptions = CsvHelper.Configuration.InjectionOptions.Escape,
        });
        foreach (string title in (string[])["Name", "Fibre", "Weight", "Metres", "Grams", "Colour", "Hex", "Care", "Price", "Currency"]) csv.WriteField(title);
        csv.NextRecord();
        foreach (YarnDetails yarn in yarns)
        {
            csv.WriteField(yarn.Name);
            csv.WriteField(yarn.Fibre);
            csv.WriteField(yarn.WeightClass);
            csv.WriteField(yarn.MetresPerBall);
            csv.WriteField(yarn.GramsPerBall);
            csv.WriteField(yarn.ColourName);
            csv.WriteField(yarn.ColourHex);
            csv.WriteField(yarn.Care);
            csv.WriteField(yarn.Price);
            csv.WriteField(yarn.Currency);
            csv.NextRecord();
        }

        csv.Flush();
        return text.ToString();
    }

    private static Task PutJsonAsync<T>(ZipArchive zip, string name, T what, CancellationToken cancel) =>
        PutAsync(zip, name, JsonSerializer.Serialize(what, ArchiveLayout.Json) + "\n", cancel);

    private static async Task PutAsync(ZipArchive zip, string name, string text, CancellationToken cancel)
    {
        await using Stream file = await zip.CreateEntry(name, CompressionLevel.Optimal).OpenAsync(cancel);
        await file.WriteAsync(Utf8.GetBytes(text), cancel);
    }
}
