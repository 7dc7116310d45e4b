using PatternStudio.Studio;
using PatternStudio.Studio.Materials;

namespace PatternStudio.Web.Features.Testing.Reporting;

/// <summary>
/// A photo that was sent and read. Where another field of the form is wrong, the form carries it back and forth as text, so that it need not be chosen again; it is read by its content
/// each time.
/// </summary>
/// <param name="Prepared">Turned upright, scaled down, written anew.</param>
public sealed record KeptUpload(PreparedPhoto Prepared)
{
    /// <summary>As the form carries it.</summary>
    public string Field => Convert.ToBase64String(Prepared.Picture);

    public string Shown => $"data:image/jpeg;base64,{Convert.ToBase64String(Prepared.Small)}";

    /// <summary>From a file just chosen, else from what the form carried; null for neither.</summary>
    public static async Task<Outcome<KeptUpload?>> ReadAsync(IFormCollection form, string name, CancellationToken cancel)
    {
        if (form.Files[name] is { Length: > 0 } file)
        {
            if (file.Length > PhotoReader.MostBytes) return Outcome.Refused(name, PhotoReader.Read(new byte[PhotoReader.MostBytes + 1]).Messages[0].Message);
            using var bytes = new MemoryStream();
            await file.CopyToAsync(bytes, cancel);
            Outcome<PreparedPhoto> read = await Task.Run(() => PhotoReader.Read(bytes.ToArray()), cancel);
            return read.Succeeded ? new KeptUpload(read.Value!) : Outcome.Refused(name, read.Messages[0].Message);
        }

        string carried = form[$"{name}.Kept"].ToString();
        byte[] held = new byte[carried.Length];
        if (carried.Length == 0 || !Convert.TryFromBase64String(carried, held, out int length)) return (KeptUpload?)null;
        Outcome<PreparedPhoto> again = PhotoReader.Read(held[..length]);
        return again.Succeeded ? new KeptUpload(again.Value!) : (KeptUpload?)null;
    }
}
