using PatternStudio.Studio.Designs;

namespace PatternStudio.Studio.Exchange;

/// <summary>The titles of a studio while designs are brought in: no two alike, and no design twice.</summary>
internal sealed class TitleBook
{
    private readonly HashSet<string> titles = [];
    private readonly Dictionary<string, string> words = [];

    public TitleBook(IEnumerable<(string Title, string Text)> there)
    {
        foreach ((string title, string text) in there) Keep(title, text);
    }

    /// <summary>The title of the design with these very words; null for none. Empty texts are no twins.</summary>
    public string? WithWords(string text) => text.Length == 0 ? null : words.GetValueOrDefault(text.Trim());

    /// <summary>Enters a design under its title, or 'Title (2)' where that is taken.</summary>
    public string Enter(string wanted, string text)
    {
        string title = wanted;
        for (int number = 2; titles.Contains(Design.KeyOf(title)); number++)
        {
            string ending = $" ({number})";
            title = wanted[..Math.Min(wanted.Length, Design.TitleLength - ending.Length)] + ending;
        }

        Keep(title, text);
        return title;
    }

    private void Keep(string title, string text)
    {
        titles.Add(Design.KeyOf(title));
        if (text.Trim() is { Length: > 0 } said) words.TryAdd(said, title);
    }
}
