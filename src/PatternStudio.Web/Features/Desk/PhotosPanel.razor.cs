using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;
using Microsoft.Extensions.Localization;
using PatternStudio.Studio;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Features.SwatchBook;

namespace PatternStudio.Web.Features.Desk;

/// <summary>The photos of the finished piece: taken with the phone or chosen as files, captioned, and one of them put on the card of the shelf.</summary>
public sealed partial class PhotosPanel
{
    private IReadOnlyList<string> wrong = [];
    private bool reading;

    /// <summary>In the order in which they were added.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyList<KeptDesignPhoto> Photos { get; set; } = [];

    /// <summary>Keeps a photo; gives back why it can't be.</summary>
    [Parameter, EditorRequired]
    public Func<PreparedPhoto, Task<Outcome>> Add { get; set; } = null!;

    /// <summary>Another caption for a photo.</summary>
    [Parameter]
    public EventCallback<(Guid Photo, string Caption)> Say { get; set; }

    /// <summary>The photo for the card; null for the small chart.</summary>
    [Parameter]
    public EventCallback<Guid?> Choose { get; set; }

    [Parameter]
    public EventCallback<KeptDesignPhoto> Remove { get; set; }

    [Inject]
    private IStringLocalizer<SwatchWords> PhotoWords { get; set; } = null!;

    private int Place(KeptDesignPhoto photo) => Photos.TakeWhile(other => other != photo).Count() + 1;

    private string NameOf(KeptDesignPhoto photo) => photo.Caption.Length > 0 ? photo.Caption : Words["PhotoNumber", Place(photo)];

    /// <summary>Each file for itself: one that can't be taken keeps the others from nothing.</summary>
    private async Task AddAsync(InputFileChangeEventArgs chosen)
    {
        (reading, wrong) = (true, []);
        var troubles = new List<string>();
        foreach (IBrowserFile file in chosen.GetMultipleFiles(Math.Max(1, chosen.FileCount)))
        {
            Outcome<PreparedPhoto> read = await SentPhoto.ReadAsync(file, PhotoWords);
            Outcome kept = read.Value is { } photo && read.Succeeded ? await Add(photo) : Outcome.Refused(read.Messages);
            if (!kept.Succeeded) troubles.Add(Words["PhotoRefused", file.Name, kept.ToString()]);
        }

        (reading, wrong) = (false, troubles);
    }

    private Task SayAsync(KeptDesignPhoto photo, ChangeEventArgs change) => Say.InvokeAsync((photo.Id, change.Value as string ?? ""));
}
