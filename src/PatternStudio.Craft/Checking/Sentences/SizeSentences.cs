namespace PatternStudio.Craft.Checking.Sentences;

/// <summary>Says in which sizes a sentence holds.</summary>
internal static class SizeSentences
{
    /// <summary>'Size Large: …', 'Sizes Small and Large: …'.</summary>
    /// <param name="same">The sizes that the sentence holds for, just so.</param>
    /// <param name="others">Sizes in which the same place is wrong by other numbers.</param>
    /// <param name="sentence">What is wrong.</param>
    public static string In(IReadOnlyList<string> same, IReadOnlyList<string> others, string sentence)
    {
        string told = $"{Named(same)}: {sentence}";
        return others.Count == 0 ? told : $"{told} {Named(others)} {(others.Count == 1 ? "goes" : "go")} wrong here too, by other numbers.";
    }

    private static string Named(IReadOnlyList<string> sizes)
    {
        string[] bare = [.. sizes.Select(size => size.StartsWith("Size ", StringComparison.Ordinal) ? size[5..] : size)];
        return bare.Length == 1 ? $"Size {bare[0]}" : $"Sizes {string.Join(", ", bare[..^1])} and {bare[^1]}";
    }
}
