using System.Text;

namespace PatternStudio.Studio.Exchange;

/// <summary>Turns the bytes of a file into text, whatever it was written with.</summary>
public static class FileText
{
    /// <summary>Largest text file taken: 2 million characters take 8 MB at most.</summary>
    public const int MostBytes = 8 * 1024 * 1024;

    private static readonly UTF8Encoding StrictUtf8 = new(false, throwOnInvalidBytes: true);
    private static readonly Encoding Western = CodePagesEncodingProvider.Instance.GetEncoding(1252)!;

    /// <summary>
    /// By the mark at its beginning, else UTF-8 where it is right UTF-8, else UTF-16 where every other byte is empty, else the Western European
    /// table (Windows-1252, which is Latin-1 with printers' quotes).
    /// </summary>
    /// <returns>The text with '\n' at its lines' ends; or why the file holds none.</returns>
    public static Outcome<string> Decode(byte[] file)
    {
        ArgumentNullException.ThrowIfNull(file);
        if (file.Length > MostBytes) return Outcome.Refused("", $"It is larger than {MostBytes / 1024 / 1024} MB. A pattern has a few thousand characters: is it the right file?");
        if (KnownAs(file) is { } kind) return Outcome.Refused("", $"It is {kind}, not a text. Open it, copy its text and paste it into a new design.");
        string text = Read(file).TrimStart('\ufeff').ReplaceLineEndings("\n");
        if (string.IsNullOrWhiteSpace(text)) return Outcome.Refused("", "It is empty.");
        return text.Count(sign => char.IsControl(sign) && sign is not ('\n' or '\t' or '\f' or '\v')) * 100 > text.Length || text.Contains('\0')
            ? Outcome.Refused("", "It holds no text that can be read. Save it anew as plain text (UTF-8).")
            : text;
    }

    private static string Read(byte[] file)
    {
        if (file is [0xff, 0xfe, ..]) return Encoding.Unicode.GetString(file);
        if (file is [0xfe, 0xff, ..]) return Encoding.BigEndianUnicode.GetString(file);
        int[] empty = [0, 0];
        for (int i = 0; i < file.Length; i++) if (file[i] == 0) empty[i % 2]++;
        if (empty[1] * 3 > file.Length && empty[0] * 20 < file.Length) return Encoding.Unicode.GetString(file);
        if (empty[0] * 3 > file.Length && empty[1] * 20 < file.Length) return Encoding.BigEndianUnicode.GetString(file);
        try
        {
            return StrictUtf8.GetString(file);
        }
        catch (DecoderFallbackException)
        {
            return Western.GetString(file);
        }
    }

    private static string? KnownAs(byte[] file) => file switch
    {
        [(byte)'%', (byte)'P', (byte)'D', (byte)'F', ..] => "a PDF",
        [(byte)'P', (byte)'K', 3, 4, ..] => "a packed file (a zip or a document of a word processor)",
        [0xd0, 0xcf, 0x11, 0xe0, ..] => "a document of a word processor",
        [(byte)'{', (byte)'\\', (byte)'r', (byte)'t', (byte)'f', ..] => "a formatted document (RTF)",
        [0x89, (byte)'P', (byte)'N', (byte)'G', ..] or [0xff, 0xd8, 0xff, ..] => "a picture",
        _ => null,
    };
}
