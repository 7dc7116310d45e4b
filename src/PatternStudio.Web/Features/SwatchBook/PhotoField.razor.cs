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
        Outcome<PreparedPhoto> read = await ReadAsync(chosen.File);
        reading = false;
        wrong = read.Messages.For(PhotoReader.Field);
        if (read.Value is { } photo && read.Succeeded) await ChangeChanged.InvokeAsync(new PhotoChange(photo));
    }

    private async Task<Outcome<PreparedPhoto>> ReadAsync(IBrowserFile file)
    {
        if (file.Size > PhotoReader.MostBytes) return Outcome.Refused(PhotoReader.Field, Words["PhotoTooLarge", PhotoReader.MostBytes / 1024 / 1024]);
        try
        {
            using var bytes = new MemoryStream();
            await using (Stream sent = file.OpenReadStream(PhotoReader.MostBytes)) await sent.CopyToAsync(bytes);
            return await Task.Run(() => PhotoReader.Read(bytes.ToArray()));
        }
        catch (IOException)
        {
            return Outcome.Refused(PhotoReader.Field, Words["PhotoInterrupted"]);
        }
    }

    private Task RemoveAsync()
    {
        wrong = null;
        return ChangeChanged.InvokeAsync(Kept is null ? null : new PhotoChange(null));
    }
}
