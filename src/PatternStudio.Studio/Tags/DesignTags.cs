using Microsoft.EntityFrameworkCore;
using PatternStudio.Studio.Data;
using PatternStudio.Studio.Designs;

namespace PatternStudio.Studio.Tags;

/// <summary>The tags of a studio and which designs bear them.</summary>
public sealed class DesignTags(IDbContextFactory<StudioDbContext> contexts, TimeProvider clock)
{
    private static readonly FieldMessage NoTag = new("", "This tag is not in your studio, or it was removed. Look at the list of tags again.");

    /// <summary>The tags of the caller's studio by name.</summary>
    public async Task<IReadOnlyList<KeptTag>> ListAsync(Caller caller, CancellationToken cancel = default)
    {
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        return await context.TagsOf(caller).OrderBy(tag => tag.NameKey)
            .Select(tag => new KeptTag(tag.Id, tag.Name, context.DesignTags.Count(
                worn => worn.TagId == tag.Id && context.Designs.Any(design => design.Id == worn.DesignId && design.Deleted == null))))
            .ToListAsync(cancel);
    }

    /// <summary>Puts a tag on designs; one that is new to the studio is made. Gives its id.</summary>
    /// <param name="name">1 to <see cref="Tag.NameLength"/> characters, in any case.</param>
    /// <param name="designIds">Designs of the studio; others are passed over.</param>
    public async Task<Outcome<Guid>> PutAsync(Caller caller, string name, IReadOnlyCollection<Guid> designIds, CancellationToken cancel = default)
    {
        string tidy = Tidy(name);
        if (Faults(tidy) is { Length: > 0 } faults) return Outcome.Refused(faults);
        return await contexts.AttemptAsync<Outcome<Guid>>(async context =>
        {
            if (!await context.IsMemberAsync(caller, cancel)) return Outcome.Refused(Refusals.NoMember);
            Tag tag = await context.TagNamedAsync(caller, tidy, clock.Now(), cancel);
            foreach (Guid[] some in designIds.Distinct().Chunk(DesignBatch.AtOnce))
            {
                List<Guid> bare = await context.DesignsOf(caller)
                    .Where(design => some.Contains(design.Id) && !context.DesignTags.Any(worn => worn.DesignId == design.Id && worn.TagId == tag.Id))
                    .Select(design => design.Id).ToListAsync(cancel);
                context.DesignTags.AddRange(bare.Select(id => new DesignTag(id, tag.Id)));
            }

            await context.SaveChangesAsync(cancel);
            return tag.Id;
        }, cancel);
    }

    /// <summary>Takes a tag off designs. It stays in the studio.</summary>
    public Task<Outcome> TakeAsync(Caller caller, Guid tagId, IReadOnlyCollection<Guid> designIds, CancellationToken cancel = default) =>
        WithTagAsync(caller, tagId, async (context, tag) =>
        {
            foreach (Guid[] some in designIds.Distinct().Chunk(DesignBatch.AtOnce))
                context.DesignTags.RemoveRange(await context.DesignTags.Where(worn => worn.TagId == tag.Id && some.Contains(worn.DesignId)).ToListAsync(cancel));
            return Outcome.Done;
        }, cancel);

    /// <summary>Gives a tag another name, on all designs.</summary>
    public Task<Outcome> RenameAsync(Caller caller, Guid tagId, string name, CancellationToken cancel = default)
    {
        string tidy = Tidy(name), key = Tag.KeyOf(tidy);
        if (Faults(tidy) is { Length: > 0 } faults) return Task.FromResult(Outcome.Refused(faults));
        return WithTagAsync(caller, tagId, async (context, tag) =>
        {
            if (await context.TagsOf(caller).AnyAsync(other => other.NameKey == key && other.Id != tagId, cancel))
                return Outcome.Refused("name", $"There is a tag '{tidy}' already. Give this one another name, or remove it and use that one.");
            tag.Rename(tidy);
            return Outcome.Done;
        }, cancel);
    }

    /// <summary>Removes a tag from the studio and from all designs.</summary>
    /// <returns>The tag and the designs that bore it, so that it can be put on them again.</returns>
    public Task<Outcome<RemovedTag>> RemoveAsync(Caller caller, Guid tagId, CancellationToken cancel = default) =>
        contexts.AttemptAsync<Outcome<RemovedTag>>(async context =>
        {
            if (await context.TagsOf(caller).FirstOrDefaultAsync(it => it.Id == tagId, cancel) is not { } tag) return Outcome.Refused(NoTag);
            List<Guid> bore = await context.DesignTags.Where(worn => worn.TagId == tagId).Select(worn => worn.DesignId).ToListAsync(cancel);
            context.Tags.Remove(tag);
            await context.SaveChangesAsync(cancel);
            return new RemovedTag(tag.Name, bore);
        }, cancel);

    private Task<Outcome> WithTagAsync(
        Caller caller, Guid tagId, Func<StudioDbContext, Tag, Task<Outcome>> change, CancellationToken cancel) =>
        contexts.AttemptAsync(async context =>
        {
            Tag? tag = await context.TagsOf(caller).FirstOrDefaultAsync(it => it.Id == tagId, cancel);
            if (tag is null) return Outcome.Refused(NoTag);
            Outcome outcome = await change(context, tag);
            if (outcome.Succeeded) await context.SaveChangesAsync(cancel);
            return outcome;
        }, cancel);

    /// <summary>Blanks within are drawn together: 'spring  book' is 'spring book'.</summary>
    private static string Tidy(string? name) =>
        string.Join(' ', Wording.Tidy(name).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private static FieldMessage[] Faults(string name) => [.. Wording.NameFaults("name", "tag", name, Tag.NameLength)];
}

internal static class TagQueries
{
    /// <summary>The tag of this name, made where the studio has none. Saving is the caller's.</summary>
    public static async Task<Tag> TagNamedAsync(this StudioDbContext context, Caller caller, string name, DateTimeOffset now, CancellationToken cancel)
    {
        string key = Tag.KeyOf(name);
        Tag? tag = context.Tags.Local.FirstOrDefault(it => it.StudioId == caller.StudioId && it.NameKey == key)
            ?? await context.TagsOf(caller).FirstOrDefaultAsync(it => it.NameKey == key, cancel);
        return tag ?? context.Tags.Add(new Tag(Guid.CreateVersion7(now), caller.StudioId, name)).Entity;
    }
}
