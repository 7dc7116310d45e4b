using Microsoft.EntityFrameworkCore;
using PatternStudio.Studio.Data;
using PatternStudio.Studio.Designs;

namespace PatternStudio.Studio.Materials;

/// <summary>What is in the cupboard, and what designs have set aside of it.</summary>
public sealed class Stash(IDbContextFactory<StudioDbContext> contexts, TimeProvider clock)
{
    /// <summary>The lots of the caller's studio by yarn, dye lot and age.</summary>
    public async Task<IReadOnlyList<KeptLot>> ListAsync(Caller caller, CancellationToken cancel = default)
    {
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        var lots = await (
            from lot in context.LotsOf(caller).AsNoTracking()
            join yarn in context.Yarns.AsNoTracking() on lot.YarnId equals yarn.Id
            orderby yarn.Name, lot.DyeLot, lot.Id
            select new { Lot = lot, Yarn = yarn }).ToListAsync(cancel);
        ILookup<Guid, LotReservation> reserved = (await ReservedAsync(context, caller, cancel)).ToLookup(it => it.LotId, it => it.Reservation);
        return [.. lots.Select(line => new KeptLot(line.Lot.Id, line.Lot.Details, line.Yarn.Details, [.. reserved[line.Lot.Id]]))];
    }

    /// <summary>Puts a lot into the cupboard. Gives its id.</summary>
    public async Task<Outcome<Guid>> AddAsync(Caller caller, LotDetails details, CancellationToken cancel = default)
    {
        LotDetails tidy = Tidy(details);
        if (StashRefusals.OfLot(tidy) is { Length: > 0 } faults) return Outcome.Refused(faults);
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        if (!await context.IsMemberAsync(caller, cancel)) return Outcome.Refused(Refusals.NoMember);
        if (!await HasYarnAsync(context, caller, tidy, cancel)) return Outcome.Refused(StashRefusals.NoYarnOfLot);
        var lot = new StashLot(Guid.CreateVersion7(clock.Now()), caller.StudioId, tidy);
        context.Lots.Add(lot);
        await context.SaveChangesAsync(cancel);
        return lot.Id;
    }

    /// <summary>Corrects a lot: counted again, moved. What designs have set aside stays, even where there is less now; the list shows it.</summary>
    /// <param name="before">The lot as it was when the correction began: where it is another by now, nothing is written. Null to write in any case.</param>
    public async Task<ChangeOutcome<LotDetails>> ChangeAsync(
        Caller caller, Guid lotId, LotDetails details, LotDetails? before = null, CancellationToken cancel = default)
    {
        LotDetails tidy = Tidy(details);
        if (StashRefusals.OfLot(tidy) is { Length: > 0 } faults) return Outcome.Refused(faults);
        return await contexts.AttemptAsync<ChangeOutcome<LotDetails>>(async context =>
        {
            StashLot? lot = await context.LotsOf(caller).FirstOrDefaultAsync(it => it.Id == lotId, cancel);
            if (lot is null) return Outcome.Refused(StashRefusals.NoLot);
            if (!await HasYarnAsync(context, caller, tidy, cancel)) return Outcome.Refused(StashRefusals.NoYarnOfLot);
            if (before is not null && lot.Details != before && lot.Details != tidy) return ChangeOutcome.Overtaken(lot.Details);
            lot.Change(tidy);
            await context.SaveChangesAsync(cancel);
            return Outcome.Done;
        }, cancel);
    }

    /// <summary>Takes a lot out of the cupboard, and with it what was set aside of it.</summary>
    /// <returns>The lot, so that it can be put back.</returns>
    public Task<Outcome<RemovedLot>> RemoveAsync(Caller caller, Guid lotId, CancellationToken cancel = default) =>
        contexts.AttemptAsync<Outcome<RemovedLot>>(async context =>
        {
            StashLot? lot = await context.LotsOf(caller).FirstOrDefaultAsync(it => it.Id == lotId, cancel);
            if (lot is null) return Outcome.Refused(StashRefusals.NoLot);
            List<Reservation> reserved = await context.Reservations.Where(it => it.LotId == lotId).ToListAsync(cancel);
            context.Reservations.RemoveRange(reserved);
            context.Lots.Remove(lot);
            await context.SaveChangesAsync(cancel);
            return new RemovedLot(lot.Details, reserved.ToDictionary(it => it.DesignId, it => Si.Grams(it.Kilograms)));
        }, cancel);

