using PatternStudio.Studio.Data;

namespace PatternStudio.Studio.Designs;

/// <summary>Begins designs, for the desk and for the sample studio.</summary>
internal static class DesignStart
{
    /// <summary>Adds a design with its first version and results. Saving is the caller's.</summary>
    public static async Task<Design> BeginAsync(
        this StudioDbContext context, Caller caller, string title, string text, DateTimeOffset now, CancellationToken cancel)
    {
        Design design = context.Lay(caller, title, text, now);
        await context.ReckonAsync(design, now, cancel);
        return design;
    }

    /// <summary>Adds a design with its first version; computing and saving are the caller's.</summary>
    public static Design Lay(this StudioDbContext context, Caller caller, string title, string text, DateTimeOffset now)
    {
        var design = new Design(Guid.CreateVersion7(now), caller.StudioId, title, now);
        context.Designs.Add(design);
        context.Versions.Add(design.Save(text, caller.AccountId, now));
        return design;
    }
}
