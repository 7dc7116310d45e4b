using System.Text;
using System.Text.Json;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Materials;

namespace PatternStudio.Studio.Exchange;

/// <summary>A design read from an archive, with its texts and photos.</summary>
internal sealed record ReadDesign(ArchivedDesign Design, IReadOnlyList<string> Texts, IReadOnlyDictionary<Guid, PreparedPhoto> Photos);

/// <summary>Reads archives and judges everything in them before anything is stored.</summary>
internal static class ArchiveReader
{
    private const int MostJson = 32 * 1024 * 1024;
    private static readonly UTF8Encoding Utf8 = new(false, throwOnInvalidBytes: true);

    /// <summary>True where a zip is an archive of a studio and no heap of texts.</summary>
    public static bool IsArchive(PackedFiles zip) => zip.Names.Contains(ArchiveLayout.Head);

    public static Outcome<ArchiveHead> Head(PackedFiles zip)
    {
        Outcome<ArchiveHead> read = Json<ArchiveHead>(zip, ArchiveLayout.Head);
        if (!read.Succeeded) return read;
        return read.Value switch
        {
            { Format: not ArchiveLayout.Format } => Refuse(ArchiveLayout.Head, "it is no archive of this program"),
            { Layout: > ArchiveLayout.Number } => Refuse(ArchiveLayout.Head, "it was written by a newer program. Renew this one first"),
            _ => read,
        };
    }

    public static Outcome<ArchivedYarns> Yarns(PackedFiles zip)
    {
        Outcome<ArchivedYarns> read = Json<ArchivedYarns>(zip, ArchiveLayout.Yarns);
        if (read.Value is not { } yarns) return read;
        if (yarns.Yarns is null || yarns.Lots is null) return Refuse(ArchiveLayout.Yarns, "its lists are missing");
        HashSet<Guid> ids = [.. yarns.Yarns.Select(yarn => yarn.Id)];
        string? fault = yarns.Yarns.SelectMany(yarn => MaterialRefusals.OfYarn(yarn.Details)).Concat(yarns.Lots.SelectMany(lot => StashRefusals.OfLot(lot.Details)))
            .FirstOrDefault()?.Message;
        if (fault is not null) return Refuse(ArchiveLayout.Yarns, fault.TrimEnd('.'));
        return ids.Count < yarns.Yarns.Count || yarns.Lots.Any(lot => !ids.Contains(lot.Details.YarnId))
            ? Refuse(ArchiveLayout.Yarns, "a yarn is there twice, or a lot is of a yarn that is not there")
            : read;
    }

    /// <summary>The folders of the designs, in the archive's order.</summary>
    public static IReadOnlyList<string> Folders(PackedFiles zip) =>
        [.. zip.Names.Where(name => name.StartsWith("designs/", StringComparison.Ordinal) && name.EndsWith("/" + ArchiveLayout.Design, StringComparison.Ordinal))
            .Select(name => name[..^ArchiveLayout.Design.Length]).Order(StringComparer.Ordinal)];

    public static Outcome<ReadDesign> Design(PackedFiles zip, string folder, IReadOnlySet<Guid> yarns)
    {
        string file = folder + ArchiveLayout.Design;
        Outcome<ArchivedDesign> read = Json<ArchivedDesign>(zip, file);
        if (read.Value is not { } design) return Outcome.Refused(read.Messages);
        if (Fault(design, yarns) is { } fault) return Refuse(file, fault);
        var texts = new List<string>();
        foreach (ArchivedVersion version in design.Versions)
        {
            string name = ArchiveLayout.VersionFile(folder, version.Number);
            Outcome<string> text = Text(zip, name, FileText.MostBytes);
            if (!text.Succeeded) return Outcome.Refused(text.Messages);
            if (Refusals.OfText(text.Value!) is [{ } wrong, ..]) return Refuse(name, wrong.Message.TrimEnd('.'));
            texts.Add(text.Value!);
        }

        var photos = new Dictionary<Guid, PreparedPhoto>();
        foreach (Guid photo in PhotosOf(design).Distinct())
        {
            string name = ArchiveLayout.PhotoFile(photo);
            Outcome<byte[]> bytes = zip.Read(name, PhotoReader.MostBytes);
            if (!bytes.Succeeded) return Outcome.Refused(bytes.Messages);
            Outcome<PreparedPhoto> drawn = PhotoReader.Read(bytes.Value!);
            if (!drawn.Succeeded) return Refuse(name, drawn.ToString().TrimEnd('.'));
            photos[photo] = drawn.Value!;
        }

        return new ReadDesign(design, texts, photos);
    }