    /// <summary>Puts a removed lot back into the cupboard, and sets aside again what was set aside of it.</summary>
    public Task<Outcome> PutBackAsync(Caller caller, RemovedLot removed, CancellationToken cancel = default) =>
        contexts.AttemptAsync(async context =>
        {
            if (!await HasYarnAsync(context, caller, removed.Details, cancel)) return Outcome.Refused(StashRefusals.NoYarnOfLot);
            var lot = new StashLot(Guid.CreateVersion7(clock.Now()), caller.StudioId, removed.Details);
            context.Lots.Add(lot);
            // Deleted designs too: they may come back.
            Guid[] holders = [.. removed.Reserved.Keys];
            foreach (Guid design in await context.AllDesignsOf(caller).Where(it => holders.Contains(it.Id)).Select(it => it.Id).ToListAsync(cancel))
                context.Reservations.Add(new Reservation(design, lot.Id, removed.Reserved[design]));
            await context.SaveChangesAsync(cancel);
            return Outcome.Done;
        }, cancel);

    /// <summary>Sets yarn of a lot aside for a design, in place of what the design had set aside of it before.</summary>
    /// <param name="grams">Above 0 and at most what is free; 0 to set nothing aside any more.</param>
    public Task<Outcome> ReserveAsync(Caller caller, Guid designId, Guid lotId, double grams, CancellationToken cancel = default) =>
        contexts.AttemptAsync(async context =>
        {
            if (!await context.DesignsOf(caller).AnyAsync(it => it.Id == designId, cancel)) return Outcome.Refused(Refusals.NoDesign);
            StashLot? lot = await context.LotsOf(caller).FirstOrDefaultAsync(it => it.Id == lotId, cancel);
            if (lot is null) return Outcome.Refused(StashRefusals.NoLot);
            if (grams != 0 && await RefusalAsync(context, caller, designId, lot, grams, cancel) is { } refusal) return Outcome.Refused(refusal);
            await SetAsync(context, designId, lot, grams, cancel);
            await context.SaveChangesAsync(cancel);
            return Outcome.Done;
        }, cancel);

    private static async Task<FieldMessage?> RefusalAsync(
        StudioDbContext context, Caller caller, Guid designId, StashLot lot, double grams, CancellationToken cancel)
    {
        if (MaterialRefusals.Range("Grams", "What is set aside", grams, 0, 1_000_000, " g").FirstOrDefault() is { } fault) return fault;
        Yarn yarn = await context.Yarns.FirstAsync(it => it.Id == lot.YarnId, cancel);
        LotReservation[] reserved = [.. (await ReservedAsync(context, caller, cancel)).Where(it => it.LotId == lot.Id).Select(it => it.Reservation)];
        return new KeptLot(lot.Id, lot.Details, yarn.Details, reserved).GramsFor(designId) switch
        {
            null => StashRefusals.WeightOfBallNotKnown,
            // A hundredth of a gram: what is left of adding up thirds.
            { } free when grams > free + 0.01 => StashRefusals.NotFree(free),
            _ => null,
        };
    }

    private static async Task SetAsync(StudioDbContext context, Guid designId, StashLot lot, double grams, CancellationToken cancel)
    {
        Reservation? before = await context.Reservations.FindAsync([designId, lot.Id], cancel);
        if (grams == 0 && before is not null) context.Reservations.Remove(before);
        else if (grams > 0 && before is not null) before.Take(grams);
        else if (grams > 0) context.Reservations.Add(new Reservation(designId, lot.Id, grams));
        lot.Touch();
    }

    /// <summary>What designs have set aside; deleted ones don't hold anything back.</summary>
    private static async Task<IEnumerable<(Guid LotId, LotReservation Reservation)>> ReservedAsync(
        StudioDbContext context, Caller caller, CancellationToken cancel)
    {
        var lines = await (
            from reservation in context.Reservations
            join design in context.DesignsOf(caller) on reservation.DesignId equals design.Id
            orderby design.TitleKey, design.Id
            select new { reservation.LotId, design.Id, design.Title, reservation.Kilograms }).ToListAsync(cancel);
        return lines.Select(line => (line.LotId, new LotReservation(line.Id, line.Title, Si.Grams(line.Kilograms))));
    }

    private static Task<bool> HasYarnAsync(StudioDbContext context, Caller caller, LotDetails details, CancellationToken cancel) =>
        context.YarnsOf(caller).AnyAsync(it => it.Id == details.YarnId, cancel);

    private static LotDetails Tidy(LotDetails details) => details with
    {
        DyeLot = Wording.Tidy(details.DyeLot),
        Place = Wording.Tidy(details.Place),
        Note = Wording.Tidy(details.Note),
    };
}
