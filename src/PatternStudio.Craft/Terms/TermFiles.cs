namespace PatternStudio.Craft.Terms;

/// <summary>Reads the term files that the engine carries: lines of <c>key: value, value</c>; <c>#</c> starts a remark.</summary>
internal static class TermFiles
{
    /// <summary>The lines of a file that say something, each without surrounding blanks; blank lines are kept, they part blocks.</summary>
    public static IEnumerable<string> Lines(string name)
    {
        using Stream stream = typeof(TermFiles).Assembly.GetManifestResourceStream($"Terms/{name}")
            ?? throw new InvalidOperationException($"The engine carries no term file '{name}'.");
        using var reader = new StreamReader(stream);
        while (reader.ReadLine() is { } line)
            if (!line.StartsWith('#'))
                yield return line.Trim();
    }

    /// <summary>A file of <c>key: value, value</c> lines, turned round: from each value (and the key itself) to the key.</summary>
    public static IReadOnlyDictionary<string, string> KeyByValue(string name)
    {
        var keys = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (string line in Lines(name).Where(line => line.Length > 0))
        {
            (string key, string values) = Split(line);
            keys[key] = key;
            foreach (string value in List(values)) keys[value] = key;
        }
        return keys;
    }

    /// <summary>Parts a line at its first colon.</summary>
    public static (string Key, string Value) Split(string line)
    {
        int colon = line.IndexOf(':', StringComparison.Ordinal);
        return colon < 0
            ? throw new InvalidOperationException($"A term line needs a colon: '{line}'.")
            : (line[..colon].Trim(), line[(colon + 1)..].Trim());
    }

    /// <summary>The values of a comma list.</summary>
    public static string[] List(string values) =>
        values.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
}
