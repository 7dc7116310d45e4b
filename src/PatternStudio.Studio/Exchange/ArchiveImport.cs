using Microsoft.EntityFrameworkCore;
using PatternStudio.Studio.Data;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Materials;
using PatternStudio.Studio.Tags;

namespace PatternStudio.Studio.Exchange;

/// <summary>What an archive brought.</summary>
/// <param name="Designs">The designs that are new now.</param>
/// <param name="Known">Titles of designs that were in the studio with the very same words: left as they are.</param>
/// <param name="Renamed">Titles that were taken already, as they are now.</param>
/// <param name="Yarns">Number of yarns that are new now.</param>
public sealed record ArchiveTaken(IReadOnlyList<Guid> Designs, IReadOnlyList<string> Known, IReadOnlyList<string> Renamed, int Yarns);

/// <summary>Brings an archive into a studio: everything in it or, where anything is wrong or it is stopped, nothing.</summary>
public sealed class ArchiveImport(IDbContextFactory<StudioDbContext> contexts, TimeProvider clock)
{
    /// <summary>True where a stream is an archive of a studio (and no heap of texts).</summary>
    public static bool IsArchive(Stream stream)
    {
        Outcome<PackedFiles> zip = PackedFiles.Open(stream);
        using PackedFiles? files = zip.Value;
        return files is not null && ArchiveReader.IsArchive(files);
    }

    /// <summary>Reads, judges and computes everything first; then stores it in one transaction.</summary>
    /// <param name="stream">The zip; seekable.</param>
    /// <param name="progress">Told how many designs of how many are read.</param>
    /// <exception cref="OperationCanceledException">It was stopped: nothing was brought in.</exception>
    public async Task<Outcome<ArchiveTaken>> TakeAsync(
        Caller caller, Stream stream, IProgress<(int Done, int Of)>? progress = null, CancellationToken cancel = default)
    {
        Outcome<PackedFiles> opened = PackedFiles.Open(stream);
        if (!opened.Succeeded) return Outcome.Refused(opened.Messages);
        using PackedFiles zip = opened.Value!;
        Outcome<ArchiveHead> head = ArchiveReader.Head(zip);
        if (!head.Succeeded) return Outcome.Refused(head.Messages);
        Outcome<ArchivedYarns> yarns = ArchiveReader.Yarns(zip);
        if (!yarns.Succeeded) return Outcome.Refused(yarns.Messages);

        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        if (!await context.IsMemberAsync(caller, cancel)) return Outcome.Refused(Refusals.NoMember);
        DateTimeOffset now = clock.Now();
        Shelved shelved = await ShelveAsync(context, caller, yarns.Value!, now, cancel);
        var titles = new TitleBook((await context.DesignsOf(caller).Select(design => new { design.Title, design.Text }).ToListAsync(cancel))
            .Select(design => (design.Title, design.Text)));
        Dictionary<string, Guid> accounts = await AccountsAsync(context, caller, cancel);
        var brought = new List<Brought>();
        List<string> known = [], renamed = [];
        IReadOnlyList<string> folders = ArchiveReader.Folders(zip);
        HashSet<Guid> yarnIds = [.. shelved.Yarns.Keys];
        for (int i = 0; i < folders.Count; i++)
        {
            cancel.ThrowIfCancellationRequested();
            Outcome<ReadDesign> read = ArchiveReader.Design(zip, folders[i], yarnIds);
            if (!read.Succeeded) return Outcome.Refused(read.Messages);
            ReadDesign design = read.Value!;
            progress?.Report((i + 1, folders.Count));
            string wanted = Wording.Tidy(design.Design.Title);
            if (titles.WithWords(design.Texts[^1]) == wanted)
            {
                known.Add(wanted);
                continue;
            }

            // Deleted designs are in nobody's way.
            string title = design.Design.Deleted is null ? titles.Enter(wanted, design.Texts[^1]) : wanted;
            if (title != wanted) renamed.Add(title);
            brought.Add(Brought.Make(caller, design, title, shelved, accounts, now));
        }

        await StoreAsync(context, caller, brought, now, cancel);
        return new ArchiveTaken([.. brought.Select(it => it.Design.Id)], known, renamed, shelved.Added);
    }

