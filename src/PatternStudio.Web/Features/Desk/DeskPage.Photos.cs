using Microsoft.AspNetCore.Components;
using PatternStudio.Studio;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Shell;

namespace PatternStudio.Web.Features.Desk;

/// <summary>Photos of the finished piece.</summary>
public sealed partial class DeskPage
{
    private IReadOnlyList<KeptDesignPhoto> photos = [];

    [Inject]
    private DesignPhotos Photos { get; set; } = null!;

    private async Task<Outcome> AddPhotoAsync(PreparedPhoto photo)
    {
        Outcome<Guid> added = await Photos.AddAsync(caller, Id, photo);
        await ShowPhotosAsync();
        return new Outcome(added.Messages);
    }

    private async Task SayPhotoAsync((Guid Photo, string Caption) said) => await DoAsync(Photos.SayAsync(caller, Id, said.Photo, said.Caption), ShowPhotosAsync);

    private async Task ChoosePhotoAsync(Guid? photo) => await DoAsync(Photos.ChooseAsync(caller, Id, photo), ShowPhotosAsync);

    private async Task RemovePhotoAsync(KeptDesignPhoto photo)
    {
        Outcome<PreparedPhoto> removed = await Photos.RemoveAsync(caller, Id, photo.Id);
        trouble = removed.Succeeded ? null : removed.ToString();
        await ShowPhotosAsync();
        if (removed.Value is { } picture) Snackbar.OfferUndo(Words["PhotoRemoved"], Words["Undo"], () => InvokeAsync(() => PutPhotoBackAsync(photo, picture)));
    }

    private async Task PutPhotoBackAsync(KeptDesignPhoto photo, PreparedPhoto picture)
    {
        Outcome<Guid> added = await Photos.AddAsync(caller, Id, picture, photo.Caption);
        if (added.Succeeded && photo.OnCard) await Photos.ChooseAsync(caller, Id, added.Value);
        trouble = added.Succeeded ? null : added.ToString();
        await ShowPhotosAsync();
    }

    private async Task ShowPhotosAsync()
    {
        photos = await Photos.ListAsync(caller, Id);
        StateHasChanged();
    }
}
