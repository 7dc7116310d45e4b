using Microsoft.EntityFrameworkCore;
using PatternStudio.Studio.Data;
using PatternStudio.Studio.Designs;

namespace PatternStudio.Studio.Materials;

/// <summary>Which yarn each colour of a pattern is worked in. The words of the pattern name the colours; a choice for a colour that they no longer name is kept, since it may come back.</summary>
public sealed class ColourYarns(IDbContextFactory<StudioDbContext> contexts)
{
    /// <summary>The yarns of a design by colour; empty where the studio has no such design.</summary>
    public async Task<IReadOnlyDictionary<string, Guid>> OfAsync(Caller caller, Guid designId, CancellationToken cancel = default)
    {
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        return await context.ColourYarns
            .Where(it => it.DesignId == designId && context.DesignsOf(caller).Any(design => design.Id == designId))
            .ToDictionaryAsync(it => it.Colour, it => it.YarnId, StringComparer.Ordinal, cancel);
    }

    /// <summary>Chooses the yarn of a colour.</summary>
    /// <param name="colour">As the pattern names it; 1 to <see cref="ColourYarn.ColourLength"/> characters.</param>
    /// <param name="yarnId">Null for none.</param>
    public Task<Outcome> ChooseAsync(Caller caller, Guid designId, string colour, Guid? yarnId, CancellationToken cancel = default)
    {
        if (colour.Length is 0 or > ColourYarn.ColourLength)
            return Task.FromResult(Outcome.Refused(nameof(colour), $"Name the colour as the pattern does, in 1 to {ColourYarn.ColourLength} characters."));
        return contexts.AttemptAsync(async context =>
        {
            if (!await context.DesignsOf(caller).AnyAsync(design => design.Id == designId, cancel)) return Outcome.Refused(Refusals.NoDesign);
            if (yarnId is { } id && !await context.YarnsOf(caller).AnyAsync(it => it.Id == id, cancel)) return Outcome.Refused(MaterialRefusals.NoYarn);
            ColourYarn? chosen = await context.ColourYarns.FindAsync([designId, colour], cancel);
            if (yarnId is null && chosen is not null) context.ColourYarns.Remove(chosen);
            else if (yarnId is { } yarn && chosen is not null) chosen.WorkIn(yarn);
            else if (yarnId is { } first) context.ColourYarns.Add(new ColourYarn(designId, colour, first));
            await context.SaveChangesAsync(cancel);
            return Outcome.Done;
        }, cancel);
    }
}
