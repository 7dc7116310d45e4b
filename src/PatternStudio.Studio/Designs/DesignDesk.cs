using Microsoft.EntityFrameworkCore;
using PatternStudio.Studio.Data;

namespace PatternStudio.Studio.Designs;

/// <summary>Opens, writes and saves one design.</summary>
public sealed class DesignDesk(IDbContextFactory<StudioDbContext> contexts, TimeProvider clock)
{
    /// <summary>Opens a design; null where the caller's studio has none of that id, or it was deleted.</summary>
    public Task<OpenDesign?> OpenAsync(Caller caller, Guid designId, CancellationToken cancel = default)
    {
        _ = (contexts, clock);
        return Task.FromResult<OpenDesign?>(null);
    }

    /// <summary>Begins a design; its text is version 1. Gives its id.</summary>
    public Task<Outcome<Guid>> CreateAsync(Caller caller, string title, string text = "", CancellationToken cancel = default) =>
        throw new NotSupportedException();

    /// <summary>Gives a design another title.</summary>
    public Task<Outcome> RenameAsync(Caller caller, Guid designId, string title, CancellationToken cancel = default) =>
        throw new NotSupportedException();

    /// <summary>Moves a design on (or back): idea, writing, testing, published.</summary>
    public Task<Outcome> MoveToAsync(Caller caller, Guid designId, DesignState state, CancellationToken cancel = default) =>
        throw new NotSupportedException();

    /// <summary>Takes a design out of the list. Everything of it is kept; <see cref="RestoreAsync"/> brings it back.</summary>
    public Task<Outcome> DeleteAsync(Caller caller, Guid designId, CancellationToken cancel = default) =>
        throw new NotSupportedException();

    /// <summary>Brings a deleted design back.</summary>
    public Task<Outcome> RestoreAsync(Caller caller, Guid designId, CancellationToken cancel = default) =>
        throw new NotSupportedException();

    /// <summary>Keeps a text as the design's next version and stores what is computed from it, both or neither.</summary>
    /// <param name="basedOnVersion">The version that the writer had before them.</param>
    public Task<SaveOutcome> SaveAsync(
        Caller caller, Guid designId, string text, int basedOnVersion, CancellationToken cancel = default) =>
        throw new NotSupportedException();

    /// <summary>All versions of a design, the newest first; empty where the studio has no such design.</summary>
    public Task<IReadOnlyList<VersionSummary>> VersionsAsync(Caller caller, Guid designId, CancellationToken cancel = default) =>
        throw new NotSupportedException();

    /// <summary>The text of one version; null where there is none.</summary>
    public Task<VersionText?> VersionAsync(Caller caller, Guid designId, int number, CancellationToken cancel = default) =>
        throw new NotSupportedException();
}
