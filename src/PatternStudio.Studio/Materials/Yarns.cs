using Microsoft.EntityFrameworkCore;
using PatternStudio.Studio.Data;

namespace PatternStudio.Studio.Materials;

/// <summary>The yarns of a studio. Whatever changes a yarn computes the designs made of it anew.</summary>
public sealed class Yarns(IDbContextFactory<StudioDbContext> contexts, TimeProvider clock)
{
    /// <summary>The yarns of the caller's studio by name.</summary>
    public Task<IReadOnlyList<KeptYarn>> ListAsync(Caller caller, CancellationToken cancel = default)
    {
        _ = (contexts, clock);
        return Task.FromResult<IReadOnlyList<KeptYarn>>([]);
    }

    /// <summary>Adds a yarn. Gives its id.</summary>
    public Task<Outcome<Guid>> AddAsync(Caller caller, YarnDetails details, CancellationToken cancel = default) =>
        throw new NotSupportedException();

    /// <summary>Corrects a yarn.</summary>
    public Task<Outcome> ChangeAsync(Caller caller, Guid yarnId, YarnDetails details, CancellationToken cancel = default) =>
        throw new NotSupportedException();

    /// <summary>Removes a yarn that no design and no swatch uses.</summary>
    public Task<Outcome> RemoveAsync(Caller caller, Guid yarnId, CancellationToken cancel = default) =>
        throw new NotSupportedException();

    /// <summary>Chooses the yarn that a design is made of; null for none.</summary>
    public Task<Outcome> ChooseAsync(Caller caller, Guid designId, Guid? yarnId, CancellationToken cancel = default) =>
        throw new NotSupportedException();
}
