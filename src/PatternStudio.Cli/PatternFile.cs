using System.CommandLine;
using System.Text;
using PatternStudio.Craft.Reading;

namespace PatternStudio.Cli;

/// <summary>A pattern's text from a file, or from standard input for <c>-</c>.</summary>
/// <param name="Name">How findings call it.</param>
/// <param name="Text">The whole text.</param>
internal sealed record PatternFile(string Name, string Text)
{
    private const string StandardInput = "-";

    /// <summary>A character takes at most four bytes: more than that is too long whatever it holds.</summary>
    private const long Bytes = 4L * ReadingLimits.Characters;

    /// <summary>The argument that every command has.</summary>
    public static Argument<string?> Argument()
    {
        var file = new Argument<string?>("FILE")
        {
            Description = "The pattern, a text file; - reads what is piped in.",
            // A missing file is answered by our own sentence.
            Arity = ArgumentArity.ZeroOrOne,
        };
        file.Validators.Add(argument =>
        {
            string word = argument.Tokens.Count > 0 ? argument.Tokens[0].Value : "";
            if (word.Length > 1 && word.StartsWith('-')) argument.AddError($"There is no option '{word}'");
        });
        return file;
    }

    /// <summary>Reads a file.</summary>
    /// <exception cref="Refusal">The file can't be read, or holds no pattern's text.</exception>
    public static PatternFile Read(string? path, Terminal terminal)
    {
        if (string.IsNullOrEmpty(path)) throw new Refusal("Name the pattern's file, or give - to read what is piped in.");
        if (path == StandardInput) return Decoded("standard input", ReadAll(terminal.Input, "standard input"));
        return Decoded(path, ReadAll(path));
    }

    private static byte[] ReadAll(string path)
    {
        if (Directory.Exists(path)) throw new Refusal($"'{path}' is a folder; name the pattern's file in it.");
        if (!File.Exists(path)) throw new Refusal($"There is no file '{path}'.");
        try
        {
            using FileStream file = File.OpenRead(path);
            return ReadAll(file, path);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            throw new Refusal($"'{path}' can't be opened: {problem.Message}");
        }
    }

    private static byte[] ReadAll(Stream stream, string name)
    {
        using var bytes = new MemoryStream();
        var part = new byte[81920];
        for (int read = stream.Read(part); read > 0; read = stream.Read(part))
        {
            bytes.Write(part, 0, read);
            if (bytes.Length > Bytes) throw TooLong(name);
        }

        return bytes.ToArray();
    }

    private static PatternFile Decoded(string name, byte[] bytes)
    {
        string text = Decode(bytes);
        if (text.Any(c => char.IsControl(c) && !char.IsWhiteSpace(c))) throw new Refusal($"'{name}' is no text file; save the pattern as plain text first.");
        return text.Length > ReadingLimits.Characters ? throw TooLong(name) : new PatternFile(name, text);
    }

    /// <summary>UTF-8 or UTF-16 by its mark, else UTF-8, else the Windows alphabet that old files are written in.</summary>
    private static string Decode(byte[] bytes)
    {
        try
        {
            var strict = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);
            using var reader = new StreamReader(new MemoryStream(bytes), strict, detectEncodingFromByteOrderMarks: true);
            return reader.ReadToEnd();
        }
        catch (DecoderFallbackException)
        {
            return CodePagesEncodingProvider.Instance.GetEncoding(1252)!.GetString(bytes);
        }
    }

    private static Refusal TooLong(string name) =>
        new($"'{name}' is too long: a pattern may have {ReadingLimits.Characters:N0} characters, about 1,000 printed pages.");
}
