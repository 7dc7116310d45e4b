using System.IO.Compression;

namespace PatternStudio.Studio.Exchange;

/// <summary>A file that somebody brings in.</summary>
/// <param name="Name">With its folder where it has one: 'scarves/quay.txt'.</param>
public sealed record IncomingFile(string Name, byte[] Content)
{
    /// <summary>Why it could not be read at all; empty where it was.</summary>
    public string Refusal { get; init; } = "";
}

/// <summary>Opens zips that may be of anybody's making: nothing is written to a disk, and nothing larger than stated is unpacked.</summary>
public sealed class PackedFiles : IDisposable
{
    /// <summary>Most files in a zip.</summary>
    public const int MostFiles = 100_000;

    /// <summary>Most bytes unpacked in all.</summary>
    public const long MostBytes = 1024L * 1024 * 1024;

    /// <summary>Texts and pictures pack to a fiftieth at best; what claims more is made to fill a memory.</summary>
    private const long MostRatio = 200, Harmless = 1024 * 1024;

    private readonly ZipArchive zip;
    private long unpacked;

    private PackedFiles(ZipArchive zip) => this.zip = zip;

    /// <summary>Names of the files, folders left out.</summary>
    public IReadOnlyList<string> Names => [.. zip.Entries.Where(entry => !entry.FullName.EndsWith('/')).Select(entry => entry.FullName)];

    /// <summary>Opens a zip; the stream stays the caller's and must be seekable.</summary>
    public static Outcome<PackedFiles> Open(Stream stream)
    {
        try
        {
            var files = new PackedFiles(new ZipArchive(stream, ZipArchiveMode.Read, leaveOpen: true));
            if (files.Fault() is not { } fault) return files;
            files.Dispose();
            return Outcome.Refused("", fault);
        }
        catch (InvalidDataException)
        {
            return Outcome.Refused("", "The zip is damaged or no zip at all. Make it anew, or send it again.");
        }
    }

    /// <summary>Unpacks a file.</summary>
    /// <param name="most">Most bytes it may have.</param>
    public Outcome<byte[]> Read(string name, int most)
    {
        ZipArchiveEntry? entry = zip.GetEntry(name);
        if (entry is null) return Outcome.Refused("", $"The zip has no file '{name}'.");
        try
        {
            using Stream packed = entry.Open();
            using var bytes = new MemoryStream();
            byte[] part = new byte[64 * 1024];
            for (int read = packed.Read(part); read > 0; read = packed.Read(part))
            {
                unpacked += read;
                if (bytes.Length + read > most) return Outcome.Refused("", $"'{name}' is larger than {most / 1024 / 1024} MB.");
                if (unpacked > MostBytes) return Outcome.Refused("", $"The zip unpacks to more than {MostBytes / 1024 / 1024} MB. Part it into several.");
                bytes.Write(part, 0, read);
            }

            return bytes.ToArray();
        }
        catch (InvalidDataException)
        {
            return Outcome.Refused("", $"'{name}' is damaged or locked with a password. Make the zip anew, without one.");
        }
    }

    public void Dispose() => zip.Dispose();

    private string? Fault()
    {
        if (zip.Entries.Count > MostFiles) return $"The zip holds {zip.Entries.Count:N0} files; {MostFiles:N0} are taken at once.";
        if (zip.Entries.FirstOrDefault(entry => LeavesItsFolder(entry.FullName)) is { } outside)
            return $"The zip names a file outside of its own folders ('{Shown(outside.FullName)}'). No honest program writes that: nothing of it was taken.";
        if (zip.Entries.Sum(entry => entry.Length) > MostBytes) return $"The zip unpacks to more than {MostBytes / 1024 / 1024} MB. Part it into several.";
        return zip.Entries.Any(entry => entry.Length > Harmless && entry.Length / MostRatio > entry.CompressedLength)
            ? "The zip unpacks to hundreds of times its size, as no patterns do: nothing of it was taken."
            : null;
    }

    private static bool LeavesItsFolder(string name) =>
        name.StartsWith('/') || name.StartsWith('\\') || name.Contains(':', StringComparison.Ordinal) || name.Split('/', '\\').Contains("..");

    private static string Shown(string name) => name.Length <= 60 ? name : name[..60] + "…";
}