    private static IEnumerable<Guid> PhotosOf(ArchivedDesign design) =>
        design.Swatches.Select(swatch => swatch.Photo).OfType<Guid>().Concat((design.Photos ?? []).Select(photo => photo.Id));

    private static string? PhotoFault(IReadOnlyList<ArchivedPhoto> photos, Guid? onCard)
    {
        if (photos.Count > DesignPhoto.Most) return $"it has more than {DesignPhoto.Most} photos";
        if (photos.DistinctBy(photo => photo.Id).Count() < photos.Count) return "a photo is there twice";
        if (photos.SelectMany(photo => Wording.ShortFaults("", "The caption of a photo", Wording.Tidy(photo.Caption), DesignPhoto.CaptionLength)).FirstOrDefault() is { } caption)
            return caption.Message.TrimEnd('.');
        return onCard is { } shown && photos.All(photo => photo.Id != shown) ? "the photo on its card is not there" : null;
    }

    private static string? Fault(ArchivedDesign design, IReadOnlySet<Guid> yarns)
    {
        if (design is { Versions: not { Count: > 0 } } or { Swatches: null } or { Tags: null } or { Reserved: null } || design.Versions.Any(version => version.Computed is null))
            return "its lists are missing";
        if (!design.Versions.Select(version => version.Number).SequenceEqual(Enumerable.Range(1, design.Versions.Count)))
            return "its versions are not numbered from 1 on";
        if (!Enum.IsDefined(design.State)) return "its state is not known";
        if (Wording.NameFaults("", "design", Wording.Tidy(design.Title), Designs.Design.TitleLength).FirstOrDefault() is { } title) return title.Message.TrimEnd('.');
        if (design.Tags.SelectMany(tag => Wording.NameFaults("", "tag", Wording.Tidy(tag), Tags.Tag.NameLength)).FirstOrDefault() is { } tag) return tag.Message.TrimEnd('.');
        if (design.Swatches.SelectMany(swatch => MaterialRefusals.OfSwatch(swatch.Details)).FirstOrDefault() is { } swatch) return swatch.Message.TrimEnd('.');
        if (design.Gauge is { } gauge && design.Swatches.All(it => it.Id != gauge)) return "its gauge is a swatch that is not there";
        if (PhotoFault(design.Photos ?? [], design.OnCard) is { } photo) return photo;
        if (design.Colours is { } colours && colours.Any(it => it?.Colour is not { Length: > 0 and <= ColourYarn.ColourLength })) return "a colour has no name";
        return design.Swatches.Select(it => it.Details.YarnId).Append(design.Yarn).OfType<Guid>().Concat((design.Colours ?? []).Select(it => it.Yarn)).Any(yarn => !yarns.Contains(yarn))
            ? "it is made of a yarn that is not there"
            : null;
    }

    private static Outcome<T> Json<T>(PackedFiles zip, string name)
    {
        Outcome<string> text = Text(zip, name, MostJson);
        if (!text.Succeeded) return Outcome.Refused(text.Messages);
        try
        {
            return JsonSerializer.Deserialize<T>(text.Value!, ArchiveLayout.Json) is { } read ? read : Refuse(name, "it is empty");
        }
        catch (Exception exception) when (exception is JsonException or NotSupportedException)
        {
            return Refuse(name, "it is not written as the archive's description says");
        }
    }

    private static Outcome<string> Text(PackedFiles zip, string name, int most)
    {
        Outcome<byte[]> bytes = zip.Read(name, most);
        if (!bytes.Succeeded) return Outcome.Refused(bytes.Messages);
        try
        {
            return Utf8.GetString(bytes.Value!);
        }
        catch (DecoderFallbackException)
        {
            return Refuse(name, "it is not written in UTF-8");
        }
    }

    private static Outcome Refuse(string file, string why) => Outcome.Refused("", $"'{file}' can't be taken: {why}. Nothing was brought in.");
}
