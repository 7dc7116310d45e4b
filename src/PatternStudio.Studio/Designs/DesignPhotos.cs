using Microsoft.EntityFrameworkCore;
using PatternStudio.Studio.Data;
using PatternStudio.Studio.Materials;

namespace PatternStudio.Studio.Designs;

/// <summary>The photos of a design, and which of them its card on the shelf shows.</summary>
public sealed class DesignPhotos(IDbContextFactory<StudioDbContext> contexts, TimeProvider clock)
{
    /// <summary>The photos in the order in which they were added; empty where the studio has no such design.</summary>
    public async Task<IReadOnlyList<KeptDesignPhoto>> ListAsync(Caller caller, Guid designId, CancellationToken cancel = default)
    {
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        return await (
            from design in context.DesignsOf(caller)
            where design.Id == designId
            join photo in context.DesignPhotos on design.Id equals photo.DesignId
            orderby photo.Place
            select new KeptDesignPhoto(photo.PhotoId, photo.Caption, photo.PhotoId == design.PhotoId)).ToListAsync(cancel);
    }

    /// <summary>Adds a photo; the first of a design goes on its card. Gives its id.</summary>
    /// <param name="caption">At most <see cref="DesignPhoto.CaptionLength"/> characters.</param>
    public Task<Outcome<Guid>> AddAsync(Caller caller, Guid designId, PreparedPhoto photo, string caption = "", CancellationToken cancel = default)
    {
        string tidy = Wording.Tidy(caption);
        FieldMessage[] faults = [.. CaptionFaults(tidy)];
        if (faults.Length > 0) return Task.FromResult<Outcome<Guid>>(Outcome.Refused(faults));
        return contexts.AttemptAsync<Outcome<Guid>>(async context =>
        {
            if (await FindAsync(context, caller, designId, cancel) is not { } design) return Outcome.Refused(Refusals.NoDesign);
            List<int> places = await context.DesignPhotos.Where(it => it.DesignId == designId).Select(it => it.Place).ToListAsync(cancel);
            if (places.Count >= DesignPhoto.Most)
                return Outcome.Refused(PhotoReader.Field, $"A design can have {DesignPhoto.Most} photos. Remove one before you add another.");
            DateTimeOffset now = clock.Now();
            var kept = new Photo(Guid.CreateVersion7(now), design.StudioId, photo, now);
            context.Photos.Add(kept);
            context.DesignPhotos.Add(new DesignPhoto(design.Id, kept.Id, places.Append(0).Max() + 1, tidy));
            if (places.Count == 0) design.Show(kept.Id, now);
            await context.SaveChangesAsync(cancel);
            return kept.Id;
        }, cancel);
    }

    /// <summary>Says what is to be seen on a photo.</summary>
    /// <param name="caption">At most <see cref="DesignPhoto.CaptionLength"/> characters; may be empty.</param>
    public Task<Outcome> SayAsync(Caller caller, Guid designId, Guid photoId, string caption, CancellationToken cancel = default)
    {
        string tidy = Wording.Tidy(caption);
        FieldMessage[] faults = [.. CaptionFaults(tidy)];
        if (faults.Length > 0) return Task.FromResult(Outcome.Refused(faults));
        return ChangeAsync(caller, designId, photoId, (_, photo) => photo!.Say(tidy), cancel);
    }

    /// <summary>Puts a photo on the design's card; null to show its small chart there.</summary>
    public Task<Outcome> ChooseAsync(Caller caller, Guid designId, Guid? photoId, CancellationToken cancel = default) =>
        ChangeAsync(caller, designId, photoId, (design, _) => design.Show(photoId, clock.Now()), cancel);

    /// <summary>Removes a photo. Where it was on the card, the oldest of the others takes its place.</summary>
    /// <returns>The photo, so that it can be added again.</returns>
    public Task<Outcome<PreparedPhoto>> RemoveAsync(Caller caller, Guid designId, Guid photoId, CancellationToken cancel = default) =>
        contexts.AttemptAsync<Outcome<PreparedPhoto>>(async context =>
        {
            if (await FindAsync(context, caller, designId, cancel) is not { } design) return Outcome.Refused(Refusals.NoDesign);
            List<DesignPhoto> all = await context.DesignPhotos.Where(it => it.DesignId == designId).OrderBy(it => it.Place).ToListAsync(cancel);
            if (all.FirstOrDefault(it => it.PhotoId == photoId) is not { } gone) return Outcome.Refused(NoPhoto);
            if (design.PhotoId == photoId) design.Show(all.FirstOrDefault(it => it != gone)?.PhotoId, clock.Now());
            Photo picture = await context.Photos.FirstAsync(it => it.Id == photoId, cancel);
            context.DesignPhotos.Remove(gone);
            context.Photos.Remove(picture);
            await context.SaveChangesAsync(cancel);
            return picture.Prepared;
        }, cancel);

    private static FieldMessage NoPhoto => new("", "This photo is no longer among the design's photos.");

    /// <param name="photoId">A photo that the change is about; null for none.</param>
    private Task<Outcome> ChangeAsync(Caller caller, Guid designId, Guid? photoId, Action<Design, DesignPhoto?> change, CancellationToken cancel) =>
        contexts.AttemptAsync(async context =>
        {
            if (await FindAsync(context, caller, designId, cancel) is not { } design) return Outcome.Refused(Refusals.NoDesign);
            DesignPhoto? photo = photoId is null ? null : await context.DesignPhotos.FindAsync([designId, photoId], cancel);
            if (photo is null && photoId is not null) return Outcome.Refused(NoPhoto);
            change(design, photo);
            await context.SaveChangesAsync(cancel);
            return Outcome.Done;
        }, cancel);

    private static Task<Design?> FindAsync(StudioDbContext context, Caller caller, Guid designId, CancellationToken cancel) =>
        context.DesignsOf(caller).FirstOrDefaultAsync(design => design.Id == designId, cancel);

    private static IEnumerable<FieldMessage> CaptionFaults(string caption) => Wording.ShortFaults("Caption", "The caption", caption, DesignPhoto.CaptionLength);
}
