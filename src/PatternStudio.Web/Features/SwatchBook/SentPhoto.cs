using Microsoft.AspNetCore.Components.Forms;
using Microsoft.Extensions.Localization;
using PatternStudio.Studio;
using PatternStudio.Studio.Materials;

namespace PatternStudio.Web.Features.SwatchBook;

/// <summary>A photo on its way in: read and drawn anew at once, so that a wrong file is told where it was chosen.</summary>
internal static class SentPhoto
{
    /// <summary>The photo; else what is wrong with the file, for the field <see cref="PhotoReader.Field"/>.</summary>
    public static async Task<Outcome<PreparedPhoto>> ReadAsync(IBrowserFile file, IStringLocalizer<SwatchWords> words)
    {
        if (file.Size > PhotoReader.MostBytes) return Outcome.Refused(PhotoReader.Field, words["PhotoTooLarge", PhotoReader.MostBytes / 1024 / 1024]);
        try
        {
            using var bytes = new MemoryStream();
            await using (Stream sent = file.OpenReadStream(PhotoReader.MostBytes)) await sent.CopyToAsync(bytes);
            return await Task.Run(() => PhotoReader.Read(bytes.ToArray()));
        }
        catch (IOException)
        {
            return Outcome.Refused(PhotoReader.Field, words["PhotoInterrupted"]);
        }
    }
}
