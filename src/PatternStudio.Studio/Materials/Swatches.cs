using Microsoft.EntityFrameworkCore;
using PatternStudio.Studio.Data;

namespace PatternStudio.Studio.Materials;

/// <summary>The swatches of a design. Whatever changes the one that calibrates it computes the design anew.</summary>
public sealed class Swatches(IDbContextFactory<StudioDbContext> contexts, TimeProvider clock)
{
    /// <summary>The swatches of a design, the newest first; empty where the studio has no such design.</summary>
    public Task<IReadOnlyList<KeptSwatch>> ListAsync(Caller caller, Guid designId, CancellationToken cancel = default)
    {
        _ = (contexts, clock);
        return Task.FromResult<IReadOnlyList<KeptSwatch>>([]);
    }

    /// <summary>Adds a swatch; the first of a design is chosen to calibrate it. Gives its id.</summary>
    public Task<Outcome<Guid>> AddAsync(Caller caller, Guid designId, SwatchDetails details, CancellationToken cancel = default) =>
        throw new NotSupportedException();

    /// <summary>Corrects a swatch.</summary>
    public Task<Outcome> ChangeAsync(Caller caller, Guid swatchId, SwatchDetails details, CancellationToken cancel = default) =>
        throw new NotSupportedException();

    /// <summary>Removes a swatch; where it calibrated the design, the design has none then.</summary>
    public Task<Outcome> RemoveAsync(Caller caller, Guid swatchId, CancellationToken cancel = default) =>
        throw new NotSupportedException();

    /// <summary>Chooses the swatch that calibrates a design; null for none.</summary>
    public Task<Outcome> ChooseAsync(Caller caller, Guid designId, Guid? swatchId, CancellationToken cancel = default) =>
        throw new NotSupportedException();
}
