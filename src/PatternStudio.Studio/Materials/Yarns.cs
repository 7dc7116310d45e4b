using Microsoft.EntityFrameworkCore;
using PatternStudio.Studio.Data;
using PatternStudio.Studio.Designs;

namespace PatternStudio.Studio.Materials;

/// <summary>The yarns of a studio. Whatever changes a yarn computes the designs made of it anew.</summary>
public sealed class Yarns(IDbContextFactory<StudioDbContext> contexts, TimeProvider clock)
{
    /// <summary>The yarns of the caller's studio by name.</summary>
    public async Task<IReadOnlyList<KeptYarn>> ListAsync(Caller caller, CancellationToken cancel = default)
    {
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        var yarns = await context.YarnsOf(caller).AsNoTracking()
            .OrderBy(yarn => yarn.Name).ThenBy(yarn => yarn.Id)
            .Select(yarn => new { Yarn = yarn, Designs = context.DesignsOf(caller).Count(design => design.YarnId == yarn.Id) })
            .ToListAsync(cancel);
        return [.. yarns.Select(line => new KeptYarn(line.Yarn.Id, line.Yarn.Details, line.Designs))];
    }

    /// <summary>Adds a yarn. Gives its id.</summary>
    public async Task<Outcome<Guid>> AddAsync(Caller caller, YarnDetails details, CancellationToken cancel = default)
    {
        YarnDetails tidy = Tidy(details);
        if (MaterialRefusals.OfYarn(tidy) is { Length: > 0 } faults) return Outcome.Refused(faults);
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        if (!await context.IsMemberAsync(caller, cancel)) return Outcome.Refused(Refusals.NoMember);
        var yarn = new Yarn(Guid.CreateVersion7(clock.Now()), caller.StudioId, tidy);
        context.Yarns.Add(yarn);
        await context.SaveChangesAsync(cancel);
        return yarn.Id;
    }

    /// <summary>Corrects a yarn.</summary>
    /// <param name="before">The yarn as it was when the correction began: where it is another by now, nothing is written. Null to write in any case.</param>
    public async Task<ChangeOutcome<YarnDetails>> ChangeAsync(
        Caller caller, Guid yarnId, YarnDetails details, YarnDetails? before = null, CancellationToken cancel = default)
    {
        YarnDetails tidy = Tidy(details);
        if (MaterialRefusals.OfYarn(tidy) is { Length: > 0 } faults) return Outcome.Refused(faults);
        return await contexts.AttemptAsync<ChangeOutcome<YarnDetails>>(async context =>
        {
            Yarn? yarn = await context.YarnsOf(caller).FirstOrDefaultAsync(it => it.Id == yarnId, cancel);
            if (yarn is null) return Outcome.Refused(MaterialRefusals.NoYarn);
            if (before is not null && yarn.Details != before && yarn.Details != tidy) return ChangeOutcome.Overtaken(yarn.Details);
            yarn.Change(tidy);
            // Deleted designs too: they may come back. And those of another yarn that have a swatch in this one.
            foreach (Design design in await context.AllDesignsOf(caller)
                .Where(it => it.YarnId == yarnId || context.Swatches.Any(swatch => swatch.DesignId == it.Id && swatch.YarnId == yarnId)).ToListAsync(cancel))
                await context.MakeOfAsync(design, design.YarnId, clock.Now(), cancel);
            await context.SaveChangesAsync(cancel);
            return Outcome.Done;
        }, cancel);
    }

    /// <summary>Removes a yarn that no design and no swatch uses and that is not in the cupboard.</summary>
    public Task<Outcome> RemoveAsync(Caller caller, Guid yarnId, CancellationToken cancel = default) =>
        contexts.AttemptAsync(async context =>
        {
            Yarn? yarn = await context.YarnsOf(caller).FirstOrDefaultAsync(it => it.Id == yarnId, cancel);
            if (yarn is null) return Outcome.Refused(MaterialRefusals.NoYarn);
            List<string> users = await UsersAsync(context, caller, yarnId, cancel);
            if (users.Count > 0) return Outcome.Refused("", InUse(users));
            if (await context.Lots.AnyAsync(it => it.YarnId == yarnId, cancel)) return Outcome.Refused(MaterialRefusals.YarnInCupboard);
            context.Yarns.Remove(yarn);
            await context.SaveChangesAsync(cancel);
            return Outcome.Done;
        }, cancel);

    /// <summary>Chooses the yarn that a design is made of; null for none.</summary>
    public Task<Outcome> ChooseAsync(Caller caller, Guid designId, Guid? yarnId, CancellationToken cancel = default) =>
        contexts.AttemptAsync(async context =>
        {
            Design? design = await context.DesignsOf(caller).FirstOrDefaultAsync(it => it.Id == designId, cancel);
            if (design is null) return Outcome.Refused(Refusals.NoDesign);
            if (yarnId is { } id && !await context.YarnsOf(caller).AnyAsync(it => it.Id == id, cancel))
                return Outcome.Refused(MaterialRefusals.NoYarn);
            await context.MakeOfAsync(design, yarnId, clock.Now(), cancel);
            await context.SaveChangesAsync(cancel);
            return Outcome.Done;
        }, cancel);

    /// <summary>Titles of the designs (deleted ones too) that use a yarn: for the whole, for a colour or in a swatch.</summary>
    private static Task<List<string>> UsersAsync(StudioDbContext context, Caller caller, Guid yarnId, CancellationToken cancel) =>
        context.AllDesignsOf(caller)
            .Where(design => design.YarnId == yarnId
                || context.ColourYarns.Any(colour => colour.DesignId == design.Id && colour.YarnId == yarnId)
                || context.Swatches.Any(swatch => swatch.DesignId == design.Id && swatch.YarnId == yarnId))
            .OrderBy(design => design.TitleKey)
            .Select(design => design.Deleted == null ? design.Title : design.Title + " (deleted)")
            .ToListAsync(cancel);

    private static string InUse(List<string> titles)
    {
        string named = string.Join(", ", titles.Take(5)) + (titles.Count > 5 ? $" and {titles.Count - 5} more" : "");
        return $"This yarn is used by {named}. Choose another yarn there and in its swatches, then remove this one.";
    }

    private static YarnDetails Tidy(YarnDetails details) => details with
    {
        Name = Wording.Tidy(details.Name),
        Fibre = Wording.Tidy(details.Fibre),
        ColourName = Wording.Tidy(details.ColourName),
        ColourHex = Wording.Tidy(details.ColourHex),
        Care = Wording.Tidy(details.Care),
        Currency = details.Price is null ? "" : Wording.Tidy(details.Currency).ToUpperInvariant(),
    };
}
