using Microsoft.EntityFrameworkCore;
using PatternStudio.Studio.Data;

namespace PatternStudio.Studio.Materials;

/// <summary>The pictures of a studio. They come and go with what they show.</summary>
public sealed class Photos(IDbContextFactory<StudioDbContext> contexts)
{
    /// <summary>A JPEG; null where the caller's studio has no such photo.</summary>
    /// <param name="small">True for the one for lists.</param>
    public async Task<byte[]?> FindAsync(Caller caller, Guid photoId, bool small, CancellationToken cancel = default)
    {
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        return await context.PhotosOf(caller).Where(photo => photo.Id == photoId)
            .Select(photo => small ? photo.Small : photo.Picture)
            .FirstOrDefaultAsync(cancel);
    }
}
