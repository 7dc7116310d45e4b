namespace PatternStudio.Studio.Designs;

/// <summary>What somebody typed into a search, parted into what must occur.</summary>
internal static class SearchWords
{
    private const int Most = 12;

    /// <summary>Words in capitals; those between quotation marks stay together. At most twelve: what comes after is left out.</summary>
    public static IReadOnlyList<string> Of(string? search)
    {
        string[] parts = Wording.Tidy(search).Replace('“', '"').Replace('”', '"').Split('"');
        return
        [
            .. parts.SelectMany((part, at) => at % 2 == 1 && at < parts.Length - 1 ? [part.Trim()] : part.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))
                .Where(word => word.Length > 0).Select(Design.KeyOf).Distinct().Take(Most),
        ];
    }
}