    /// <summary>A design and its swatch point at each other: the design is stored first.</summary>
    private static async Task StoreAsync(StudioDbContext context, Caller caller, List<Brought> brought, DateTimeOffset now, CancellationToken cancel)
    {
        await using var transaction = await context.Database.BeginTransactionAsync(cancel);
        foreach (Brought it in brought)
        {
            context.Designs.Add(it.Design);
            context.Versions.AddRange(it.Versions);
            context.Computations.AddRange(it.Computations);
            context.Faces.Add(it.Face);
            context.Photos.AddRange(it.Photos);
            context.DesignPhotos.AddRange(it.DesignPhotos);
            context.Swatches.AddRange(it.Swatches);
            context.ColourYarns.AddRange(it.Colours);
            context.Reservations.AddRange(it.Reservations);
            foreach (string tag in it.Tags.Distinct(StringComparer.OrdinalIgnoreCase))
                context.DesignTags.Add(new DesignTag(it.Design.Id, (await context.TagNamedAsync(caller, tag, now, cancel)).Id));
        }

        await context.SaveChangesAsync(cancel);
        foreach (Brought it in brought) it.Finish();
        await context.SaveChangesAsync(cancel);
        await transaction.CommitAsync(cancel);
    }

    /// <summary>Yarns that the studio has already, label for label, are not brought again; lots always are.</summary>
    private static async Task<Shelved> ShelveAsync(
        StudioDbContext context, Caller caller, ArchivedYarns archived, DateTimeOffset now, CancellationToken cancel)
    {
        List<Yarn> there = await context.YarnsOf(caller).ToListAsync(cancel);
        var yarns = new Dictionary<Guid, Yarn>();
        int added = 0;
        foreach (ArchivedYarn yarn in archived.Yarns)
        {
            Yarn? same = there.FirstOrDefault(it => it.Details == yarn.Details);
            if (same is null)
            {
                same = new Yarn(Guid.CreateVersion7(now), caller.StudioId, yarn.Details);
                context.Yarns.Add(same);
                added++;
            }

            yarns[yarn.Id] = same;
        }

        List<StashLot> lotsThere = await context.LotsOf(caller).ToListAsync(cancel);
        var lots = new Dictionary<Guid, Guid>();
        foreach (ArchivedLot lot in archived.Lots)
        {
            LotDetails details = lot.Details with { YarnId = yarns[lot.Details.YarnId].Id };
            if (lotsThere.FirstOrDefault(it => it.Details == details) is { } same)
            {
                lots[lot.Id] = same.Id;
                continue;
            }

            var kept = new StashLot(Guid.CreateVersion7(now), caller.StudioId, details);
            context.Lots.Add(kept);
            lots[lot.Id] = kept.Id;
        }

        return new Shelved(yarns, lots, added);
    }

    private static async Task<Dictionary<string, Guid>> AccountsAsync(StudioDbContext context, Caller caller, CancellationToken cancel)
    {
        var members = await (
            from member in context.Memberships
            join account in context.Users on member.AccountId equals account.Id
            where member.StudioId == caller.StudioId
            select new { account.Id, account.Email }).ToListAsync(cancel);
        return members.Where(it => it.Email is not null).DistinctBy(it => it.Email, StringComparer.OrdinalIgnoreCase)
            .ToDictionary(it => it.Email!, it => it.Id, StringComparer.OrdinalIgnoreCase);
    }
}

/// <summary>What the archive's yarns and lots are in this studio.</summary>
internal sealed record Shelved(IReadOnlyDictionary<Guid, Yarn> Yarns, IReadOnlyDictionary<Guid, Guid> Lots, int Added);
