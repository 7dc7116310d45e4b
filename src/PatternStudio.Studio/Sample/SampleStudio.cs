using PatternStudio.Studio.Data;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Materials;

namespace PatternStudio.Studio.Sample;

/// <summary>An invented studio to look around in: its yarns, its designs and a swatch for each.</summary>
internal static class SampleStudio
{
    public const string Name = "Saltmarsh Stitches";

    /// <summary>Loads the sample into a studio and saves it. A transaction is the caller's.</summary>
    public static async Task LoadAsync(StudioDbContext context, Caller caller, DateTimeOffset now, CancellationToken cancel)
    {
        var yarns = SampleYarns.All.ToDictionary(
            details => details, details => new Yarn(Guid.CreateVersion7(now), caller.StudioId, details));
        context.Yarns.AddRange(yarns.Values);
        context.Lots.AddRange(SampleYarns.Lots.Select(lot => new StashLot(
            Guid.CreateVersion7(now), caller.StudioId, new(yarns[lot.Yarn].Id, lot.Balls, lot.OpenedGrams, lot.DyeLot, lot.Place, ""))));
        for (int i = 0; i < SampleDesign.All.Count; i++)
        {
            // Each a few days older than the one before, as if they had been made one after another.
            SampleDesign sample = SampleDesign.All[i];
            await LoadAsync(context, caller, sample, yarns[sample.Yarn].Id, now.AddDays(-3 * i), cancel);
        }
    }

    private static async Task LoadAsync(
        StudioDbContext context, Caller caller, SampleDesign sample, Guid yarnId, DateTimeOffset day, CancellationToken cancel)
    {
        Design design = context.Lay(caller, sample.Title, sample.ReadText(), day);
        design.MoveTo(sample.State, day);
        // A design and its swatch point at each other: the design is stored first, and computed when it has both swatch and yarn.
        await context.SaveChangesAsync(cancel);

        DateOnly measured = DateOnly.FromDateTime(day.UtcDateTime);
        var swatch = new Swatch(
            Guid.CreateVersion7(day), design.Id, sample.Swatch with { YarnId = yarnId, MeasuredOn = measured });
        context.Swatches.Add(swatch);
        design.MakeOf(yarnId, day);
        await context.MeasureByAsync(design, swatch.Id, day, cancel);
        await context.SaveChangesAsync(cancel);
    }
}
