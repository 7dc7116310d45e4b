using Microsoft.EntityFrameworkCore;
using PatternStudio.Studio.Data;

namespace PatternStudio.Studio.Designs;

/// <summary>The small charts of designs as stored.</summary>
public sealed class DesignPictures(IDbContextFactory<StudioDbContext> contexts)
{
    /// <summary>A PNG; null where the caller's studio has no such design, or there is nothing to draw. Deleted designs have theirs too.</summary>
    public async Task<byte[]?> FindAsync(Caller caller, Guid designId, CancellationToken cancel = default)
    {
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        return await context.Faces
            .Where(face => face.DesignId == designId && context.AllDesignsOf(caller).Any(design => design.Id == designId))
            .Select(face => face.Picture).FirstOrDefaultAsync(cancel);
    }
}
