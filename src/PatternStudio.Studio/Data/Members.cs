using Microsoft.EntityFrameworkCore;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Materials;
using PatternStudio.Studio.Rounds;
using PatternStudio.Studio.Tags;

namespace PatternStudio.Studio.Data;

/// <summary>
/// What a caller may see: the only way by which the services reach designs and what they are made of. Membership is asked of the store
/// each time, so that an account that has left a studio sees nothing of it from then on.
/// </summary>
internal static class Members
{
    public static Task<bool> IsMemberAsync(this StudioDbContext context, Caller caller, CancellationToken cancel) =>
        context.Memberships.AnyAsync(it => it.AccountId == caller.AccountId && it.StudioId == caller.StudioId, cancel);

    /// <summary>The designs of the caller's studio, deleted ones too.</summary>
    public static IQueryable<Design> AllDesignsOf(this StudioDbContext context, Caller caller) =>
        context.Designs.Where(design => design.StudioId == caller.StudioId && context.Memberships.Any(
            it => it.AccountId == caller.AccountId && it.StudioId == caller.StudioId));

    /// <summary>The designs of the caller's studio that are not deleted.</summary>
    public static IQueryable<Design> DesignsOf(this StudioDbContext context, Caller caller) =>
        context.AllDesignsOf(caller).Where(design => design.Deleted == null);

    /// <summary>The swatches of those designs.</summary>
    public static IQueryable<Swatch> SwatchesOf(this StudioDbContext context, Caller caller) =>
        context.Swatches.Where(swatch => context.DesignsOf(caller).Any(design => design.Id == swatch.DesignId));

    /// <summary>The yarns of the caller's studio.</summary>
    public static IQueryable<Yarn> YarnsOf(this StudioDbContext context, Caller caller) =>
        context.Yarns.Where(yarn => yarn.StudioId == caller.StudioId && context.Memberships.Any(
            it => it.AccountId == caller.AccountId && it.StudioId == caller.StudioId));

    /// <summary>The lots in the cupboard of the caller's studio.</summary>
    public static IQueryable<StashLot> LotsOf(this StudioDbContext context, Caller caller) =>
        context.Lots.Where(lot => lot.StudioId == caller.StudioId && context.Memberships.Any(
            it => it.AccountId == caller.AccountId && it.StudioId == caller.StudioId));

    /// <summary>The photos of the caller's studio.</summary>
    public static IQueryable<Photo> PhotosOf(this StudioDbContext context, Caller caller) =>
        context.Photos.Where(photo => photo.StudioId == caller.StudioId && context.Memberships.Any(
            it => it.AccountId == caller.AccountId && it.StudioId == caller.StudioId));

    /// <summary>The tags of the caller's studio.</summary>
    public static IQueryable<Tag> TagsOf(this StudioDbContext context, Caller caller) =>
        context.Tags.Where(tag => tag.StudioId == caller.StudioId && context.Memberships.Any(
            it => it.AccountId == caller.AccountId && it.StudioId == caller.StudioId));

    /// <summary>The test rounds of the caller's designs.</summary>
    public static IQueryable<TestRound> RoundsOf(this StudioDbContext context, Caller caller) =>
        context.Rounds.Where(round => context.DesignsOf(caller).Any(design => design.Id == round.DesignId));
}
