using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;
using PatternStudio.Studio;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Shell.Parts;

namespace PatternStudio.Web.Features.SwatchBook;

/// <summary>Takes a photo from a file or a phone's camera; what is kept is read and drawn anew at once, so that a wrong file is told here.</summary>
public sealed partial class PhotoField
{
    private readonly string id = $"f{Guid.NewGuid():N}";
    private string? wrong;
    private bool reading;

    /// <summary>What becomes of the photo; null to leave it as it is.</summary>
    [Parameter]
    public PhotoChange? Change { get; set; }

    [Parameter]
    public EventCallback<PhotoChange?> ChangeChanged { get; set; }

    /// <summary>The photo that is kept already; null for none.</summary>
    [Parameter]
    public Guid? Kept { get; set; }

    private string? Shown => Change is null ? Kept is { } kept ? PhotoAddress.Small(kept) : null
        : Change.With is { } with ? $"data:image/jpeg;base64,{Convert.ToBase64String(with.Small)}" : null;

    private async Task ReadAsync(InputFileChangeEventArgs chosen)
    {
        (reading, wrong) = (true, null);
        Outcome<PreparedPhoto> read = await SentPhoto.ReadAsync(chosen.File, Words);
        reading = false;
        wrong = read.Messages.For(PhotoReader.Field);
        if (read.Value is { } photo && read.Succeeded) await ChangeChanged.InvokeAsync(new PhotoChange(photo));
    }

    private Task RemoveAsync()
    {
        wrong = null;
        return ChangeChanged.InvokeAsync(Kept is null ? null : new PhotoChange(null));
    }
}
