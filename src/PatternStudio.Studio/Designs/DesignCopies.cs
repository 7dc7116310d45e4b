using Microsoft.EntityFrameworkCore;
using PatternStudio.Studio.Data;
using PatternStudio.Studio.Materials;
using PatternStudio.Studio.Tags;

namespace PatternStudio.Studio.Designs;

/// <summary>Begins a design from another one: a new size or shape of the same stitch.</summary>
public sealed class DesignCopies(IDbContextFactory<StudioDbContext> contexts, TimeProvider clock)
{
    /// <summary>Copies the words as they are now, the swatches with their photos, the yarns and the tags; earlier versions stay where they are. Gives the id.</summary>
    /// <param name="title">1 to <see cref="Design.TitleLength"/> characters.</param>
    public async Task<Outcome<Guid>> CopyAsync(Caller caller, Guid designId, string title, CancellationToken cancel = default)
    {
        string tidy = Wording.Tidy(title);
        FieldMessage[] faults = [.. Wording.NameFaults("title", "design", tidy, Design.TitleLength)];
        if (faults.Length > 0) return Outcome.Refused(faults);
        return await contexts.AttemptAsync<Outcome<Guid>>(async context =>
        {
            Design? from = await context.DesignsOf(caller).AsNoTracking().FirstOrDefaultAsync(it => it.Id == designId, cancel);
            if (from is null) return Outcome.Refused(Refusals.NoDesign);
            await using var transaction = await context.Database.BeginTransactionAsync(cancel);
            Design copy = await CopyAsync(context, caller, from, tidy, cancel);
            await transaction.CommitAsync(cancel);
            return copy.Id;
        }, cancel);
    }

    private async Task<Design> CopyAsync(StudioDbContext context, Caller caller, Design from, string title, CancellationToken cancel)
    {
        DateTimeOffset now = clock.Now();
        Design copy = await context.BeginAsync(caller, title, from.Text, now, cancel);
        copy.MakeOf(from.YarnId, now);
        List<Guid> tags = await context.DesignTags.Where(worn => worn.DesignId == from.Id).Select(worn => worn.TagId).ToListAsync(cancel);
        context.DesignTags.AddRange(tags.Select(tag => new DesignTag(copy.Id, tag)));
        // A design and its swatch point at each other: the design is stored first.
        await context.SaveChangesAsync(cancel);
        foreach (ColourYarn colour in await context.ColourYarns.AsNoTracking().Where(it => it.DesignId == from.Id).ToListAsync(cancel))
            context.ColourYarns.Add(new ColourYarn(copy.Id, colour.Colour, colour.YarnId));
        Guid? gauge = null;
        foreach (Swatch swatch in await context.Swatches.AsNoTracking().Where(it => it.DesignId == from.Id).OrderBy(it => it.Id).ToListAsync(cancel))
        {
            var copied = new Swatch(Guid.CreateVersion7(now), copy.Id, swatch.Details);
            context.Swatches.Add(copied);
            if (swatch.PhotoId is { } photo) copied.Show(await CopyPhotoAsync(context, photo, now, cancel));
            if (swatch.Id == from.SwatchId) gauge = copied.Id;
        }

        await context.MeasureByAsync(copy, gauge, now, cancel);
        await context.SaveChangesAsync(cancel);
        return copy;
    }

    /// <summary>A photo goes with its swatch: each has one of its own.</summary>
    private static async Task<Guid?> CopyPhotoAsync(StudioDbContext context, Guid photoId, DateTimeOffset now, CancellationToken cancel)
    {
        Photo? photo = await context.Photos.AsNoTracking().FirstOrDefaultAsync(it => it.Id == photoId, cancel);
        if (photo is null) return null;
        var copy = new Photo(Guid.CreateVersion7(now), photo.StudioId, new PreparedPhoto(photo.Picture, photo.Small), now);
        context.Photos.Add(copy);
        return copy.Id;
    }
}
