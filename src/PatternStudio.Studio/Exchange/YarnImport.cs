using Microsoft.EntityFrameworkCore;
using PatternStudio.Studio.Data;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Materials;

namespace PatternStudio.Studio.Exchange;

/// <summary>What was made of a yarn table.</summary>
/// <param name="Known">Lines whose yarn was in the studio already, by name and colour: left as it is.</param>
public sealed record YarnsTaken(int Added, int Lots, int Known);

/// <summary>Takes the yarns of a table in, all or none.</summary>
public sealed class YarnImport(IDbContextFactory<StudioDbContext> contexts, TimeProvider clock)
{
    /// <summary>Adds the lines that can be taken; balls go into the cupboard.</summary>
    public Task<Outcome<YarnsTaken>> TakeAsync(Caller caller, YarnTable table, CancellationToken cancel = default) =>
        contexts.AttemptAsync<Outcome<YarnsTaken>>(async context =>
        {
            if (!await context.IsMemberAsync(caller, cancel)) return Outcome.Refused(Refusals.NoMember);
            List<Yarn> there = await context.YarnsOf(caller).ToListAsync(cancel);
            HashSet<string> keys = [.. there.Select(yarn => KeyOf(yarn.Details))];
            DateTimeOffset now = clock.Now();
            int added = 0, lots = 0, known = 0;
            foreach (YarnLine line in table.Lines.Where(line => line.IsTaken))
            {
                if (!keys.Add(KeyOf(line.Yarn!)))
                {
                    known++;
                    continue;
                }

                var yarn = new Yarn(Guid.CreateVersion7(now), caller.StudioId, line.Yarn!);
                context.Yarns.Add(yarn);
                added++;
                if (line.Balls is not { } balls) continue;
                context.Lots.Add(new StashLot(Guid.CreateVersion7(now), caller.StudioId, new LotDetails(yarn.Id, balls, null, line.DyeLot, "", "")));
                lots++;
            }

            await context.SaveChangesAsync(cancel);
            return new YarnsTaken(added, lots, known);
        }, cancel);

    private static string KeyOf(YarnDetails yarn) => $"{yarn.Name}\n{yarn.ColourName}".ToUpperInvariant();
}
